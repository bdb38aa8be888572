package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.PointMark;

/**
 * A valve's coil by its volts and amps at full command: its resistance at 20 degrees from the hold {@code coil-cold}, with the
 * oil off and the coil as warm as the shop; how much it has warmed by the sweep's full point, which no zero and no gain error
 * touches; and whether anything flowed without a command. Thread-safe.
 */
final class CoilFindings {
    private static final String COLD = "coil-cold";
    private static final double FULL = 0.999;
    private static final double LEAST_AMPS = 0.1;

    /** Copper, per kelvin at 20 degrees: 1/254.5 (handbook value). */
    private static final double COPPER_PER_KELVIN = 0.00393;

    private static final double KELVIN_AT_20 = 293.15;

    /** A coil that stands in the shop is as warm as the water, or nearly (assumed, rectangular). */
    private static final double NOT_AS_THE_WATER = 5 / Math.sqrt(3);

    private CoilFindings() {}

    static List<Finding> of(FindingInput input) {
        List<Finding> findings = new ArrayList<>();
        Optional<Window> cold = input.settled(COLD);
        cold.ifPresent(window -> findings.add(resistance(window)));
        cold.flatMap(window -> warming(input, window)).ifPresent(findings::add);
        creep(input).ifPresent(findings::add);
        return findings;
    }

    private static Finding resistance(Window cold) {
        String name = "coil resistance at 20 C";
        Uncertain amps = cold.required(ChannelRole.SUPPLY_AMPS);
        if (amps.value() < LEAST_AMPS) {
            return Finding.word(
                    ValveFindings.STEP,
                    name,
                    "open",
                    format("%.2f A at full command: coil or plug open", amps.value()));
        }
        double kelvin =
                cold.mean(ChannelRole.WATER_TEMPERATURE).map(Uncertain::value).orElse(KELVIN_AT_20);
        double factor = 1 + COPPER_PER_KELVIN * (kelvin - KELVIN_AT_20);
        Uncertain ohms =
                Common.over(cold.required(ChannelRole.VOLTS_AT_PINS), amps).times(1 / factor);
        return Finding.figure(
                ValveFindings.STEP,
                name,
                ohms.with(ohms.value() * COPPER_PER_KELVIN * NOT_AS_THE_WATER, Double.POSITIVE_INFINITY),
                FindingUnit.OHMS,
                format("%.2f A, taken to be as warm as the water, %.0f C", amps.value(), kelvin - 273.15));
    }

    private static Optional<Finding> warming(FindingInput input, Window cold) {
        if (cold.required(ChannelRole.SUPPLY_AMPS).value() < LEAST_AMPS) {
            return Optional.empty();
        }
        return input.sweep("sweep").stream()
                .flatMap(sweep -> input.points(sweep).stream())
                .filter(point -> point.commanded().fraction() > FULL)
                .min(Comparator.comparingLong(PointMark::setNanos))
                .map(input::measured)
                .filter(warm -> warm.required(ChannelRole.SUPPLY_AMPS).value() >= LEAST_AMPS)
                .map(warm -> {
                    Uncertain volts = Common.ratio(warm, cold, ChannelRole.VOLTS_AT_PINS);
                    Uncertain amps = Common.ratio(warm, cold, ChannelRole.SUPPLY_AMPS);
                    return Finding.figure(
                            ValveFindings.STEP,
                            "coil warming",
                            Common.less(Common.over(volts, amps), 1),
                            FindingUnit.SHARE,
                            "resistance at the sweep's full point over that at the start: a coil that was hot cools");
                });
    }

    private static Optional<Finding> creep(FindingInput input) {
        List<Hold> holds = input.plan().steps().stream()
                .filter(Hold.class::isInstance)
                .map(Hold.class::cast)
                .filter(hold -> hold.reads() == Reading.ZERO_COMMAND && !OverrideSplit.BY_OVERRIDE.equals(hold.name()))
                .filter(hold -> !input.times(hold).isEmpty())
                .toList();
        if (holds.isEmpty()) {
            return Optional.empty();
        }
        int meter = input.trace().channels().flowMeter().index();
        long most = 0;
        String where = "";
        for (Hold hold : holds) {
            long pulses = input.settled(hold.name()).orElseThrow().pulses(meter);
            if (pulses > most) {
                most = pulses;
                where = hold.name();
            }
        }
        return Optional.of(Finding.word(
                ValveFindings.STEP,
                "creep at zero command",
                most == 0 ? "none" : "creeps",
                most == 0 ? "no pulse without a command" : format("%d pulses in step %s", most, where)));
    }
}
