package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;

/** A stand's channels in words: what they are called and what they read. Thread-safe. */
final class ChannelWords {
    private static final Word NO_VALUE = Word.asIs("–");

    private ChannelWords() {}

    /** A channel and what stands behind its calibration. */
    record Calibrated(Word name, Certificate certificate) {}

    static List<Calibrated> certificates(Channels channels) {
        List<Calibrated> all = new ArrayList<>();
        channels.meters().forEach(meter -> all.add(new Calibrated(name(meter), meter.certificate())));
        channels.analogs().forEach(channel -> all.add(new Calibrated(name(channel.role()), channel.certificate())));
        return all;
    }

    /** Every channel without a value. */
    static List<Reading> unread(Channels channels) {
        List<Reading> all = new ArrayList<>();
        channels.meters().forEach(meter -> all.add(new Reading(name(meter), NO_VALUE, limits(meter), Mark.UNKNOWN)));
        channels.analogs()
                .forEach(
                        channel -> all.add(new Reading(name(channel.role()), NO_VALUE, limits(channel), Mark.UNKNOWN)));
        return all;
    }

    /**
     * What every channel reads.
     *
     * @param before an earlier sample of the same boot; the flow is taken between the two
     */
    static List<Reading> readings(Channels channels, Sample before, Sample now) {
        List<Reading> all = new ArrayList<>();
        for (MeterChannel meter : channels.meters()) {
            FlowRate flow = flow(meter, before, now);
            all.add(new Reading(name(meter), Word.of((Word.Measured) flow::print), limits(meter), Mark.GOOD));
        }
        channels.analogs().forEach(channel -> all.add(reading(channel, now)));
        return all;
    }

    private static Reading reading(AnalogChannel channel, Sample now) {
        Optional<String> trouble = channel.trouble(now);
        Word name = name(channel.role());
        return trouble.isPresent()
                ? new Reading(name, Word.of("ui.channel.faulty"), limits(channel), Mark.BAD)
                : new Reading(name, Word.of(value(channel.role(), channel.read(now))), limits(channel), Mark.GOOD);
    }

    private static Word limits(MeterChannel meter) {
        return Word.of((Word.Measured) units -> "≥ " + meter.least().print(units));
    }

    /** What a sound sensor can read, the unit once. A sensor that falls with its code has its ends the other way round. */
    private static Word limits(AnalogChannel channel) {
        CodeRange sound = channel.calibration().sound();
        double one = channel.si(sound.least());
        double other = channel.si(sound.most());
        Word.Measured least = value(channel.role(), Math.min(one, other));
        Word.Measured most = value(channel.role(), Math.max(one, other));
        return Word.of((Word.Measured) units -> least.print(units).replaceFirst(" .*", "") + " … " + most.print(units));
    }

    private static Word.Measured value(ChannelRole role, double si) {
        return switch (role) {
            case VOLTS_AT_PINS -> units -> String.format(Locale.ROOT, "%.2f V", si);
            case SUPPLY_AMPS -> units -> String.format(Locale.ROOT, "%.2f A", si);
            case OUTLET_PRESSURE -> new Pressure(si)::print;
            case WATER_TEMPERATURE -> new Temperature(si)::print;
        };
    }

    private static FlowRate flow(MeterChannel meter, Sample before, Sample now) {
        MeterCount first = before.meters().get(meter.index());
        MeterCount last = now.meters().get(meter.index());
        long edges = last.edges() - first.edges();
        double seconds = (last.lastEdgeNanos() - first.lastEdgeNanos()) / 1e9;
        return edges < 1 || seconds <= 0 ? new FlowRate(0) : meter.flow(edges / seconds);
    }

    static Word name(ChannelRole role) {
        return Word.of("ui.channel." + role.name().toLowerCase(Locale.ROOT));
    }

    private static Word name(MeterChannel meter) {
        return Word.of("ui.channel.meter", meter.index());
    }
}
