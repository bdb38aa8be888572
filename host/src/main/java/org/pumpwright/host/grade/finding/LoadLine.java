package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.LineFit;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Resistance as the slope of volts over amps under several loads: constant errors of both channels fall out of it, their
 * gains and the converters' steps do not. Thread-safe.
 */
final class LoadLine {
    /** Loads that differ by less tell no slope. */
    private static final double LEAST_AMPS_APART = 0.5;

    private static final int LEAST_FOR_SCATTER = 3;

    private final List<Window> loads;
    private final AnalogChannel volts;
    private final AnalogChannel amps;

    private LoadLine(List<Window> loads) {
        this.loads = loads;
        volts = loads.get(0).channels().required(ChannelRole.VOLTS_AT_PINS);
        amps = loads.get(0).channels().required(ChannelRole.SUPPLY_AMPS);
    }

    /** Empty with fewer than two loads, or loads that are too alike. */
    static Optional<Finding> of(String place, List<Window> loads) {
        if (loads.size() < 2) {
            return Optional.empty();
        }
        LoadLine line = new LoadLine(loads);
        double[] amperes = line.means(line.amps);
        double apart = Arrays.stream(amperes).max().orElseThrow()
                - Arrays.stream(amperes).min().orElseThrow();
        if (apart < LEAST_AMPS_APART) {
            return Optional.empty();
        }
        return Optional.of(Finding.figure(
                place,
                "resistance",
                line.slope(amperes),
                FindingUnit.OHMS,
                format("volts over amps from %d loads, %.1f A apart", loads.size(), apart)));
    }

    private double[] means(AnalogChannel channel) {
        return loads.stream()
                .mapToDouble(load -> Statistics.mean(load.values(channel)))
                .toArray();
    }

    private Uncertain slope(double[] amperes) {
        double[] voltages = means(volts);
        double meanAmps = Statistics.mean(amperes);
        double spread = 0;
        double products = 0;
        for (int i = 0; i < amperes.length; i++) {
            spread += (amperes[i] - meanAmps) * (amperes[i] - meanAmps);
            products += (amperes[i] - meanAmps) * voltages[i];
        }
        double ohms = products / spread;
        Uncertain slope = Uncertain.of(ohms, Math.abs(ohms) * Math.hypot(gain(volts, voltages), gain(amps, amperes)));
        for (int i = 0; i < amperes.length; i++) {
            double weight = Math.abs(amperes[i] - meanAmps) / spread;
            Uncertain volt = own(loads.get(i), volts);
            Uncertain ampere = own(loads.get(i), amps);
            slope = slope.with(weight * volt.standardUncertainty(), volt.degreesOfFreedom())
                    .with(weight * Math.abs(ohms) * ampere.standardUncertainty(), ampere.degreesOfFreedom());
        }
        return slope.with(bend(amperes, voltages), Math.max(1, amperes.length - 2));
    }

    /** What one load's mean is off by on its own: its scatter, and anything within a step of the converter. */
    private Uncertain own(Window load, AnalogChannel channel) {
        Uncertain mean = Statistics.uncertainMean(load.values(channel));
        double step = loads.stream()
                .mapToDouble(each -> ConverterStep.of(each, channel))
                .max()
                .orElse(0);
        return mean.with(Math.max(step, steps(channel)) / Math.sqrt(12), Double.POSITIVE_INFINITY);
    }

    /** The step as all loads together tell it, for loads whose reading stood still. */
    private double steps(AnalogChannel channel) {
        return ConverterStep.of(
                new Window(
                        loads.stream().flatMap(load -> load.samples().stream()).toList(),
                        loads.get(0).channels(),
                        loads.get(0).drive()),
                channel);
    }

    /** The relative uncertainty of a channel's gain: what its uncertainty grows by from its smallest reading to its largest. */
    private static double gain(AnalogChannel channel, double[] values) {
        double low = Arrays.stream(values).min().orElseThrow();
        double high = Arrays.stream(values).max().orElseThrow();
        double atZero = channel.calibrationUncertainty(0);
        double atHigh = channel.calibrationUncertainty(high);
        double largest = Math.max(Math.abs(low), Math.abs(high));
        return largest == 0 ? 0 : Math.sqrt(Math.max(0, atHigh * atHigh - atZero * atZero)) / largest;
    }

    /** Loads that do not lie on one line, as where a joint warms, make the slope doubtful by as much. */
    private static double bend(double[] amperes, double[] voltages) {
        if (amperes.length < LEAST_FOR_SCATTER) {
            return 0;
        }
        LineFit line = LineFit.of(amperes, voltages);
        return line.slopeUncertainty(line.scatter());
    }
}
