package org.pumpwright.host.rule;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;

/**
 * One version of the rules by which units of a kind are judged. Thread-safe.
 *
 * @param name short name, the same as the file's
 * @param version counts up with every change to the file
 * @param title for people
 * @param kind the kind of unit
 * @param basis where the numbers come from, in words
 * @param decision the guard and the retests
 * @param corrections how far a point may be corrected
 * @param nozzle how the nozzle weighs on a point
 * @param doubts uncertainties that one run does not show
 * @param limits limits of single readings, the weightier first
 * @param words what words in the place of figures mean
 * @param passNeeds complaints that need a plan of their own
 * @param ladder what is tried in turn when a run is in doubt, plain sentences
 */
public record GradingRules(
        String name,
        int version,
        String title,
        UnitKind kind,
        String basis,
        DecisionNumbers decision,
        CorrectionLimits corrections,
        NozzleEffect nozzle,
        List<KnownDoubt> doubts,
        List<ReadingLimit> limits,
        List<WordRule> words,
        List<PassNeed> passNeeds,
        List<String> ladder) {
    private static final List<String> LADDER = List.of("new prime, same set-up, once more");

    public GradingRules {
        doubts = List.copyOf(doubts);
        limits = List.copyOf(limits);
        words = List.copyOf(words);
        passNeeds = List.copyOf(passNeeds);
        ladder = List.copyOf(ladder);
    }

    /** What holds where a shop has no rules for a kind: the guard and the limits of corrections, and no reading is judged. */
    public static GradingRules standard(UnitKind kind) {
        return new GradingRules(
                "none",
                0,
                "the program's own",
                kind,
                "",
                DecisionNumbers.STANDARD,
                CorrectionLimits.STANDARD,
                NozzleEffect.NONE,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                LADDER);
    }

    /** The name and version as they are printed on every paper. */
    public String label() {
        return version == 0 ? title : name + " v" + version;
    }

    /** The limit of a reading: the first that fits. */
    public Optional<ReadingLimit> limit(String step, String reading) {
        return limits.stream()
                .filter(limit -> limit.reading().fits(step, reading))
                .findFirst();
    }

    /** The plan that a complaint needs before a unit may pass, unless this one is it. */
    public Optional<PassNeed> passNeed(String complaint, String plan) {
        return passNeeds.stream()
                .filter(need ->
                        need.complaint().equals(complaint) && !need.plans().contains(plan))
                .findFirst();
    }

    /** What a word in the place of a reading means: the first rule that fits. */
    public Optional<WordRule> word(String step, String reading, String word) {
        return words.stream()
                .filter(rule -> rule.reading().fits(step, reading) && rule.speaksOf(word))
                .findFirst();
    }
}
