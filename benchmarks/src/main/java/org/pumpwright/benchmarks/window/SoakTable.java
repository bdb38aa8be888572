package org.pumpwright.benchmarks.window;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireTiming;

/**
 * Has the whole window watch one run of half an hour, every sample of it, in virtual time that goes faster than the wall's; prints the
 * heap before, during and after.
 */
public final class SoakTable {
    private static final double PACE = 20;
    private static final long MINUTE_NANOS = 60_000_000_000L;
    private static final long PATIENCE_SECONDS = 600;
    private static final double LATE_MINUTES = 29.9;
    private static final String PLAN = """
            plan: soak
            version: 1
            title: Half an hour
            kind: pump-12v
            wiring: { drive: 0, meter: 0 }
            judge_percent: []
            steps:
              - hold:
                  name: soak
                  reads: soak
                  duty_percent: 80
                  seconds: 1800
                  ramp_seconds: 0.5
            stop:
              supply_amps_above: 28
              for_seconds: 0.2
              volts_at_pins_below: 9
              pressure_psi_above: 120
              run_seconds_above: 2000
            """;

    private SoakTable() {}

    /**
     * Measures and prints.
     *
     * @param arguments the root of the source tree, and an empty folder
     */
    public static void main(String[] arguments) {
        Screen.during(() -> print(Path.of(arguments[0]), Path.of(arguments[1])));
    }

    private static void print(Path root, Path folder) throws Exception {
        StandDescription stand = StandFile.read(root.resolve("fixtures/stands/serial.yaml"));
        AtomicLong nanos = new AtomicLong();
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> {
            SimulatedBoard board = new SimulatedBoard(
                    PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant(), stand.channels());
            return new ClockedLine(new SimulatedLine(board, PACE), nanos);
        });
        System.out.printf(
                Locale.ROOT,
                "One run of 30 min, a whole sample every %d ms, at %.0f times the wall's speed; at most %.0f MB of heap are"
                        + " allowed.%n%n",
                WireTiming.STANDARD.samplePeriodMillis(),
                PACE,
                Memory.mostMegabytes());
        System.out.println("| moment | heap used after a full collection, MB |");
        System.out.println("| --- | --- |");
        try (WorkedBench bench = WorkedBench.open(root, folder, PLAN, "none", stands)) {
            bench.takeIn();
            print("unit in hand, stand watched");
            nanos.set(0);
            bench.begin();
            for (int minutes = 10; minutes < 30; minutes += 10) {
                await(bench, minutes, nanos);
            }
            await(bench, LATE_MINUTES, nanos);
            bench.rest();
            print("run graded and kept, its papers made");
        }
    }

    private static void await(WorkedBench bench, double minutes, AtomicLong nanos) throws InterruptedException {
        bench.until(minutes + " min", PATIENCE_SECONDS, () -> nanos.get() > minutes * MINUTE_NANOS);
        print(String.format(Locale.ROOT, "%.1f min of the run shown", minutes));
    }

    private static void print(String moment) {
        System.out.printf(Locale.ROOT, "| %s | %.0f |%n", moment, Memory.usedMegabytes());
    }
}
