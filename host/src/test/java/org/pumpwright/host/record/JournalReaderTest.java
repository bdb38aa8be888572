package org.pumpwright.host.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.trace.Trace;

/** Journals as a dead program, a power cut or a person may leave them. */
final class JournalReaderTest {
    private static final RunRecord WHOLE = LongStream.iterate(1, seed -> seed + 1)
            .mapToObj(DrawnRecords::draw)
            .filter(run -> run.trace().samples().size() > 2)
            .findFirst()
            .orElseThrow();
    private static final int SAMPLES_A_LINE = 12;

    @TempDir
    private Path folder;

    private Path file;
    private List<String> lines;

    @BeforeEach
    void journal() throws Exception {
        file = folder.resolve("run/journal.jsonl");
        try (JournalFile journal = JournalFile.begin(JournalFileTest.begun(WHOLE), file)) {
            for (int i = 0; i < 3 * SAMPLES_A_LINE; i++) {
                journal.sample(
                        WHOLE.trace().samples().get(i % WHOLE.trace().samples().size()));
            }
        }
        lines = Files.readAllLines(file);
    }

    private int samplesRead() throws RunRecordException {
        return JournalReader.read(file).orElseThrow().trace().samples().size();
    }

    private void write(String text) throws IOException {
        Files.writeString(file, text);
    }

    @Test
    void aTornLastLineIsLeftOut() throws Exception {
        String whole = String.join("\n", lines.subList(0, 3)) + "\n";
        for (int torn : new int[] {0, 1, lines.get(3).length() / 2, lines.get(3).length()}) {
            write(whole + lines.get(3).substring(0, torn));

            assertThat(samplesRead()).isEqualTo(2 * SAMPLES_A_LINE);
        }
    }

    @Test
    void whatComesAfterALineThatCannotBeReadIsLeftOut() throws Exception {
        List<String> damaged = new ArrayList<>(lines);
        damaged.set(2, "\0".repeat(40));
        write(String.join("\n", damaged) + "\n");

        assertThat(samplesRead()).isEqualTo(SAMPLES_A_LINE);
    }

    @Test
    void aJournalOfItsFirstLineOnlyIsARunInWhichNothingWasMeasured() throws Exception {
        write(lines.get(0) + "\n");

        Trace trace = JournalReader.read(file).orElseThrow().trace();

        assertThat(trace).isEqualTo(JournalFileTest.begun(WHOLE).trace());
    }

    @Test
    void anEmptyFileIsToldAndSoIsATornFirstLine() throws Exception {
        for (String text : List.of("", lines.get(0))) {
            write(text);

            assertThatThrownBy(() -> JournalReader.read(file))
                    .isInstanceOf(RunRecordException.class)
                    .hasMessage(file + ": is a journal in which nothing stands. Remove it; no run is in it.");
        }
    }

    @Test
    void anotherFileIsTold() throws Exception {
        for (String text : List.of("{}\n", "not this\n", "[]\n")) {
            write(text);

            assertThatThrownBy(() -> JournalReader.read(file))
                    .isInstanceOf(RunRecordException.class)
                    .hasMessageStartingWith(file + ": is no journal of a run: ")
                    .hasMessageEndingWith("Move it away; nothing else needs it.");
        }
    }

    @Test
    void aJournalOfAnotherFormatIsToldAndLeftToItsProgram() throws Exception {
        write(lines.get(0).replace("\"pumpwright-run/2\"", "\"pumpwright-run/7\"") + "\n");

        assertThatThrownBy(() -> JournalReader.read(file))
                .hasMessage(file + ": has format pumpwright-run/7, this program reads " + RunRecordFile.READS
                        + ". Start the version of Pumpwright that wrote it once; it will keep the run.");
    }

    @Test
    void aJournalThatSomebodyElseHasRemovedIsNone() throws Exception {
        Files.delete(file);

        assertThat(JournalReader.read(file)).isEqualTo(Optional.empty());
    }

    @Test
    void journalsAreFoundInTheOrderOfTheirRuns() throws Exception {
        Path later = folder.resolve("tun/journal.jsonl");
        Path earlier = folder.resolve("qun/journal.jsonl");
        for (Path path : List.of(later, earlier)) {
            Files.createDirectories(path.getParent());
            Files.copy(file, path);
        }
        Files.writeString(folder.resolve("a file"), "");
        Files.createDirectories(folder.resolve("without"));

        assertThat(JournalReader.find(folder, "journal.jsonl")).containsExactly(earlier, file, later);
        assertThat(JournalReader.find(folder.resolve("nowhere"), "journal.jsonl"))
                .isEmpty();
    }
}
