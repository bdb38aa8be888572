package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.RecordFolder.Kept;
import org.pumpwright.host.app.RecordFolder.Recovered;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.JournalFile;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.trace.Trace;

/** What becomes of runs that did not live to their end. */
final class RecordFolderTest {
    private static final RunRecord WHOLE = SampleRecords.invalid();

    @TempDir
    private Path temporary;

    private Path folder;
    private Path spare;
    private RecordFolder records;

    @BeforeEach
    void folders() {
        folder = temporary.resolve("records");
        spare = temporary.resolve("spare");
        records = new RecordFolder(folder, spare);
    }

    private JournalFile begin() throws Exception {
        return records.begin(WHOLE.withTrace(new Trace(WHOLE.trace().channels(), List.of(), List.of())));
    }

    /** A run that was cut short after everything was measured. */
    private void cutShort() throws Exception {
        JournalFile journal = begin();
        WHOLE.trace().samples().forEach(journal::sample);
        WHOLE.trace().points().forEach(journal::point);
        journal.close();
    }

    private Recovered recover() {
        return records.recover(UnitSystem.US);
    }

    private Path journal(Path where) {
        return where.resolve(WHOLE.id()).resolve("journal.jsonl");
    }

    private Path record(Path where) {
        return where.resolve(WHOLE.id()).resolve("record.json");
    }

    @Test
    void aRunThatWasCutShortIsKeptWithItsPapersAndOnlyOnce() throws Exception {
        cutShort();

        Recovered first = recover();
        Recovered second = recover();

        assertThat(first.troubles()).isEmpty();
        assertThat(first.kept()).extracting(Kept::record).containsExactly(record(folder));
        assertThat(RunRecordFile.read(record(folder))).isEqualTo(WHOLE);
        assertThat(first.kept().get(0).page()).isNotEmptyFile();
        assertThat(first.kept().get(0).text()).isNotEmptyFile();
        assertThat(journal(folder)).doesNotExist();
        assertThat(second).isEqualTo(new Recovered(List.of(), List.of()));
    }

    @Test
    void aRunThatGoesOnIsLeftAlone() throws Exception {
        try (JournalFile journal = begin()) {
            assertThat(recover()).isEqualTo(new Recovered(List.of(), List.of()));

            WHOLE.trace().samples().forEach(journal::sample);
            WHOLE.trace().points().forEach(journal::point);
        }
        assertThat(recover().kept()).hasSize(1);
        assertThat(RunRecordFile.read(record(folder))).isEqualTo(WHOLE);
    }

    @Test
    void aRunWhoseRecordWasKeptBeforeTheProgramDiedIsNotKeptASecondTime() throws Exception {
        cutShort();
        records.keep(WHOLE, UnitSystem.US);

        assertThat(recover()).isEqualTo(new Recovered(List.of(), List.of()));
        assertThat(journal(folder)).doesNotExist();
    }

    @Test
    void thatHoldsForARecordInTheOtherFolderToo() throws Exception {
        cutShort();
        new RecordFolder(spare, spare).keep(WHOLE, UnitSystem.US);

        assertThat(recover().kept()).isEmpty();
        assertThat(journal(folder)).doesNotExist();
        assertThat(record(folder)).doesNotExist();
    }

    @Test
    void aJournalBeginsInTheSpareFolderWhereItsOwnDoesNotTakeItAndComesHomeLater() throws Exception {
        Files.createDirectories(folder);
        Path inTheWay = Files.writeString(folder.resolve(WHOLE.id()), "");
        cutShort();
        assertThat(journal(spare)).exists();
        Files.delete(inTheWay);

        assertThat(recover().kept()).extracting(Kept::record).containsExactly(record(folder));
        assertThat(journal(spare)).doesNotExist();
    }

    @Test
    void aJournalThatCannotBeReadIsToldEachTimeAndStopsNeitherTheOthersNorTheWork() throws Exception {
        cutShort();
        Path broken = write("20200101T000000.000Z", "what is this\n");

        Recovered first = recover();
        Recovered second = recover();

        assertThat(first.kept()).hasSize(1);
        assertThat(first.troubles()).hasSize(1);
        assertThat(first.troubles().get(0)).startsWith(broken + ": is no journal of a run: ");
        assertThat(second.kept()).isEmpty();
        assertThat(second.troubles()).isEqualTo(first.troubles());
        assertThat(broken).exists();
    }

    @Test
    void aJournalInTheFolderOfAnotherRunIsNotFollowedThere() throws Exception {
        cutShort();
        Path strayed = write("elsewhere", Files.readString(journal(folder)));

        Recovered recovered = recover();

        assertThat(recovered.troubles())
                .containsExactly(strayed + ": is the journal of run " + WHOLE.id()
                        + ". Move it to the folder of that run, or away.");
        assertThat(strayed).exists();
    }

    @Test
    void foldersThatAreNotThereHoldNothingToRecover() {
        assertThat(recover()).isEqualTo(new Recovered(List.of(), List.of()));
    }

    @Test
    void papersThatCannotBeMadeCostNotTheRecordAndAreTold() throws Exception {
        cutShort();
        Files.createDirectories(record(folder).resolveSibling("page.html"));
        Files.createDirectories(record(folder).resolveSibling("page.txt"));

        Recovered recovered = recover();

        assertThat(recovered.kept()).extracting(Kept::record).containsExactly(record(folder));
        assertThat(recovered.kept().get(0).trouble())
                .map(trouble -> trouble.contains("the papers can't be written"))
                .isEqualTo(Optional.of(true));
        assertThat(journal(folder)).doesNotExist();
    }

    private Path write(String id, String text) throws IOException {
        Path file = folder.resolve(id).resolve("journal.jsonl");
        Files.createDirectories(folder.resolve(id));
        return Files.writeString(file, text);
    }
}
