package org.pumpwright.host.grade.cause;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pumpwright.host.grade.cause.Cause.Numbers;
import org.pumpwright.host.grade.cause.CauseTexts.Text;

/** Ranked causes in words, each with the figures that point to it. Thread-safe. */
final class CauseWords {
    /** A squared distance this many times the number of readings is never seen in units with the cause (assumed). */
    private static final double NEVER = 6;

    private final Evidence evidence;
    private final CauseTexts texts;
    private final List<Ranked> ranked;
    private final int readings;

    CauseWords(Evidence evidence, Atlas atlas, CauseTexts texts, List<Ranked> ranked) {
        this.evidence = evidence;
        this.texts = texts;
        this.ranked = ranked;
        readings = new AtlasView(atlas, evidence).names().size();
    }

    boolean noneFits() {
        return ranked.stream().allMatch(one -> one.squaredDistance() > NEVER * readings);
    }

    Cause cause(Ranked one) {
        List<Text> all = texts(one);
        String name = all.stream().map(Text::name).collect(Collectors.joining(", and also: "));
        String pattern = all.stream().map(Text::pattern).collect(Collectors.joining("; "));
        String figures = figures();
        double behind = Causes.behind(ranked, one);
        return new Cause(
                name,
                tie(one) + figures + (figures.isEmpty() ? "" : ": ") + pattern,
                confirms(one),
                Optional.of(new Numbers(share(one), behind, one.severity(), one.squaredDistance(), readings)));
    }

    String confirms(Ranked one) {
        return texts(one).stream().map(Text::nextTest).collect(Collectors.joining("; then: "));
    }

    /** The share of a cause among all that were considered, each as likely as any other beforehand. */
    double share(Ranked one) {
        double all = 0;
        for (Ranked other : ranked) {
            all += StrictMath.exp(-Causes.behind(ranked, other));
        }
        return StrictMath.exp(-Causes.behind(ranked, one)) / all;
    }

    private List<Text> texts(Ranked one) {
        return one.ids().stream()
                .map(id -> texts.text(id)
                        .orElseThrow(() -> new IllegalStateException("the program has no words for the cause " + id)))
                .toList();
    }

    private String tie(Ranked one) {
        boolean first = one.equals(ranked.get(0));
        if (first && ranked.size() > 1 && Causes.behind(ranked, ranked.get(1)) < Causes.TIE_GAP) {
            return "tied with the next; ";
        }
        return !first && Causes.behind(ranked, one) < Causes.TIE_GAP ? "tied with the first; " : "";
    }

    /** How flow and motor amps lie against the healthy curve at the first, middle and last set point. */
    private String figures() {
        return Stream.of(Map.entry("flow@", "flow"), Map.entry("amps@", "motor amps"))
                .map(entry -> figures(entry.getKey(), entry.getValue()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private String figures(String prefix, String words) {
        List<Map.Entry<Double, Double>> all = evidence.observations().entrySet().stream()
                .filter(entry -> entry.getKey().startsWith(prefix))
                .map(entry -> Map.entry(
                        Double.valueOf(entry.getKey().substring(prefix.length())),
                        entry.getValue().value()))
                .sorted(Map.Entry.comparingByKey())
                .toList();
        if (!evidence.againstCurve() || all.isEmpty()) {
            return "";
        }
        int last = all.size() - 1;
        return words
                + Stream.of(0, last / 2, last)
                        .distinct()
                        .map(all::get)
                        .map(entry -> String.format(
                                Locale.ROOT,
                                " %+.0f %% at %.0f %%",
                                (StrictMath.exp(entry.getValue()) - 1) * 100,
                                entry.getKey()))
                        .collect(Collectors.joining(","));
    }
}
