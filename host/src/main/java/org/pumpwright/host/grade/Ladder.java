package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.rule.GradingRules;

/**
 * What is tried next when a run leaves the verdict open: a rung for each run, each changing one thing, and after the last
 * retest a person. Repeating until it passes would make every unit pass. Thread-safe.
 */
final class Ladder {
    private Ladder() {}

    static String next(GradingRules rules, int attempt) {
        if (attempt > rules.decision().mostRetests()) {
            return Phrases.format(
                    "run %d of %d was the last retest: a named person decides now, and writes down the reason",
                    attempt, rules.decision().mostRetests() + 1);
        }
        List<String> rungs = rules.ladder();
        return rungs.get(Math.min(attempt, rungs.size()) - 1);
    }
}
