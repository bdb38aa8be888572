package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.pumpwright.host.grade.Verdict;

/**
 * A mix of units as it comes through the door, judged three ways. A verdict is wrong when it passes a unit that truly lies
 * outside a limit, or fails one that lies inside all. Thread-safe.
 *
 * @param returned the units whose features could all be read
 * @param unread units that could not be read
 * @param best the best possible judge
 */
record ReturnsPart(List<Returned> returned, int unread, BestJudge best) {
    private static final int FIRST_UNIT = 400_000;
    private static final double FLAT_BAND = 0.10;

    /**
     * One unit.
     *
     * @param judgement the program's
     * @param bad whether it truly lies outside a limit
     * @param outside probability of that, to the best possible judge
     * @param flatPass whether its flow at full duty lies within a flat band
     */
    record Returned(Judgement judgement, boolean bad, double outside, boolean flatPass) {
        boolean is(Verdict verdict) {
            return judgement.verdict() == verdict;
        }

        double doubt() {
            return Math.min(outside, 1 - outside);
        }
    }

    static ReturnsPart of(Worlds worlds, Doubts doubts, int units) {
        List<Truth> truths = worlds.all().stream()
                .map(world -> new Truth(world.curve(), doubts))
                .toList();
        List<Judgement> judged = worlds.each("returned units", FIRST_UNIT, units, unit -> {
            World world = worlds.of(unit);
            return worlds.judge(unit, Prior.unit(world, truths.get(world.number()), unit));
        });
        BestJudge best = BestJudge.of(worlds, doubts, Noise.of(judged));
        List<Returned> returned = IntStream.range(0, judged.size())
                .parallel()
                .filter(i -> !judged.get(i).readings().isEmpty())
                .mapToObj(i -> returned(judged.get(i), best, i))
                .toList();
        return new ReturnsPart(returned, judged.size() - returned.size(), best);
    }

    private static Returned returned(Judgement judgement, BestJudge best, int seed) {
        World world = best.worlds().of(judgement);
        return new Returned(
                judgement, judgement.outside() > 0, best.outside(judgement, seed), flatPass(judgement, world));
    }

    /** What a shop does without a curve: so much flow at full duty, or not. */
    static boolean flatPass(Judgement judgement, World world) {
        return judgement
                .fullFlow()
                .filter(flow -> Math.abs(flow / world.fullFlow() - 1) <= FLAT_BAND)
                .isPresent();
    }

    List<String> lines(String physics) {
        List<Returned> decided = returned.stream()
                .filter(r -> r.is(Verdict.PASS) || r.is(Verdict.FAIL))
                .toList();
        // The best judge leaves as many undecided as the program does: those it is the least sure of.
        List<Returned> surest = returned.stream()
                .sorted(Comparator.comparingDouble(Returned::doubt))
                .limit(decided.size())
                .toList();
        List<String> lines = new ArrayList<>();
        lines.add(line(physics, "Pumpwright, as it is", decided, r -> r.is(Verdict.PASS)));
        lines.add(line(physics, "best possible, as many left undecided", surest, r -> r.outside() <= 0.5));
        lines.add(line(
                physics,
                "Pumpwright, forced: no guard",
                returned,
                r -> r.judgement().simplyInside()));
        lines.add(line(physics, "best possible, forced", returned, r -> r.outside() <= 0.5));
        lines.add(line(physics, "flat +-10 % of flow at full duty", returned, Returned::flatPass));
        return lines;
    }

    private String line(String physics, String words, List<Returned> decided, Predicate<Returned> passes) {
        Share badPassed = new Share(
                decided.stream().filter(r -> r.bad() && passes.test(r)).count(), returned.size());
        Share goodFailed = new Share(
                decided.stream().filter(r -> !r.bad() && !passes.test(r)).count(), returned.size());
        Share wrong = new Share(badPassed.hits() + goodFailed.hits(), returned.size());
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s | %.1f %% |",
                physics,
                words,
                badPassed.text(),
                goodFailed.text(),
                wrong.text(),
                100.0 * (returned.size() - decided.size()) / returned.size());
    }

    String sizes() {
        long bad = returned.stream().filter(Returned::bad).count();
        return "%d units, %d of them truly outside a limit; %d more could not be read to the end."
                .formatted(returned.size(), bad, unread);
    }

    static String head() {
        return """
                | physics | way | bad passed | good failed | wrong in all | undecided |
                | --- | --- | --- | --- | --- | --- |""";
    }
}
