package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** Shipped plans on the microcontroller's own program: the pump on drive 0 and meter 0, the valve on drive 1 and meter 1. */
@Timeout(240)
final class PlansOnFirmwareTest {
    private static final String SMALL_METER = "    least_gpm: 0.2\n    certificate: \"none: not calibrated\"\n";
    private static final String LARGE_METER = SMALL_METER + """
              - index: 1
                pulses_per_us_gallon: 600
                relative_uncertainty_percent: 0.5
                least_gpm: 1
                certificate: "none: not calibrated"
            """;

    @TempDir
    private Path folder;

    @TempDir
    private Path records;

    @Test
    void theQuickPlanIsCarriedOut() throws Exception {
        RunRecord record = accept("quick-12v-pump", "demo-pump", UnitKind.PUMP_12V);
        assertCompleted(record, 9);
    }

    @Test
    void theValveSweepDrivesTheSecondDriveAndReadsTheSecondMeter() throws Exception {
        RunRecord record = accept(
                "valve-sweep",
                "demo-hydraulic-pump",
                UnitKind.HYDRAULIC_PUMP,
                "supply=ready",
                "coil-alone=ready",
                "override-out=ready",
                "gauge=held",
                "look=clean");
        assertCompleted(record, 17);

        Trace trace = record.trace();
        PointMark full = trace.points().stream()
                .filter(point -> point.commanded().equals(Duty.FULL))
                .findFirst()
                .orElseThrow();
        List<Sample> measured = trace.samples().stream()
                .filter(sample ->
                        sample.boardNanos() >= full.measureFromNanos() && sample.boardNanos() <= full.endNanos())
                .toList();
        Sample first = measured.get(0);
        Sample last = measured.get(measured.size() - 1);
        double seconds = last.boardSeconds() - first.boardSeconds();
        double hertz = (last.meters().get(1).edges() - first.meters().get(1).edges()) / seconds;
        // 33.4 gal/min of the healthy unit by a meter of 600 pulses a gallon is 334 Hz; healthy ones differ by 4 %.
        assertThat(hertz).isCloseTo(334, within(40.0));
        assertThat(trace.samples()).allMatch(sample -> sample.applied().get(0).equals(Duty.ZERO));
        assertThat(last.applied().get(1)).isEqualTo(Duty.FULL);
        assertThat(last.meters().get(0).edges()).isEqualTo(first.meters().get(0).edges());
    }

    private RunRecord accept(String plan, String model, UnitKind kind, String... answers) throws Exception {
        Path stand = new EditedFile(EditedFile.fixture("stands/serial.yaml"), folder).with(SMALL_METER, LARGE_METER);
        StandDescription described = StandFile.read(stand);
        assertThat(TestStands.described("serial").channels().analogs())
                .isEqualTo(described.channels().analogs());
        try (EmulatedBoard board =
                EmulatedBoard.inLockstep(PracticeUnit.healthy(kind, 1).plant(), described.channels())) {
            CommandLineBench bench = new CommandLineBench(board::line);
            List<String> words =
                    new ArrayList<>(List.of("accept", "--stand", stand.toString(), "--port", board.port()));
            words.addAll(List.of("--model", model, "--plan", plan, "--records", records.toString()));
            for (String answer : answers) {
                words.addAll(List.of("--answer", answer));
            }
            bench.run(words.toArray(String[]::new));
            assertThat(bench.err()).isEmpty();
        }
        return CommandLineBench.onlyRecord(records);
    }

    private static void assertCompleted(RunRecord record, int points) {
        assertThat(record.ending().kind()).as(record.ending().reason()).isEqualTo(Ending.Kind.COMPLETED);
        assertThat(record.stand().board()).isEqualTo("avr328");
        assertThat(record.stand().samplesLost()).isZero();
        assertThat(record.trace().points()).hasSize(points).allMatch(PointMark::enoughPulses);
    }
}
