package org.pumpwright.benchmarks.judgement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;

/** How long it takes to grade one stored run of the quick plan. Wall clock, one thread. Thread-safe. */
final class SpeedPart {
    private static final int WARM_UP = 30;
    private static final int TIMES = 200;
    private static final OffsetDateTime ANY_DAY = OffsetDateTime.parse("2026-01-01T12:00:00Z");

    private SpeedPart() {}

    static List<String> lines(World world, TestStand stand) throws Exception {
        List<String> lines = new ArrayList<>();
        lines.add(
                "| one stored run of the quick plan | graded, ms: median | 95 % below | read from its file and graded,"
                        + " ms: median | 95 % below | size of the file |");
        lines.add("| --- | --- | --- | --- | --- | --- |");
        for (PumpFault fault : List.of(PumpFault.HEALTHY, PumpFault.SLIP)) {
            UnitRun run =
                    stand.run(fault.applyTo(new PumpPopulation(1).unit(0), Severity.SEVERE), SensorErrors.drawn(1), 1);
            lines.add(line(fault, run, world, stand));
        }
        return lines;
    }

    private static String line(PumpFault fault, UnitRun run, World world, TestStand stand) throws Exception {
        Grade grade = stand.grade(run, world.curve());
        Path folder = Files.createTempDirectory("judgement");
        Path file = folder.resolve("run.json");
        RunRecordFile.write(record(run, grade, stand), file);
        double[] graded = millis(() -> stand.grade(run, world.curve()));
        double[] read = millis(() -> {
            RunRecord stored = RunRecordFile.read(file);
            return stand.grade(new UnitRun(run.unit(), stored.trace(), stored.ending(), List.of()), world.curve());
        });
        long bytes = Files.size(file);
        delete(file, folder);
        return String.format(
                Locale.ROOT,
                "| %s (%s) | %.1f | %.1f | %.1f | %.1f | %.0f kB |",
                fault.word(),
                grade.verdict(),
                graded[TIMES / 2],
                graded[TIMES * 95 / 100],
                read[TIMES / 2],
                read[TIMES * 95 / 100],
                bytes / 1e3);
    }

    private static RunRecord record(UnitRun run, Grade grade, TestStand stand) {
        return new RunRecord(
                "speed",
                ANY_DAY,
                "benchmark",
                new RunRecord.Subject("demo-pump", "Simulated unit", "1", "nobody", true),
                new RunRecord.StandUsed("simulated", "Simulated stand", "simulated", "0", "0", 1, 0),
                stand.conditions(),
                stand.plan().label(),
                Optional.empty(),
                run.ending(),
                grade,
                run.trace());
    }

    private static double[] millis(Callable<Grade> work) throws Exception {
        double[] millis = new double[TIMES];
        int reasons = 0;
        for (int i = -WARM_UP; i < TIMES; i++) {
            long begin = System.nanoTime();
            reasons += work.call().reasons().size();
            if (i >= 0) {
                millis[i] = (System.nanoTime() - begin) / 1e6;
            }
        }
        if (reasons == 0) {
            throw new IllegalStateException("a grade gave no reason");
        }
        Arrays.sort(millis);
        return millis;
    }

    private static void delete(Path file, Path folder) throws IOException {
        Files.delete(file);
        Files.delete(folder);
    }
}
