package org.pumpwright.host.stand.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.pumpwright.protocol.Limit;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.SafeReason;

/** Which of the board's limits was exceeded for longer than its time. Looks once a millisecond. Confined to the run thread. */
final class LimitsWatch {
    private static final int DRY_FROM_DUTY = 19_661;

    private final Limits own;
    private final List<Rule> rules;
    private Limits present;
    private long drivenMillis;

    /**
     * What the board sees now; a reading is empty where no channel has it.
     *
     * @param duty the highest duty of any drive, in 1/65536
     * @param pumpDuty that of drive 0
     */
    record Moment(OptionalInt amps, OptionalInt pressure, OptionalInt volts, int duty, int pumpDuty) {}

    /** A limit that was exceeded, and the reading that did it. */
    record Trip(SafeReason reason, int reading) {}

    LimitsWatch(Limits own) {
        this.own = own;
        present = own;
        rules = List.of(
                new Rule(SafeReason.OVER_CURRENT, () -> present.supplyAmpsMs()),
                new Rule(SafeReason.OVER_PRESSURE, () -> present.pressureMs()),
                new Rule(SafeReason.DEAD_HEAD, () -> present.deadHeadMs()),
                new Rule(SafeReason.DRY_RUN, () -> present.dryMs()),
                new Rule(SafeReason.OVER_VOLTAGE, () -> present.voltsMs()));
    }

    Limits present() {
        return present;
    }

    /** Sets one limit; the caller has made sure that it widens nothing. */
    void tighten(Limit limit, long value) {
        present = present.with(limit, value);
    }

    /** The board's own limits again. */
    void reset() {
        present = own;
    }

    /** An armed stretch begins. */
    void begin() {
        drivenMillis = 0;
        rules.forEach(rule -> rule.millis = 0);
    }

    /** Looks at a millisecond of a stretch, proving included. */
    Optional<Trip> millisecond(Moment now) {
        List<Optional<Trip>> found = new ArrayList<>();
        found.add(rules.get(0).look(above(now.amps(), present.supplyAmps()), now.amps()));
        found.add(rules.get(1).look(above(now.pressure(), present.pressure()), now.pressure()));
        boolean deadHead = now.duty() > 0 && above(now.pressure(), present.deadHeadPressure());
        found.add(rules.get(2).look(deadHead, now.pressure()));
        boolean dry = now.pumpDuty() >= DRY_FROM_DUTY
                && now.amps().isPresent()
                && now.amps().getAsInt() < present.dryAmps();
        found.add(rules.get(3).look(dry, now.amps()));
        found.add(rules.get(4).look(above(now.volts(), present.volts()), now.volts()));
        found.add(runTime(now.duty() > 0));
        return found.stream().flatMap(Optional::stream).findFirst();
    }

    private Optional<Trip> runTime(boolean driven) {
        drivenMillis += driven ? 1 : 0;
        return driven && drivenMillis > present.runTimeMs()
                ? Optional.of(new Trip(SafeReason.RUN_TIME, 0))
                : Optional.empty();
    }

    private static boolean above(OptionalInt reading, long limit) {
        return reading.isPresent() && reading.getAsInt() > limit;
    }

    /** One rule and for how long it has been fulfilled. */
    private static final class Rule {
        private final SafeReason reason;
        private final Supplier<Long> longest;
        private long millis;

        Rule(SafeReason reason, Supplier<Long> longest) {
            this.reason = reason;
            this.longest = longest;
        }

        Optional<Trip> look(boolean fulfilled, OptionalInt reading) {
            millis = fulfilled ? millis + 1 : 0;
            return fulfilled && millis > longest.get()
                    ? Optional.of(new Trip(reason, reading.orElse(0)))
                    : Optional.empty();
        }
    }
}
