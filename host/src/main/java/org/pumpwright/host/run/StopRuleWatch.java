package org.pumpwright.host.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Sample;

/**
 * Holds every sample against the plan's stop rules. The board has limits of its own that no plan can widen. Confined to
 * the run thread.
 */
final class StopRuleWatch {
    private final StopRules rules;
    private final List<Rule> watched = new ArrayList<>();
    private long spentNanos;
    private long lastNanos = -1;

    StopRuleWatch(StopRules rules, Channels channels) {
        this.rules = rules;
        watched.add(new Rule(
                channels.required(ChannelRole.SUPPLY_AMPS),
                amps -> amps > rules.supplyAmpsAbove(),
                Ending.Kind.UNIT_OUT_OF_BOUNDS,
                "the unit drew %2$.1f A for %1$.1f s, the plan allows %3$.1f A",
                rules.supplyAmpsAbove(),
                1));
        watched.add(new Rule(
                channels.required(ChannelRole.VOLTS_AT_PINS),
                volts -> volts < rules.voltsAtPinsBelow(),
                Ending.Kind.STAND_UNFIT,
                "the volts at the pins fell to %2$.2f V for %1$.1f s, the plan needs %3$.2f V: check supply, contactor and lead",
                rules.voltsAtPinsBelow(),
                1));
        channels.analog(ChannelRole.OUTLET_PRESSURE)
                .ifPresent(channel -> watched.add(new Rule(
                        channel,
                        pascals -> pascals > rules.pressureAbovePascals(),
                        Ending.Kind.STAND_UNFIT,
                        "the outlet pressure rose to %2$.1f psi for %1$.1f s, the plan allows %3$.1f psi: check nozzle and"
                                + " valves",
                        rules.pressureAbovePascals(),
                        1 / Pressure.PASCALS_PER_PSI)));
    }

    void check(Sample sample) throws RunEnded {
        for (Rule rule : watched) {
            rule.check(sample);
        }
        checkTime(sample);
    }

    /** The stand is safe from now on: its readings mean nothing, and the time does not count. */
    void pause() {
        lastNanos = -1;
    }

    /** The stand is armed again. */
    void resume(Sample first) {
        lastNanos = first.boardNanos();
        watched.forEach(Rule::forget);
    }

    private void checkTime(Sample sample) throws RunEnded {
        spentNanos += lastNanos < 0 ? 0 : sample.boardNanos() - lastNanos;
        lastNanos = sample.boardNanos();
        if (spentNanos / 1e9 > rules.runSecondsAbove()) {
            throw new RunEnded(
                    Ending.Kind.STAND_UNFIT,
                    String.format(
                            Locale.ROOT,
                            "the run took more than the %.0f s that the plan allows",
                            rules.runSecondsAbove()));
        }
    }

    /** A reading that must not stay beyond its limit for the rules' time: one sample alone may be an inrush. */
    private final class Rule {
        private final AnalogChannel channel;
        private final DoublePredicate beyond;
        private final Ending.Kind kind;
        private final String words;
        private final double limit;
        private final double perSi;
        private long beyondSinceNanos = -1;

        Rule(
                AnalogChannel channel,
                DoublePredicate beyond,
                Ending.Kind kind,
                String words,
                double limit,
                double perSi) {
            this.channel = channel;
            this.beyond = beyond;
            this.kind = kind;
            this.words = words;
            this.limit = limit;
            this.perSi = perSi;
        }

        void forget() {
            beyondSinceNanos = -1;
        }

        void check(Sample sample) throws RunEnded {
            double now = channel.read(sample);
            if (!beyond.test(now)) {
                beyondSinceNanos = -1;
                return;
            }
            if (beyondSinceNanos < 0) {
                beyondSinceNanos = sample.boardNanos();
            }
            double seconds = (sample.boardNanos() - beyondSinceNanos) / 1e9;
            if (seconds >= rules.forSeconds()) {
                throw new RunEnded(kind, String.format(Locale.ROOT, words, seconds, now * perSi, limit * perSi));
            }
        }
    }
}
