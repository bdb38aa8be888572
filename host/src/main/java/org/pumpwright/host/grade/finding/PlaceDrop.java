package org.pumpwright.host.grade.finding;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.LineFit;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Volts of one place at a current between its loads: on the straight line through the two loads next to it, so that a joint
 * that warms, or one with an oxide, is read where it works. The voltmeter's zero is still in it. Thread-safe.
 */
final class PlaceDrop {
    /** Loads that differ by less tell no slope. */
    private static final double LEAST_AMPS_APART = 0.5;

    private static final int LEAST_LOADS = 3;
    private static final double NEAR_END = 4;

    private final HarnessPlaces.Place place;
    private final List<Uncertain> amps;
    private final List<Uncertain> volts;

    private PlaceDrop(HarnessPlaces.Place place) {
        this.place = place;
        List<Window> loads = place.loads().stream()
                .sorted(Comparator.comparingDouble(
                        load -> load.bare(ChannelRole.SUPPLY_AMPS).value()))
                .toList();
        amps = loads.stream().map(load -> load.bare(ChannelRole.SUPPLY_AMPS)).toList();
        volts = loads.stream().map(load -> load.bare(ChannelRole.VOLTS_AT_PINS)).toList();
    }

    /** Empty where the loads are too few or too alike. */
    static Optional<PlaceDrop> of(HarnessPlaces.Place place) {
        if (place.loads().size() < LEAST_LOADS) {
            return Optional.empty();
        }
        PlaceDrop drop = new PlaceDrop(place);
        int last = drop.amps.size() - 1;
        double apart = drop.mostAmps() - drop.amps.get(0).value();
        return apart < LEAST_AMPS_APART * last ? Optional.empty() : Optional.of(drop);
    }

    HarnessPlaces.Place place() {
        return place;
    }

    double mostAmps() {
        return amps.get(amps.size() - 1).value();
    }

    /** Volts that are left where the line through all loads has no current. */
    double offset() {
        return line().at(0);
    }

    /** From the scatter of the loads' volts: of a line at a distance from its points (JCGM 100, H.3.4). */
    double offsetUncertainty() {
        double one =
                volts.stream().mapToDouble(Uncertain::standardUncertainty).max().orElseThrow();
        double mean = amps.stream().mapToDouble(Uncertain::value).average().orElseThrow();
        double bySlope = mean * line().slopeUncertainty(one);
        return Math.hypot(one / Math.sqrt((double) volts.size()), bySlope);
    }

    private LineFit line() {
        return LineFit.of(
                amps.stream().mapToDouble(Uncertain::value).toArray(),
                volts.stream().mapToDouble(Uncertain::value).toArray());
    }

    /** Scatter alone; gains and zero are common to all places. */
    Uncertain voltsAt(double current) {
        int high = 1;
        while (high < amps.size() - 1 && amps.get(high).value() < current) {
            high++;
        }
        int low = high - 1;
        double share = (current - amps.get(low).value())
                / (amps.get(high).value() - amps.get(low).value());
        double value = volts.get(low).value()
                + share * (volts.get(high).value() - volts.get(low).value());
        double slope = slope(low, high);
        Uncertain above = volts.get(high).times(share);
        Uncertain below = volts.get(low).times(1 - share);
        return new Uncertain(value, above.standardUncertainty(), above.degreesOfFreedom())
                .with(cutOff(value), Double.POSITIVE_INFINITY)
                .with(below.standardUncertainty(), below.degreesOfFreedom())
                .with(
                        Math.abs(slope * share) * amps.get(high).standardUncertainty(),
                        amps.get(high).degreesOfFreedom())
                .with(
                        Math.abs(slope * (1 - share)) * amps.get(low).standardUncertainty(),
                        amps.get(low).degreesOfFreedom());
    }

    /**
     * A converter that ends where the volts do cuts the lower half of the noise off, which makes a mean seem too high. Within
     * four times the scatter of the samples from its end the doubt is taken as that scatter, rectangular (computed for noise of
     * one step and samples of some conversions).
     */
    private double cutOff(double value) {
        Window highest = place.loads().get(place.loads().size() - 1);
        AnalogChannel channel = highest.channels().required(ChannelRole.VOLTS_AT_PINS);
        double scatter = Statistics.deviation(highest.values(channel));
        double end = channel.si(channel.calibration().sound().least());
        return value - end < NEAR_END * scatter ? scatter / Math.sqrt(3) : 0;
    }

    private double slope(int low, int high) {
        return (volts.get(high).value() - volts.get(low).value())
                / (amps.get(high).value() - amps.get(low).value());
    }
}
