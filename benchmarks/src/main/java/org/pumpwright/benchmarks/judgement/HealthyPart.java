package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.grade.Verdict;

/**
 * Healthy units that had no part in the curve. Thread-safe.
 *
 * @param elsewhere on stands of their own
 * @param sameStand on the stand where the curve was made
 */
record HealthyPart(List<Judgement> elsewhere, List<Judgement> sameStand) {
    static HealthyPart of(Worlds worlds, int units) {
        List<Judgement> elsewhere = worlds.each(
                "healthy units",
                0,
                units,
                unit -> worlds.judge(unit, worlds.of(unit).unit(unit)));
        List<Judgement> same = worlds.each("healthy units, curve's own stand", units, units / 4, unit -> {
            World world = worlds.of(unit);
            UnitRun run = worlds.stand().run(world.unit(unit), World.curveSensors(world.number()), world.seed(unit));
            return Judgement.of(worlds.stand(), run, world.curve());
        });
        return new HealthyPart(elsewhere, same);
    }

    Share falseFails() {
        return Share.of(elsewhere, j -> j.verdict() == Verdict.FAIL);
    }

    List<String> lines(String physics) {
        List<String> lines = new ArrayList<>();
        lines.add(line(physics + ", stands of their own", elsewhere));
        lines.add(line(physics + ", the curve's own stand", sameStand));
        return lines;
    }

    private static String line(String words, List<Judgement> judged) {
        StringBuilder line = new StringBuilder("| " + words + " | " + judged.size() + " |");
        for (Verdict verdict : List.of(Verdict.PASS, Verdict.INCONCLUSIVE, Verdict.FAIL, Verdict.INVALID)) {
            line.append(' ')
                    .append(Share.of(judged, j -> j.verdict() == verdict).text())
                    .append(" |");
        }
        return line.toString();
    }

    static String head() {
        return """
                | healthy units | units | PASS | INCONCLUSIVE | FAIL | INVALID |
                | --- | --- | --- | --- | --- | --- |""";
    }
}
