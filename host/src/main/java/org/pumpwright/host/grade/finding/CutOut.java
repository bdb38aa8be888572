package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.ThermalTrip;
import org.pumpwright.host.trace.ChannelRole;

/** Whether and when the unit's thermal protector cut it out during a hold. Thread-safe. */
final class CutOut {
    private static final String NAME = "thermal trip";

    /** The search looks at means over so many samples: 0.1 s. */
    private static final int TOGETHER = 5;

    /** Where the current never falls by half from one look to the next but one, nothing is worth a search. */
    private static final double FALL_SHARE = 0.5;

    private static final double BEFORE_SECONDS = 2;
    private static final double MOST_SECONDS_AFTER = 900;

    private CutOut() {}

    static List<ThermalTrip> find(Window whole) {
        double[] times = whole.times();
        double[] amps = whole.values(ChannelRole.SUPPLY_AMPS);
        double fall = firstFall(times, amps);
        if (fall < 0) {
            return List.of();
        }
        Window about = whole.between(Math.max(0, fall - BEFORE_SECONDS), fall + MOST_SECONDS_AFTER);
        double begin = Math.max(0, fall - BEFORE_SECONDS);
        double offset = times[firstAtOrAfter(times, begin)];
        double[] seconds = thinned(about.times());
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] += offset;
        }
        return ThermalTrip.find(
                seconds,
                thinned(about.values(ChannelRole.SUPPLY_AMPS)),
                thinned(about.values(ChannelRole.VOLTS_AT_PINS)),
                thinned(about.duties()));
    }

    private static int firstAtOrAfter(double[] times, double seconds) {
        int i = 0;
        while (times[i] < seconds) {
            i++;
        }
        return i;
    }

    private static double firstFall(double[] times, double[] amps) {
        double[] when = thinned(times);
        double[] means = thinned(amps);
        for (int i = 2; i < means.length; i++) {
            if (means[i] < FALL_SHARE * means[i - 2]) {
                return when[i];
            }
        }
        return -1;
    }

    private static double[] thinned(double[] values) {
        double[] means = new double[values.length / TOGETHER];
        for (int i = 0; i < means.length * TOGETHER; i++) {
            means[i / TOGETHER] += values[i] / TOGETHER;
        }
        return means;
    }

    static List<Finding> findings(Hold hold, Window whole, List<ThermalTrip> trips) {
        if (trips.isEmpty()) {
            return List.of(Finding.word(
                    hold.name(),
                    NAME,
                    "none",
                    format("in %.0f s at %s", whole.seconds(), hold.duty().print())));
        }
        List<Finding> findings = new ArrayList<>();
        for (ThermalTrip trip : trips) {
            findings.add(Finding.figure(
                    hold.name(),
                    NAME,
                    trip.seconds(),
                    FindingUnit.SECONDS,
                    format(
                            "after the begin of the hold: %.1f A fell away, volts at the pins rose by %.2f V",
                            trip.ampsBefore(), trip.voltsRise())));
            findings.add(reset(hold, trip));
        }
        return findings;
    }

    private static Finding reset(Hold hold, ThermalTrip trip) {
        if (trip.resetSeconds().isEmpty()) {
            return Finding.word(hold.name(), "reset", "not seen", "while the hold went on");
        }
        double away = trip.resetSeconds().getAsDouble() - trip.seconds().value();
        Uncertain seconds = Uncertain.of(away, trip.seconds().standardUncertainty())
                .with(trip.seconds().standardUncertainty(), Double.POSITIVE_INFINITY);
        return Finding.figure(hold.name(), "reset", seconds, FindingUnit.SECONDS, "after the trip");
    }
}
