package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.SafeState;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Ending;

/** What a person sees in a terminal of 80 columns. */
@Timeout(60)
final class ProgressTest {
    private static final int COLUMNS = 80;
    /** Ends with the time left, in the last column but one. */
    private static final String LIVE = ".{75}\\d:\\d\\d";

    @TempDir
    private java.nio.file.Path folder;

    private final StringWriter screen = new StringWriter();
    private final StopButton stop = new StopButton();

    private Progress progress(UnitSystem units, boolean live) {
        return new Progress(new PrintWriter(screen), units, live, stop);
    }

    private void run(PumpFault fault, Severity severity, UnitSystem units, RunWatcher watcher) throws Exception {
        Acceptance acceptance = new Acceptance(
                new Shelf(Firmware.root().resolve("fixtures")),
                new Stands(WireTiming.STANDARD, SerialPorts::open),
                new RecordFolder(folder, folder),
                CommandLineBench.CLOCK);
        Stands.Reach reach = new Stands.Reach(
                Optional.empty(),
                Optional.of(new PracticeUnit(fault, severity, 1)),
                java.util.OptionalDouble.empty(),
                Map.of());
        acceptance.carryOut(
                new Acceptance.Order("simulated", reach, "demo-pump", Optional.empty(), "none", "nobody", units),
                watcher,
                stop,
                Operator.NOBODY);
    }

    /** Every line that was ever on the screen, the overwritten ones too. */
    private List<String> lines() {
        return Arrays.stream(screen.toString().split("\\R|\r", -1))
                .map(String::stripTrailing)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everythingFitsAScreenOf80Columns(UnitSystem units) throws Exception {
        run(PumpFault.HEALTHY, Severity.MODERATE, units, progress(units, true));

        assertThat(lines()).allMatch(line -> line.length() < COLUMNS);
        assertThat(lines()).filteredOn(line -> line.matches(LIVE)).hasSizeGreaterThan(200);
    }

    @ParameterizedTest
    @CsvSource({
        "US,     'point  leg      duty  gal/min       ±    amps  volts  healthy flow', 1.85 to 2.27 ok",
        "METRIC, 'point  leg      duty    L/min       ±    amps  volts  healthy flow', 7.01 to 8.59 ok"
    })
    void aPointIsALineUnderItsHeader(UnitSystem units, String header, String healthy) throws Exception {
        run(PumpFault.HEALTHY, Severity.MODERATE, units, progress(units, false));

        int place = lines().indexOf(header);
        assertThat(place).as(String.join("\n", lines())).isPositive();
        assertThat(lines().get(place + 3)).startsWith("    3  up       50 %  ").contains(healthy);
    }

    @Test
    void aFaultyUnitReadsLow() throws Exception {
        run(PumpFault.SLIP, Severity.SEVERE, UnitSystem.US, progress(UnitSystem.US, false));

        assertThat(lines()).anyMatch(line -> line.startsWith("    5  up      100 %") && line.endsWith(" low"));
    }

    @Test
    void theStandIsToldAfterTheRestWithEachTroubleInALineOfItsOwn() throws Exception {
        run(PumpFault.LOW_SUPPLY, Severity.SEVERE, UnitSystem.US, progress(UnitSystem.US, false));

        assertThat(lines()).anyMatch(line -> line.startsWith("Stand: zero current ok, zero pulses ok"));
        assertThat(lines()).anyMatch(line -> line.startsWith("Stand: supply at rest NOT OK: "));
        assertThat(lines()).allMatch(line -> line.length() < COLUMNS);
    }

    @Test
    void liveValuesStayAwayWhenNobodyWatches() throws Exception {
        run(PumpFault.HEALTHY, Severity.MODERATE, UnitSystem.US, progress(UnitSystem.US, false));

        assertThat(screen.toString()).doesNotContain("left").doesNotContain("\r");
    }

    @Test
    void aQuestionIsPutWithItsAnswersAndWrapped() {
        Ask ask = new Ask(
                "leak",
                "Dry the head with a cloth, wait a minute, and look at the weep hole and at both fittings with a lamp.",
                List.of(new Ask.Answer("dry", Optional.empty()), new Ask.Answer("leaks", Optional.empty())),
                Map.of());
        Progress progress = progress(UnitSystem.US, true);

        progress.heard(new RunEvent.Asked(ask));
        progress.heard(new RunEvent.NotAnAnswer(ask, "what"));
        progress.heard(new RunEvent.Answered(ask, "dry"));

        List<String> question = List.of(
                "Dry the head with a cloth, wait a minute, and look at the weep hole and at both",
                "  fittings with a lamp.",
                "Type dry or leaks and Enter.");
        List<String> shown = new ArrayList<>(question);
        shown.add("'what' is no answer to that.");
        shown.addAll(question);
        shown.add("Answer: dry");
        assertThat(lines()).isEqualTo(shown);
    }

    @Test
    void theEndIsTold() {
        progress(UnitSystem.US, false)
                .heard(new RunEvent.Ended(
                        new Ending(Ending.Kind.STOPPED_BY_BOARD, "the guard was opened"), SafeState.CONFIRMED));

        assertThat(lines())
                .containsExactly("Run over: the guard was opened.", "Stand: the board says that it is safe.");
    }

    @Test
    void aScreenThatIsGoneStopsTheRun() {
        Progress progress = new Progress(new PrintWriter(new GoneWriter()), UnitSystem.US, true, stop);

        progress.begins(plan(), Optional.<HealthyCurve>empty(), new StandExpectations(13.8, 1e-6));
        progress.heard(new RunEvent.Ended(new Ending(Ending.Kind.COMPLETED, "over"), SafeState.CONFIRMED));

        assertThat(stop.pressed()).contains("the terminal was closed");
    }

    private static Plan plan() {
        try {
            return new Shelf(Firmware.root().resolve("fixtures")).plan("quick-12v-pump");
        } catch (org.pumpwright.host.app.OrderException | org.pumpwright.host.datafile.DataFileException e) {
            throw new AssertionError(e);
        }
    }

    /** A terminal that was closed. */
    private static final class GoneWriter extends Writer {
        @Override
        public void write(char[] buffer, int from, int length) throws java.io.IOException {
            throw new java.io.IOException("gone");
        }

        @Override
        public void flush() throws java.io.IOException {
            throw new java.io.IOException("gone");
        }

        @Override
        public void close() {}
    }
}
