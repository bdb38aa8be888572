package org.pumpwright.host.report;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/**
 * The plain readings of one point, for runs that were not judged: so that the work at the stand is not lost. Nothing is
 * decided on these. Thread-safe.
 *
 * @param point the point
 * @param flowM3PerSecond edges over the time between the first and the last of them; 0 without edges
 * @param voltsAtPins mean, V; empty without such a channel
 * @param supplyAmps mean, A; empty without such a channel
 * @param outletPascals mean gauge pressure, Pa; empty without such a channel
 */
record PlainReading(
        PointMark point,
        double flowM3PerSecond,
        OptionalDouble voltsAtPins,
        OptionalDouble supplyAmps,
        OptionalDouble outletPascals) {
    static List<PlainReading> of(RunRecord run) {
        Trace trace = run.trace();
        return trace.points().stream()
                .filter(point -> !trace.measured(point).isEmpty())
                .map(point -> of(trace, point))
                .toList();
    }

    private static PlainReading of(Trace trace, PointMark point) {
        List<Sample> samples = trace.measured(point);
        return new PlainReading(
                point,
                flow(trace, samples),
                mean(trace, samples, ChannelRole.VOLTS_AT_PINS),
                mean(trace, samples, ChannelRole.SUPPLY_AMPS),
                mean(trace, samples, ChannelRole.OUTLET_PRESSURE));
    }

    String voltsWords(Interpreter in) {
        return words(in, voltsAtPins, volts -> String.format(Locale.ROOT, "%.2f V", volts));
    }

    String ampsWords(Interpreter in) {
        return words(in, supplyAmps, amps -> String.format(Locale.ROOT, "%.2f A", amps));
    }

    String pressureWords(UnitSystem units, Interpreter in) {
        return words(in, outletPascals, pascals -> new Pressure(pascals).print(units));
    }

    private static String words(Interpreter in, OptionalDouble value, DoubleFunction<String> print) {
        return value.isPresent() ? print.apply(value.getAsDouble()) : in.say("readings.not_measured");
    }

    private static double flow(Trace trace, List<Sample> samples) {
        int meter = trace.channels().flowMeter().index();
        Sample.MeterCount first = samples.get(0).meters().get(meter);
        Sample.MeterCount last = samples.get(samples.size() - 1).meters().get(meter);
        double seconds = (last.lastEdgeNanos() - first.lastEdgeNanos()) / 1e9;
        double hertz = seconds > 0 ? (last.edges() - first.edges()) / seconds : 0;
        return trace.channels().flowMeter().flow(hertz).m3PerSecond();
    }

    private static OptionalDouble mean(Trace trace, List<Sample> samples, ChannelRole role) {
        return trace.channels()
                .analog(role)
                .map(channel ->
                        samples.stream().mapToDouble(s -> channel.read(s)).average())
                .orElse(OptionalDouble.empty());
    }
}
