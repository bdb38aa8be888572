package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.record.RunRecord;

/**
 * A whole job by keys alone, from the unit that comes in to the printed page, with the microcontroller's own program at the other end of
 * a pseudo-terminal. The board runs as fast as the machine can and waits for its host.
 */
@Timeout(600)
final class WholeJobOnFirmwareTest extends JourneyTest {
    @Test
    void aWornUnitGoesFromTheDoorToItsPrintedPageByKeysAlone() throws Exception {
        long begun = System.nanoTime();
        Path records = folder.resolve("records");
        var plant = new PracticeUnit(PumpFault.SLIP, Severity.MODERATE, 1).plant();
        try (EmulatedBoard board =
                EmulatedBoard.inLockstep(plant, TestStands.described("serial").channels())) {
            open(records, Optional.empty(), board.port(), board::line);
            job.whole("DP-2512-0417");
            assertThat(hands.banner()).isEmpty();
            hands.awaitWords("DP-2512-0417");
            hands.awaitWords("FAIL");
            hands.act(KeyCode.F2);
            assertPrinted(paper());
            historyHasIt();
            closeBench();
        }
        RunRecord run = kept(records).get(0);
        assertThat(run.grade().verdict()).isEqualTo(Verdict.FAIL);
        assertThat(run.stand().board()).isEqualTo("avr328");
        assertThat(run.subject().serial()).isEqualTo("DP-2512-0417");
        Files.writeString(
                Path.of("target", "journey-on-firmware.txt"),
                String.format(
                        Locale.ROOT,
                        "from the door to the printed page and the history, on the emulated board: %.1f s%n",
                        (System.nanoTime() - begun) / 1e9));
    }

    private void historyHasIt() throws Exception {
        hands.goTo(Moment.HISTORY);
        hands.awaitWords("DP-2512-0417");
        hands.tabTo("history-list");
        hands.press(KeyCode.HOME);
        hands.act(KeyCode.F1);
        hands.awaitWords("DP-2512-0417");
        hands.act(KeyCode.F1);
        assertPrinted(paper());
    }

    private static void assertPrinted(Path paper) throws Exception {
        assertThat(paper).hasExtension("pdf");
        try (PDDocument document = Loader.loadPDF(paper.toFile())) {
            assertThat(document.getNumberOfPages()).isPositive();
            assertThat(new PDFTextStripper().getText(document)).contains("DP-2512-0417", "FAIL");
        }
    }
}
