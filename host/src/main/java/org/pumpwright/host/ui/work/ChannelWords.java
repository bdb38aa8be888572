package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
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
    private ChannelWords() {}

    /** A channel and what stands behind its calibration. */
    record Calibrated(Word name, Certificate certificate) {}

    static List<Calibrated> certificates(Channels channels) {
        List<Calibrated> all = new ArrayList<>();
        channels.meters().forEach(meter -> all.add(new Calibrated(name(meter), meter.certificate())));
        channels.analogs().forEach(channel -> all.add(new Calibrated(name(channel.role()), channel.certificate())));
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
            all.add(new Reading(name(meter), Word.of((Word.Measured) flow::print), Mark.GOOD));
        }
        channels.analogs().forEach(channel -> all.add(reading(channel, now)));
        return all;
    }

    private static Reading reading(AnalogChannel channel, Sample now) {
        Optional<String> trouble = channel.trouble(now);
        if (trouble.isPresent()) {
            return new Reading(name(channel.role()), Word.of("ui.channel.faulty"), Mark.BAD);
        }
        return new Reading(name(channel.role()), value(channel.role(), channel.read(now)), Mark.GOOD);
    }

    private static Word value(ChannelRole role, double si) {
        return switch (role) {
            case VOLTS_AT_PINS -> Word.asIs(String.format(Locale.ROOT, "%.2f V", si));
            case SUPPLY_AMPS -> Word.asIs(String.format(Locale.ROOT, "%.2f A", si));
            case OUTLET_PRESSURE -> Word.of((Word.Measured) new Pressure(si)::print);
            case WATER_TEMPERATURE -> Word.of((Word.Measured) new Temperature(si)::print);
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
