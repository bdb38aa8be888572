package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.rule.DecisionNumbers;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.ReadingLimit;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.rule.WordRule;

/** Holds the readings of steps against the limits that a shop's rules set for them. Thread-safe. */
final class ReadingJudge {
    private final GradingRules rules;

    ReadingJudge(GradingRules rules) {
        this.rules = rules;
    }

    /**
     * A reading that came as a word.
     *
     * @param finding the reading
     * @param meaning what follows
     * @param says why, in plain words
     */
    record Spoken(Finding finding, WordRule.Meaning meaning, String says) {}

    /** Every figure that has a limit. */
    List<FeatureJudgement> figures(List<Finding> findings) {
        List<FeatureJudgement> judged = new ArrayList<>();
        for (Finding finding : findings) {
            Optional<ReadingLimit> limit = rules.limit(finding.step(), finding.name());
            if (limit.isPresent() && finding.outcome() instanceof Finding.Figure figure && fits(limit.get(), figure)) {
                judged.add(judgement(finding, figure, limit.get()));
            }
        }
        return judged;
    }

    /** Every word that means something; a judged reading whose word nobody has thought of leaves the verdict open. */
    List<Spoken> words(List<Finding> findings) {
        List<Spoken> spoken = new ArrayList<>();
        for (Finding finding : findings) {
            Optional<ReadingLimit> limit =
                    rules.limit(finding.step(), finding.name()).filter(each -> each.role() == Role.JUDGED);
            if (finding.outcome() instanceof Finding.Word word) {
                said(finding, word, limit.isPresent()).ifPresent(spoken::add);
            } else if (limit.isPresent()
                    && finding.outcome() instanceof Finding.Figure figure
                    && !fits(limit.get(), figure)) {
                spoken.add(new Spoken(
                        finding,
                        WordRule.Meaning.INCONCLUSIVE,
                        "%s is read in %s, and its limit is in %s (%s)"
                                .formatted(
                                        finding.name(),
                                        figure.unit().word(),
                                        limit.get().unit().word(),
                                        limit.get().lowSource().words())));
            }
        }
        return spoken;
    }

    private Optional<Spoken> said(Finding finding, Finding.Word word, boolean judged) {
        Optional<WordRule> rule = rules.word(finding.step(), finding.name(), word.word());
        if (rule.isPresent()) {
            return Optional.of(
                    new Spoken(finding, rule.get().meaning(), rule.get().says()));
        }
        return judged
                ? Optional.of(new Spoken(
                        finding,
                        WordRule.Meaning.INCONCLUSIVE,
                        finding.name() + ": " + word.word() + (finding.note().isBlank() ? "" : ", " + finding.note())))
                : Optional.empty();
    }

    private static boolean fits(ReadingLimit limit, Finding.Figure figure) {
        return limit.unit().keptIn().equals(figure.unit().word());
    }

    private FeatureJudgement judgement(Finding finding, Finding.Figure figure, ReadingLimit limit) {
        DecisionNumbers numbers = rules.decision();
        GuardBand guard = new GuardBand(numbers.guardFactor());
        Limits limits = new Limits(
                "rules " + rules.label(),
                limit.low(),
                OptionalDouble.empty(),
                limit.high(),
                source(limit, figure.value().value()),
                limit.outside());
        return new FeatureJudgement(
                Feature.reading(finding.step(), finding.name(), figure.unit()),
                OptionalDouble.empty(),
                figure.value(),
                limits,
                new Guard(guard.factor(), guard.width(figure.value()), numbers.guardSource()),
                guard.decide(figure.value(), limits),
                limit.role());
    }

    /** The line of the limit that is nearer to the value. */
    private static Source source(ReadingLimit limit, double value) {
        return value - limit.low() < limit.high() - value ? limit.lowSource() : limit.highSource();
    }
}
