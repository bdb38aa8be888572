package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;
import static org.pumpwright.host.grade.StandChecks.check;

import java.util.List;
import java.util.Optional;

/** What must hold before the first set point: the right supply, and zeros that are zero. Thread-safe. */
final class RestChecks {
    /** The name of the check of the supply. */
    static final String SUPPLY = "supply at rest";

    private static final double SUPPLY_SHARE = 0.03;

    /** Five times the zero uncertainty of a usual 40 A sensor. */
    static final double MOST_ZERO_AMPS = 0.15;

    static final String ZERO_CURRENT = "zero current";
    static final String ZERO_PULSES = "zero pulses";

    private RestChecks() {}

    static List<StandCheck> of(Optional<RestReading> rest, StandExpectations stand) {
        return rest.map(r -> List.of(supply(r, stand), current(r), pulses(r))).orElseGet(RestChecks::missing);
    }

    private static List<StandCheck> missing() {
        return List.of(check(
                SUPPLY,
                false,
                "no sample was taken armed and at rest before the first set point",
                "let the stand rest for a second before the first set point, then run again"));
    }

    private static StandCheck supply(RestReading rest, StandExpectations stand) {
        double least = stand.supplyVolts() * (1 - SUPPLY_SHARE);
        double most = stand.supplyVolts() * (1 + SUPPLY_SHARE);
        return check(
                SUPPLY,
                rest.volts() >= least && rest.volts() <= most,
                format("%.2f V at rest, allowed are %.2f to %.2f V", rest.volts(), least, most),
                format("set the supply to %.1f V or charge the battery, then run again", stand.supplyVolts()));
    }

    private static StandCheck current(RestReading rest) {
        return check(
                ZERO_CURRENT,
                Math.abs(rest.amps()) <= MOST_ZERO_AMPS,
                format("%.2f A at rest, at most %.2f A allowed", rest.amps(), MOST_ZERO_AMPS),
                "pull the unit's plug: if the current still does not read 0, zero or replace the current sensor");
    }

    private static StandCheck pulses(RestReading rest) {
        return check(
                ZERO_PULSES,
                rest.pulses() == 0,
                format("%d pulses in %.1f s at rest, none allowed", rest.pulses(), rest.seconds()),
                "wait until the water stands still; if pulses still come, check the meter's cable and shield");
    }
}
