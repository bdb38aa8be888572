package org.pumpwright.host.grade.finding;

import java.util.List;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.signal.PulseTrain;

/** All holds in which nothing may flow in one word: whether a meter counted all the same. Thread-safe. */
final class QuietMeter {
    private QuietMeter() {}

    static List<Finding> of(FindingInput input) {
        boolean tried =
                holds(input).stream().anyMatch(hold -> !input.times(hold).isEmpty());
        return input.plan().kind() == UnitKind.METER && tried
                ? List.of(
                        word("pulses without flow", MeterFindings.RETURNED, input),
                        word("pulses of the master without flow", MeterFindings.MASTER, input))
                : List.of();
    }

    private static List<Hold> holds(FindingInput input) {
        return input.plan().steps().stream()
                .filter(Hold.class::isInstance)
                .map(Hold.class::cast)
                .filter(hold -> hold.reads() == Reading.ZERO_FLOW)
                .toList();
    }

    private static Finding word(String name, int meter, FindingInput input) {
        long pulses = 0;
        boolean inStep = false;
        StringBuilder where = new StringBuilder();
        for (Hold hold : holds(input)) {
            for (Window whole : input.times(hold)) {
                Window time = NoFlowFindings.atRest(whole);
                boolean has = time.samples().get(0).meters().size() > meter;
                long here = has ? time.pulses(meter) : 0;
                if (here > 0) {
                    pulses += here;
                    PulseTrain train = time.train(meter);
                    inStep |= PwmLock.inStep(train, input.pwmHz());
                    where.append(where.isEmpty() ? "" : ", ")
                            .append(here)
                            .append(" in ")
                            .append(hold.name());
                }
            }
        }
        String word = pulses == 0 ? "none" : inStep ? "in step with the drive" : "seen";
        return Finding.word(MeterKFindings.STEP, name, word, where.toString());
    }
}
