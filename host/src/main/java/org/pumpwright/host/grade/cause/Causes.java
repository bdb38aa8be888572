package org.pumpwright.host.grade.cause;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.pumpwright.host.grade.cause.CauseTexts.Need;
import org.pumpwright.host.grade.cause.CauseTexts.Text;

/**
 * The likely causes of what one run has read, in words. Thread-safe.
 *
 * @param listed at most {@link #MOST_LISTED}, the likeliest first; a tie with the first is said in its words
 * @param nextTest the test that splits a tie or confirms the first; empty when nothing is listed
 * @param missing what was not read and is needed to name a cause or to name it more surely, for people
 * @param noneFits true when the readings lie farther from every known cause than units with it ever do
 */
public record Causes(List<Cause> listed, Optional<String> nextTest, List<String> missing, boolean noneFits) {
    /** More would be no help to a technician. */
    public static final int MOST_LISTED = 3;

    /** Within this natural logarithm of the first, odds below 100 to 1, a cause is tied with it. */
    public static final double TIE_GAP = 4.6;

    /** A cause this much less likely than the first is not worth a technician's time. */
    private static final double LISTED_GAP = 9.2;

    private static final String READ_AS_WELL = "not read, and would name the cause more surely: ";

    public Causes {
        listed = List.copyOf(listed);
        missing = List.copyOf(missing);
    }

    /** The causes of a run; none for a kind of unit without an atlas. */
    public static Causes of(CauseInput input) {
        Optional<Atlas> atlas = Atlas.of(input.kind());
        Optional<CauseTexts> texts = CauseTexts.of(input.kind());
        if (atlas.isEmpty() || texts.isEmpty()) {
            return new Causes(List.of(), Optional.empty(), List.of(), false);
        }
        return of(Evidence.of(input), atlas.get(), texts.get());
    }

    static Causes of(Evidence evidence, Atlas atlas, CauseTexts texts) {
        List<Ranked> all = CauseRanking.rank(atlas, evidence);
        List<Ranked> ranked = all.stream()
                .filter(one ->
                        Text.missing(asked(one, texts, Text::needs), evidence).isEmpty())
                .toList();
        Set<String> missing = new LinkedHashSet<>();
        all.stream()
                .filter(one -> behind(all, one) <= LISTED_GAP)
                .forEach(one -> missing.addAll(Text.missing(asked(one, texts, Text::needs), evidence)));
        if (ranked.isEmpty()) {
            return new Causes(List.of(), Optional.empty(), List.copyOf(missing), false);
        }
        CauseWords words = new CauseWords(evidence, atlas, texts, ranked);
        if (words.noneFits()) {
            return new Causes(List.of(), Optional.empty(), List.copyOf(missing), true);
        }
        List<Ranked> listed = ranked.stream()
                .filter(one -> behind(ranked, one) <= LISTED_GAP)
                .limit(MOST_LISTED)
                .toList();
        listed.forEach(one -> missing.addAll(Text.missing(asked(one, texts, Text::surer), evidence)));
        List<Cause> causes = new ArrayList<>(listed.stream().map(words::cause).toList());
        causes.set(0, surer(causes.get(0), missing));
        return new Causes(causes, Optional.of(nextTest(listed, texts, words)), List.copyOf(missing), false);
    }

    /** What was not read goes with the test of the first cause, which every page prints. */
    private static Cause surer(Cause first, Set<String> missing) {
        String more = missing.isEmpty() ? "" : "; " + READ_AS_WELL + String.join(", ", missing);
        return new Cause(first.name(), first.because(), first.nextTest() + more, first.numbers());
    }

    private static List<Need> asked(Ranked one, CauseTexts texts, Function<Text, List<Need>> which) {
        return one.ids().stream()
                .flatMap(id -> texts.text(id).map(which).orElse(List.of()).stream())
                .toList();
    }

    static double behind(List<Ranked> ranked, Ranked one) {
        return ranked.get(0).logLikelihood() - one.logLikelihood();
    }

    /** What to read before a cause can be named, for a sentence; empty where nothing is missing. */
    public String toRead() {
        return missing.isEmpty() ? "" : READ_AS_WELL + String.join(", ", missing);
    }

    private static String nextTest(List<Ranked> listed, CauseTexts texts, CauseWords words) {
        List<Ranked> tied =
                listed.stream().filter(one -> behind(listed, one) < TIE_GAP).toList();
        if (tied.size() > 1) {
            Map<String, Double> shares = new LinkedHashMap<>();
            tied.forEach(one -> shares.put(one.ids().get(0), words.share(one)));
            Optional<String> splitting = NextTest.splitting(texts.tests(), shares);
            if (splitting.isPresent()) {
                return splitting.get();
            }
            return words.confirms(tied.get(0)) + "; if that does not show it: " + words.confirms(tied.get(1));
        }
        return words.confirms(tied.get(0));
    }
}
