package org.pumpwright.host.app.bucket;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.WatchedPlant;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireTiming;

/** A guided bucket test that somebody ends. */
final class BucketGuideTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T15:15:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    @Test
    void stopEndsSafeAndTheRunsUntilThenAreKept() throws IOException {
        StopButton stop = new StopButton();
        TestWatcher watcher = new TestWatcher() {
            private int counted;

            @Override
            public void says(String words) {
                if (words.equals("Counting.") && ++counted == 2) {
                    stop.press("somebody pressed STOP");
                }
            }

            @Override
            public void live(double seconds, double pulses, double m3) {}
        };
        Path root = Firmware.root();
        BucketGuide guide = new BucketGuide(
                new Shelf(root.resolve("fixtures")), new Stands(WireTiming.STANDARD, SerialPorts::open), CLOCK);

        assertThatThrownBy(() -> guide.carryOut(
                        order("simulated"), Optional.empty(), Operator.NOBODY, watcher, stop, UnitSystem.US))
                .isInstanceOf(StandException.class)
                .hasMessageStartingWith(
                        "run 2 was cut short: somebody pressed STOP. The board says that it is safe. Runs"
                                + " before it: 1, kept in ");
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> kept = files.toList();
            assertThat(kept).hasSize(1);
            assertThat(Files.readAllLines(kept.get(0))).hasSize(2);
        }
    }

    private BucketGuide.Order order(String stand) {
        return new BucketGuide.Order(
                stand,
                Optional.of("port").filter(port -> stand.equals("serial")),
                Firmware.root().resolve("fixtures/buckets/simulated-bench.yaml"),
                List.of(Duty.ofPercent(60)),
                3,
                30,
                0,
                0,
                20,
                1,
                folder);
    }

    /** The button of the next run is not there yet when the weight is given: a press in that moment must not be lost. */
    @Test
    void stopInTheMomentOfTheWeightKeepsTheStandFromBeingArmed() throws Exception {
        Shelf shelf = new Shelf(Firmware.root().resolve("fixtures"));
        WatchedPlant plant =
                new WatchedPlant(PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant());
        SimulatedBoard board = new SimulatedBoard(plant, shelf.stand("serial").channels());
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> new SimulatedLine(board, 0));
        BucketGuide guide = new BucketGuide(shelf, stands, CLOCK);
        StopButton stop = new StopButton();
        Operator person = new Operator() {
            @Override
            public boolean isThere() {
                return true;
            }

            @Override
            public void ask(Ask question) {}

            @Override
            public Optional<String> answer() {
                stop.press("somebody pressed STOP");
                guide.stopNow();
                return Optional.of("900");
            }

            @Override
            public boolean wantsPause() {
                return false;
            }
        };

        assertThatThrownBy(() -> guide.carryOut(
                        order("serial"),
                        Optional.empty(),
                        person,
                        new TestWatcher() {
                            @Override
                            public void says(String words) {}

                            @Override
                            public void live(double seconds, double pulses, double m3) {}
                        },
                        stop,
                        UnitSystem.US))
                .isInstanceOf(StandException.class)
                .hasMessageStartingWith("run 1 was cut short: somebody pressed STOP. The board says that it is safe.");
        assertThat(plant.wasClosed()).isFalse();
    }
}
