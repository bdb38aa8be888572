package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;
import static org.pumpwright.host.grade.StandChecks.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Duty;

/** Whether the unit got the power that the plan asked for. Thread-safe. */
final class PowerChecks {
    private static final double VOLTS_SHARE = 0.08;

    /** Supply, switch, lead and plug together; a healthy stand has about 0.05 ohm. */
    static final double MOST_LEAD_OHMS = 0.10;

    /** At less current than this the sag is too small to tell a resistance from noise. */
    private static final double LEAST_AMPS_FOR_OHMS = 2;

    private static final double DUTY_SHARE = 0.01;

    private PowerChecks() {}

    static List<StandCheck> of(Optional<RestReading> rest, List<PointReading> points, StandExpectations stand) {
        List<StandCheck> checks = new ArrayList<>();
        points.stream()
                .max(Comparator.comparingDouble(PowerChecks::dutyError))
                .ifPresent(point -> checks.add(drive(point)));
        rest.ifPresent(r -> checks.addAll(supply(r, points, stand)));
        return checks;
    }

    private static List<StandCheck> supply(RestReading rest, List<PointReading> points, StandExpectations stand) {
        List<StandCheck> checks = new ArrayList<>();
        points.stream()
                .max(Comparator.comparingDouble(point -> point.supplyAmps().value()))
                .ifPresent(point -> checks.add(lead(rest, point)));
        points.stream()
                .max(Comparator.comparingDouble(point -> voltsBeyond(rest, point, stand)))
                .ifPresent(point -> checks.add(volts(rest, point, stand)));
        return checks;
    }

    private static double dutyError(PointReading point) {
        return Math.abs(point.duty() - point.mark().commanded().fraction());
    }

    private static StandCheck drive(PointReading worst) {
        Duty commanded = worst.mark().commanded();
        return check(
                "drive",
                dutyError(worst) <= DUTY_SHARE,
                format(
                        "the pin got %.1f %% at the set point %s, 1 %% off allowed",
                        worst.duty() * 100, commanded.print()),
                "another drive or a limit of the board holds the set point down: check the board, then run again");
    }

    /**
     * A unit that draws much current may pull its own pins below the share that is allowed; that much sag through a lead
     * in order is the unit's doing and is taken care of by judging at effective volts.
     */
    private static double leastVolts(RestReading rest, PointReading point, StandExpectations stand) {
        double explained = rest.volts() - MOST_LEAD_OHMS * point.supplyAmps().value();
        return Math.min(stand.supplyVolts() * (1 - VOLTS_SHARE), explained);
    }

    private static double mostVolts(StandExpectations stand) {
        return stand.supplyVolts() * (1 + VOLTS_SHARE);
    }

    private static double voltsBeyond(RestReading rest, PointReading point, StandExpectations stand) {
        double volts = point.voltsAtPins().value();
        return Math.max(leastVolts(rest, point, stand) - volts, volts - mostVolts(stand));
    }

    private static StandCheck volts(RestReading rest, PointReading worst, StandExpectations stand) {
        return check(
                "volts at the pins",
                voltsBeyond(rest, worst, stand) <= 0,
                format(
                        "%.2f V at %s, allowed are %.2f to %.2f V",
                        worst.voltsAtPins().value(),
                        worst.mark().commanded().print(),
                        leastVolts(rest, worst, stand),
                        mostVolts(stand)),
                "check charger and battery: the supply must hold its voltage through the whole run");
    }

    private static StandCheck lead(RestReading rest, PointReading most) {
        double amps = most.supplyAmps().value();
        if (amps < LEAST_AMPS_FOR_OHMS) {
            return check("supply and lead", true, format("not measured: the unit drew at most %.1f A", amps), "");
        }
        double ohms = (rest.volts() - most.voltsAtPins().value()) / amps;
        return check(
                "supply and lead",
                ohms <= MOST_LEAD_OHMS,
                format(
                        "%.3f ohm at %.1f A, at most %.3f ohm allowed (a healthy stand has about 0.050)",
                        ohms, amps, MOST_LEAD_OHMS),
                "clean and tighten every joint of the supply lead, or swap the lead, then run again");
    }
}
