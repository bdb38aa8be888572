package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.FaultMix;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;

/**
 * Units and stands with a fault. Thread-safe.
 *
 * @param cells one for each fault and severity, then some pairs
 */
record FaultPart(List<Cell> cells) {
    private static final int FIRST_UNIT = 200_000;
    private static final int UNITS_APART = 1_000;

    private static final List<String> PAIRS = List.of(
            "slip:moderate+low-supply:mild",
            "slip:moderate+drag:moderate",
            "brush:moderate+lead-resistance:mild",
            "drag:moderate+weak-magnets:moderate",
            "dead-chamber:moderate+suction-air:mild",
            "slip:moderate+nozzle-worn:mild");

    /** Units with the same faults. */
    record Cell(FaultMix mix, List<Judgement> judged) {
        PumpFault fault() {
            return mix.parts().get(0).fault();
        }

        Severity severity() {
            return mix.parts().get(0).severity();
        }

        boolean pair() {
            return mix.parts().size() > 1;
        }

        Share share(Verdict verdict) {
            return Share.of(judged, j -> j.verdict() == verdict);
        }

        /** Of the runs that say something is wrong: those with one of the faults at this place of the list or before. */
        Share named(int places) {
            return told(j -> best(j) >= 1 && best(j) <= places);
        }

        private Share told(Predicate<Judgement> so) {
            List<Judgement> told = judged.stream()
                    .filter(j -> j.verdict() != Verdict.PASS && j.verdict() != Verdict.NOT_TESTED)
                    .toList();
            return Share.of(told, so);
        }

        /** Of the same: those that say a tie which holds one of the faults. */
        Share tied() {
            return told(j -> j.tied() > 1 && best(j) >= 1 && best(j) <= j.tied());
        }

        /** Of the same: those that name something else first and say no tie that holds one of the faults. */
        Share astray() {
            return told(j -> best(j) == 0 || best(j) > j.tied());
        }

        /** The best place of one of the faults; 0 when none was named. */
        private int best(Judgement judgement) {
            return mix.parts().stream()
                    .mapToInt(part -> NamedFault.place(part.fault(), judgement))
                    .filter(place -> place > 0)
                    .min()
                    .orElse(0);
        }

        /** Where it was not named first: what was, by number. */
        String instead() {
            Map<String, Integer> counts = new TreeMap<>();
            judged.stream()
                    .filter(j -> j.verdict() != Verdict.PASS)
                    .filter(j -> mix.parts().stream().noneMatch(part -> NamedFault.place(part.fault(), j) == 1))
                    .forEach(j -> counts.merge(first(j), 1, Integer::sum));
            return counts.entrySet().stream()
                    .sorted((a, b) -> b.getValue() - a.getValue())
                    .limit(3)
                    .map(e -> e.getKey() + " " + e.getValue())
                    .reduce((a, b) -> a + "; " + b)
                    .orElse("");
        }

        private static String first(Judgement j) {
            if (!j.failedChecks().isEmpty()) {
                return "check: " + j.failedChecks().get(0);
            }
            return j.causes().isEmpty() ? "nothing" : j.causes().get(0);
        }
    }

    /**
     * Makes and runs the units.
     *
     * @param moderate units of each fault of moderate size
     * @param other units of each other severity, and of each pair
     */
    static FaultPart of(Worlds worlds, int moderate, int other) {
        List<FaultMix> mixes = new ArrayList<>();
        for (PumpFault fault : PumpFault.values()) {
            if (fault != PumpFault.HEALTHY) {
                for (Severity severity : severities(fault)) {
                    mixes.add(FaultMix.of(fault, severity));
                }
            }
        }
        PAIRS.forEach(pair -> mixes.add(FaultMix.parse(pair)));
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < mixes.size(); i++) {
            FaultMix mix = mixes.get(i);
            List<Judgement> judged = worlds.each(
                    mix.toString(),
                    FIRST_UNIT + UNITS_APART * i,
                    ofOne(mix, Severity.MODERATE) ? moderate : other,
                    unit -> worlds.judge(unit, worlds.of(unit).faulty(unit, mix)));
            cells.add(new Cell(mix, judged));
        }
        return new FaultPart(List.copyOf(cells));
    }

    private static List<Severity> severities(PumpFault fault) {
        return switch (fault) {
            case SEIZED, OPEN_CIRCUIT, POLARITY -> List.of(Severity.MODERATE);
            default -> List.of(Severity.values());
        };
    }

    private static boolean ofOne(FaultMix mix, Severity severity) {
        return mix.parts().size() == 1 && mix.parts().get(0).severity() == severity;
    }

    List<String> lines() {
        return cells.stream().map(FaultPart::line).toList();
    }

    private static String line(Cell cell) {
        return String.format(
                Locale.ROOT,
                "| `%s` | %s | %s | %s | %s | %s | %s | %s | %s | %s |",
                cell.mix(),
                cell.share(Verdict.PASS).percent(),
                cell.share(Verdict.INCONCLUSIVE).percent(),
                cell.share(Verdict.FAIL).percent(),
                cell.share(Verdict.INVALID).percent(),
                cell.named(1).percent(),
                cell.named(3).percent(),
                cell.tied().percent(),
                cell.astray().percent(),
                cell.instead());
    }

    static String head() {
        return """
                | fault | PASS % | INCONCLUSIVE % | FAIL % | INVALID % | named first % | among three % | in a said tie % | something else, no tie % | named first instead |
                | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |""";
    }
}
