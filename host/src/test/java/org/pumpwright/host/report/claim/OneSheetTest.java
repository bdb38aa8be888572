package org.pumpwright.host.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** The papers of the desk are printed on one sheet each, whatever the sheet and the language. */
class OneSheetTest {
    @ParameterizedTest
    @CsvSource({"LETTER, EN", "LETTER, ES", "A4, EN", "A4, ES"})
    void eachPaperIsOneSheet(Sheet sheet, Language language) throws IOException {
        for (Map.Entry<String, String> paper :
                DeskPapers.all(Texts.in(language)).entrySet()) {
            byte[] pdf = PdfPaper.of(
                    paper.getValue(),
                    sheet,
                    new Origin("Example Shop", OffsetDateTime.parse("2026-04-02T08:15:30-05:00"), "Pumpwright 0.1.0"),
                    Optional.empty());
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).as(paper.getKey()).isEqualTo(1);
            }
        }
    }
}
