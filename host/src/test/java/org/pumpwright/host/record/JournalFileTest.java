package org.pumpwright.host.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

final class JournalFileTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("run").resolve("journal.jsonl");
    }

    /** A record as it stands before anything was measured. */
    static RunRecord begun(RunRecord whole) {
        return whole.withTrace(new Trace(whole.trace().channels(), List.of(), List.of()));
    }

    private static RunRecord withStretchesAndAnswers(RunRecord drawn) {
        Trace trace = drawn.trace();
        return drawn.withTrace(new Trace(
                trace.channels(),
                trace.samples(),
                trace.points(),
                List.of(new Stretch("rest", Stretch.Kind.REST, -5, 7), new Stretch("leak", Stretch.Kind.WAIT, 8, 9)),
                List.of(new Answer("leak", "Is it \"dry\"?\nLook well.", "yes", 1L << 60))));
    }

    static void take(JournalFile journal, Trace trace) {
        trace.samples().forEach(journal::sample);
        trace.points().forEach(journal::point);
        trace.stretches().forEach(journal::stretch);
        trace.answers().forEach(journal::answer);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatWasTakenDownIsReadBackAsTheSameTrace(long seed) throws Exception {
        RunRecord whole = withStretchesAndAnswers(DrawnRecords.draw(seed));
        JournalFile journal = JournalFile.begin(begun(whole), file());

        take(journal, whole.trace());
        journal.close();

        assertThat(JournalReader.read(file())).contains(whole);
        assertThat(journal.failed()).isFalse();
    }

    @Test
    void itStandsThereLockedFromTheBeginningAndWithNothingBesideIt() throws Exception {
        try (JournalFile journal = JournalFile.begin(begun(DrawnRecords.draw(1)), file())) {
            assertThat(files()).containsExactly(file());
            assertThat(lockedForAnotherProgram()).isTrue();
            assertThat(journal.failed()).isFalse();
        }
        assertThat(lockedForAnotherProgram()).isFalse();
    }

    @Test
    void aLookFromTheSameProgramTakesNothingAndLeavesTheLock() throws Exception {
        try (JournalFile journal = JournalFile.begin(begun(DrawnRecords.draw(1)), file())) {
            assertThat(JournalReader.read(file())).isEmpty();
            assertThat(JournalReader.read(file().getParent().resolve("..").resolve("run/journal.jsonl")))
                    .isEmpty();

            assertThat(lockedForAnotherProgram()).isTrue();
            assertThat(journal.failed()).isFalse();
        }
    }

    @Test
    void aDiscardedOneIsGone() throws Exception {
        JournalFile journal = JournalFile.begin(begun(DrawnRecords.draw(1)), file());
        take(journal, DrawnRecords.draw(1).trace());

        journal.discard();
        journal.close();

        assertThat(files()).isEmpty();
    }

    @Test
    void aSecondOneOfTheSameNameIsRefusedAndTheFirstGoesOn() throws Exception {
        RunRecord whole = DrawnRecords.draw(1);
        JournalFile journal = JournalFile.begin(begun(whole), file());

        assertThatThrownBy(() -> JournalFile.begin(begun(whole), file()))
                .isInstanceOf(RunRecordException.class)
                .hasMessageStartingWith(file() + ": cannot be begun: ");

        take(journal, whole.trace());
        journal.close();
        assertThat(JournalReader.read(file())).contains(whole);
        assertThat(files()).containsExactly(file());
    }

    @Test
    void aFolderThatDoesNotTakeItIsTold() throws Exception {
        Files.writeString(folder.resolve("run"), "");

        assertThatThrownBy(() -> JournalFile.begin(begun(DrawnRecords.draw(1)), file()))
                .isInstanceOf(RunRecordException.class)
                .hasMessageEndingWith("Check that the disk is there, not full and not write-protected.");
    }

    @Test
    void samplesOfAnotherShapeFailTheJournalButThrowNothing() throws Exception {
        RunRecord whole = DrawnRecords.draw(1);
        Sample odd = new Sample(1, List.of(), List.of(), List.of(), true, true, true);
        Sample even = new Sample(2, List.of(new Sample.MeterCount(1, 1)), List.of(), List.of(), true, true, true);
        JournalFile journal = JournalFile.begin(begun(whole), file());

        journal.sample(odd);
        journal.sample(even);
        journal.close();
        journal.sample(odd);

        assertThat(journal.failed()).isTrue();
        assertThat(JournalReader.read(file())).contains(begun(whole));
    }

    @Test
    void itsThreadKeepsNoProgramAlive() throws Exception {
        try (JournalFile journal = JournalFile.begin(begun(DrawnRecords.draw(1)), file())) {
            journal.answer(new Answer("leak", "Is it dry?", "yes", 1));

            assertThat(Thread.getAllStackTraces().keySet())
                    .filteredOn(thread -> thread.getName().equals("journal of the run"))
                    .isNotEmpty()
                    .allMatch(Thread::isDaemon);
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    private boolean lockedForAnotherProgram() throws Exception {
        Process probe = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        LockProbe.class.getName(),
                        file().toString())
                .inheritIO()
                .start();
        assertThat(probe.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(probe.exitValue()).isIn(LockProbe.FREE, LockProbe.LOCKED);
        return probe.exitValue() == LockProbe.LOCKED;
    }
}
