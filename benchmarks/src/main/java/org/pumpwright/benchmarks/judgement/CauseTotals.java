package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;

/**
 * How often the true cause was named, over all faults that the readings at hand can tell apart: those whose nearest rival is at
 * least three standard deviations away at moderate size. Thread-safe.
 *
 * @param cells of single faults
 * @param separable the faults
 */
record CauseTotals(List<FaultPart.Cell> cells, Set<PumpFault> separable) {
    private static final Set<PumpFault> BY_SWEEP = EnumSet.of(
            PumpFault.SLIP,
            PumpFault.DEAD_CHAMBER,
            PumpFault.TORN_DIAPHRAGM,
            PumpFault.DRAG,
            PumpFault.WEAK_MAGNETS,
            PumpFault.BRUSH,
            PumpFault.SHORTED_TURNS,
            PumpFault.STRAINER,
            PumpFault.OPEN_CIRCUIT,
            PumpFault.SEIZED,
            PumpFault.SUCTION_AIR,
            PumpFault.LEAD_RESISTANCE,
            PumpFault.LOW_SUPPLY,
            PumpFault.NOZZLE_PLUGGED,
            PumpFault.NOZZLE_WORN);

    private static final Set<PumpFault> BY_DEAD_HEAD = EnumSet.of(PumpFault.BYPASS_LOW, PumpFault.RECIRCULATION_OPEN);

    static CauseTotals quick(FaultPart part) {
        return new CauseTotals(single(part), BY_SWEEP);
    }

    static CauseTotals full(FaultPart part) {
        Set<PumpFault> all = EnumSet.copyOf(BY_SWEEP);
        all.addAll(BY_DEAD_HEAD);
        return new CauseTotals(single(part), all);
    }

    private static List<FaultPart.Cell> single(FaultPart part) {
        return part.cells().stream().filter(cell -> !cell.pair()).toList();
    }

    List<String> lines(String physics) {
        List<String> lines = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<FaultPart.Cell> of = cells.stream()
                    .filter(cell -> cell.severity() == severity && separable.contains(cell.fault()))
                    .toList();
            lines.add(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %s |",
                    physics,
                    severity.name().toLowerCase(Locale.ROOT),
                    sum(of, 1).of(),
                    sum(of, 1).percent(),
                    sum(of, 3).percent()));
        }
        return lines;
    }

    private static Share sum(List<FaultPart.Cell> cells, int places) {
        long hits = cells.stream().mapToLong(cell -> cell.named(places).hits()).sum();
        long of = cells.stream().mapToLong(cell -> cell.named(places).of()).sum();
        return new Share(hits, of);
    }

    static String head() {
        return """
                | physics | severity of separable faults | runs that did not pass | named first % | among three % |
                | --- | --- | --- | --- | --- |""";
    }
}
