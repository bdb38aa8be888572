package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Whether a coil's current has a way back while the switch is off. With one the mean volts across the coil are
 * {@code d V - (1 - d) V_f}, so its mean current over that at full duty is {@code d - (1 - d) V_f / V} (textbook; more where
 * the current ends within the pause). Without one it collapses to a third or a half. Coil and ammeter's gain fall out. From
 * the holds whose names begin with {@code coil-}. Thread-safe.
 */
final class CoilShare {
    private static final String NAME = "freewheel share";
    private static final String COIL = "coil-";
    private static final double FULL = 0.999;
    private static final double LEAST_AMPS = 0.3;

    /** A diode drops 0.3 to 1.1 V (common practice, no source); rectangular. */
    private static final double DIODE_VOLTS = 0.7;

    private static final double DIODE_UNCERTAINTY = 0.4 / Math.sqrt(3);

    private CoilShare() {}

    static List<Finding> of(FindingInput input) {
        List<Hold> holds = input.plan().steps().stream()
                .filter(Hold.class::isInstance)
                .map(Hold.class::cast)
                .filter(hold -> hold.reads() == Reading.LOAD && hold.name().startsWith(COIL))
                .toList();
        Optional<Window> full = holds.stream()
                .filter(hold -> hold.duty().fraction() > FULL)
                .findFirst()
                .flatMap(hold -> input.settled(hold.name()));
        if (full.isEmpty()) {
            return List.of();
        }
        double amps = full.get().required(ChannelRole.SUPPLY_AMPS).value();
        if (amps < LEAST_AMPS) {
            return List.of(Finding.word(
                    DriverFindings.STEP, NAME, "not measured", format("%.2f A in the coil are too little", amps)));
        }
        return holds.stream()
                .filter(hold -> hold.duty().fraction() <= FULL)
                .flatMap(hold -> input.settled(hold.name()).stream()
                        .map(window -> share(window, full.get(), hold.duty().fraction(), hold.name())))
                .min(Comparator.comparingDouble(
                        finding -> ((Finding.Figure) finding.outcome()).value().value()))
                .stream()
                .toList();
    }

    private static Finding share(Window window, Window full, double duty, String hold) {
        double volts = full.required(ChannelRole.VOLTS_AT_PINS).value();
        double expected = duty - (1 - duty) * DIODE_VOLTS / volts;
        Uncertain ratio = Common.ratio(window, full, ChannelRole.SUPPLY_AMPS);
        Uncertain share = ratio.times(1 / expected)
                .with(
                        Math.abs(ratio.value()) * (1 - duty) * DIODE_UNCERTAINTY / volts / (expected * expected),
                        Double.POSITIVE_INFINITY);
        return Finding.figure(
                DriverFindings.STEP,
                NAME,
                share,
                FindingUnit.SHARE,
                format("the least, in step %s; near 1 with a way back for the current", hold));
    }
}
