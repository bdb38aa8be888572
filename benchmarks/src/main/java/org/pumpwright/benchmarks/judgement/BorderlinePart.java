package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.pumpwright.benchmarks.judgement.OperatingPlot.OperatingPoint;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.PumpParameters;

/**
 * Units whose worst judged feature truly lies a given number of its standard uncertainties from its limit. Thread-safe.
 *
 * @param steps one for each distance
 */
record BorderlinePart(List<Step> steps) {
    /** A run counts when its true distance, at the temperature and the uncertainty it came to, is as near as this. */
    private static final double NEAR = 0.3;

    private static final int FIRST_UNIT = 20_000;
    private static final int UNITS_APART = 10_000;
    private static final int TRIES = 60;
    private static final int TRY_APART = 10_000_000;
    private static final int MOST_AGAIN = 2;

    /**
     * Units at one distance.
     *
     * @param distance outside the limit in u; below 0 inside
     * @param judged the units
     * @param leftOut units that came out at another distance
     */
    record Step(int distance, List<Judgement> judged, int leftOut) {
        Share share(Verdict verdict) {
            return Share.of(judged, j -> j.verdict() == verdict);
        }
    }

    /**
     * Makes and runs the units.
     *
     * @param units at each distance; more at 2 u and beyond, where few may pass
     */
    static BorderlinePart of(Worlds worlds, Doubts doubts, int units, int unitsBeyond) {
        List<Step> steps = new ArrayList<>();
        for (int distance = -3; distance <= 3; distance++) {
            int from = FIRST_UNIT + UNITS_APART * (distance + 3);
            int there = distance;
            List<Judgement> all = worlds.each(
                    "units at %+d u".formatted(distance),
                    from,
                    distance >= 2 ? unitsBeyond : units,
                    unit -> judge(worlds, doubts, unit, there));
            List<Judgement> near = all.stream().filter(j -> !isTooFar(j, there)).toList();
            steps.add(new Step(distance, near, all.size() - near.size()));
        }
        return new BorderlinePart(List.copyOf(steps));
    }

    /** Where the unit came out too far off, it is made again with what its own run has told of warmth and uncertainty. */
    private static Judgement judge(Worlds worlds, Doubts doubts, int unit, int distance) {
        World world = worlds.of(unit);
        Moved moved = moved(world, new Truth(world.curve(), doubts), unit, distance);
        Judgement judgement = worlds.judge(unit, moved.unit());
        for (int again = 0; again < MOST_AGAIN && isTooFar(judgement, distance); again++) {
            if (judgement.readings().isEmpty()) {
                break;
            }
            Truth told = new Truth(world.curve(), Doubts.of(List.of(judgement)));
            Optional<Moved> better = moved(told, moved.healthy(), moved.mover(), distance);
            if (better.isEmpty()) {
                break;
            }
            judgement = worlds.judge(unit, better.get().unit());
        }
        return judgement;
    }

    private static boolean isTooFar(Judgement judgement, int distance) {
        return !(Math.abs(judgement.outside() - distance) <= NEAR);
    }

    /** A healthy unit with one of its parameters moved as far as it takes. */
    private record Moved(PumpParameters healthy, Mover mover, double way) {
        PumpParameters unit() {
            return mover.move(healthy, way);
        }
    }

    private static Moved moved(World world, Truth truth, int unit, int distance) {
        Mover[] movers = Mover.values();
        for (int i = 0; i < TRIES; i++) {
            PumpParameters healthy = world.unit(unit + i * TRY_APART);
            Optional<Moved> moved = moved(truth, healthy, movers[(unit / 7 + i) % movers.length], distance);
            if (moved.isPresent()) {
                return moved.get();
            }
        }
        throw new IllegalStateException("no unit can be brought to %d u from its limit".formatted(distance));
    }

    private static Optional<Moved> moved(Truth truth, PumpParameters healthy, Mover mover, int distance) {
        OptionalDouble way = Crossing.of(far -> truth.outside(mover.move(healthy, far)), distance, mover.most());
        return way.isPresent() ? Optional.of(new Moved(healthy, mover, way.getAsDouble())) : Optional.empty();
    }

    /** The same for a plot, beside the best possible judge and the flat band. */
    List<OperatingPoint> operatingPoints(BestJudge best) {
        return steps.stream().map(step -> operatingPoint(step, best)).toList();
    }

    private static OperatingPoint operatingPoint(Step step, BestJudge best) {
        List<Judgement> judged = step.judged();
        long byBest = IntStream.range(0, judged.size())
                .parallel()
                .filter(i -> best.passes(judged.get(i), i))
                .count();
        Share byFlat =
                Share.of(judged, j -> ReturnsPart.flatPass(j, best.worlds().of(j)));
        return OperatingPoint.of(step, new Share(byBest, judged.size()).value(), byFlat.value());
    }

    /** Passes among all units at 2 u and beyond. */
    Share falsePasses() {
        List<Judgement> beyond = steps.stream()
                .filter(step -> step.distance() >= 2)
                .flatMap(step -> step.judged().stream())
                .toList();
        return Share.of(beyond, j -> j.verdict() == Verdict.PASS);
    }

    List<String> lines(String physics) {
        List<String> lines = new ArrayList<>();
        for (Step step : steps) {
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %+d u | %d | %s | %s | %s | %s | %s |",
                    physics,
                    step.distance(),
                    step.judged().size(),
                    step.share(Verdict.PASS).percent(),
                    step.share(Verdict.INCONCLUSIVE).percent(),
                    step.share(Verdict.FAIL).percent(),
                    step.share(Verdict.INVALID).percent(),
                    step.leftOut()));
        }
        return lines;
    }

    static String head() {
        return """
                | physics | worst feature outside its limit by | units | PASS % | INCONCLUSIVE % | FAIL % | INVALID % | left out |
                | --- | --- | --- | --- | --- | --- | --- | --- |""";
    }
}
