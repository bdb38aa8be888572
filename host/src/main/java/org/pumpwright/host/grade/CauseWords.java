package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.grade.CauseRanking.Ranked;

/** Ranked causes in words, each with the figures that point to it. Thread-safe. */
final class CauseWords {
    private final CauseAtlas atlas;
    private final List<Ranked> ranked;
    private final List<FeatureJudgement> upLeg;

    CauseWords(CauseAtlas atlas, List<Ranked> ranked, List<FeatureJudgement> upLeg) {
        this.atlas = atlas;
        this.ranked = ranked;
        this.upLeg = upLeg;
    }

    List<Cause> causes() {
        List<Cause> causes = new ArrayList<>();
        for (Ranked r : ranked) {
            causes.add(new Cause(
                    r.cause().name(),
                    tie(r) + figures(Feature.Kind.FLOW) + "; " + figures(Feature.Kind.MOTOR_AMPS) + ": "
                            + r.cause().pattern(),
                    r.cause().nextTest()));
        }
        return causes;
    }

    /** What splits the first two when they are tied, else what confirms the first; empty without causes. */
    Optional<String> nextTest() {
        if (ranked.isEmpty()) {
            return Optional.empty();
        }
        CausePattern first = ranked.get(0).cause();
        if (ranked.size() == 1 || !tied(ranked.get(1))) {
            return Optional.of(first.nextTest());
        }
        CausePattern second = ranked.get(1).cause();
        return Optional.of(atlas.split(first, second)
                .orElseGet(() -> first.nextTest() + "; if that does not show it: " + second.nextTest()));
    }

    private boolean tied(Ranked r) {
        return r.misfit() - ranked.get(0).misfit() < CauseRanking.TIE_GAP;
    }

    private String tie(Ranked r) {
        if (ranked.size() > 1 && r.equals(ranked.get(0)) && tied(ranked.get(1))) {
            return "tied with the next; ";
        }
        return !r.equals(ranked.get(0)) && tied(r) ? "tied with the first; " : "";
    }

    /** The deviations of one quantity at the first, middle and last set point; a ranking needs three, so they are there. */
    private String figures(Feature.Kind quantity) {
        List<FeatureJudgement> all =
                upLeg.stream().filter(f -> f.feature().quantity() == quantity).toList();
        int last = all.size() - 1;
        return quantity.words()
                + List.of(0, last / 2, last).stream()
                        .distinct()
                        .map(all::get)
                        .map(f -> " " + Phrases.percent(f.deviation()) + " at "
                                + f.feature().duty().print())
                        .collect(Collectors.joining(","));
    }
}
