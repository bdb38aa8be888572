package org.pumpwright.host.grade.finding;

import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Comparisons of two readings of one channel. A zero error and a gain error are the same in both, so they count once and
 * with their sign: in a difference the zero falls out, in a ratio the gain (JCGM 100, 5.2.2 and F.1.2.3). Thread-safe.
 */
final class Common {
    private Common() {}

    /** Standard uncertainty of a channel's zero. */
    static double zero(AnalogChannel channel) {
        return channel.calibrationUncertainty(0);
    }

    /** Relative standard uncertainty of a channel's gain: what its uncertainty grows by from zero to a reading. */
    static double gain(AnalogChannel channel, double reading) {
        double at = channel.calibrationUncertainty(reading);
        double zero = zero(channel);
        return reading == 0 ? 0 : Math.sqrt(Math.max(0, at * at - zero * zero)) / Math.abs(reading);
    }

    /** The reading of the one window over that of the other; a zero error z makes it wrong by {@code z (1 - ratio) / b}. */
    static Uncertain ratio(Window a, Window b, ChannelRole role) {
        Uncertain over = a.bare(role);
        Uncertain under = b.bare(role);
        double ratio = over.value() / under.value();
        AnalogChannel channel = a.channels().required(role);
        return new Uncertain(ratio, over.standardUncertainty() / Math.abs(under.value()), over.degreesOfFreedom())
                .with(Math.abs(ratio) * under.relative(), under.degreesOfFreedom())
                .with(Math.abs(zero(channel) * (1 - ratio) / under.value()), Double.POSITIVE_INFINITY);
    }

    /** The reading of the one window less that of the other; a gain error g makes it wrong by g times itself. */
    static Uncertain difference(Window a, Window b, ChannelRole role) {
        Uncertain high = a.bare(role);
        Uncertain low = b.bare(role);
        double difference = high.value() - low.value();
        double gain = gain(a.channels().required(role), Math.max(Math.abs(high.value()), Math.abs(low.value())));
        return new Uncertain(difference, high.standardUncertainty(), high.degreesOfFreedom())
                .with(low.standardUncertainty(), low.degreesOfFreedom())
                .with(Math.abs(difference) * gain, Double.POSITIVE_INFINITY);
    }

    /** A value over another that is independent of it. */
    static Uncertain over(Uncertain a, Uncertain b) {
        double ratio = a.value() / b.value();
        return new Uncertain(ratio, a.standardUncertainty() / Math.abs(b.value()), a.degreesOfFreedom())
                .with(Math.abs(ratio) * b.relative(), b.degreesOfFreedom());
    }

    /** A value less a constant that is exactly known. */
    static Uncertain less(Uncertain a, double constant) {
        return new Uncertain(a.value() - constant, a.standardUncertainty(), a.degreesOfFreedom());
    }
}
