package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.report.bucket.BucketHtmlReport;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.bucket.BucketTextReport;
import org.pumpwright.host.report.bucket.KLabel;
import org.pumpwright.host.text.EnglishOnPage;
import org.pumpwright.host.text.ForbiddenWords;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** Technician's page, bucket report and label hold no English sentence of the program when they are printed in Spanish. */
final class PagesInSpanishTest {
    private static final Texts SPANISH = Texts.in(Language.ES);

    private static Stream<String> samples() {
        return PaperSamplesTest.samples().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aTechniciansPageHasNoEnglishOfTheProgram(String name) {
        Interpreter in = new Interpreter(SPANISH);
        String html = HtmlReport.page(PaperSamplesTest.samples().get(name), UnitSystem.US, in);
        assertThat(html).contains("<html lang=\"es\">");
        assertThat(EnglishOnPage.on(html, in.leftInEnglish())).isEmpty();
    }

    @Test
    void aBucketReportAndItsLabelHaveNoEnglishOfTheProgram() {
        BucketRecord record = BucketSamples.plain();
        for (String page :
                new String[] {BucketHtmlReport.page(record, UnitSystem.US, SPANISH), KLabel.html(record, SPANISH)}) {
            assertThat(page).contains("<html lang=\"es\"");
            assertThat(EnglishOnPage.on(page, List.of())).isEmpty();
        }
        assertThat(BucketTextReport.page(record, UnitSystem.US, SPANISH)).contains("PRACTICA - cifras inventadas");
        assertThat(KLabel.text(record, SPANISH)).contains("Medidor M-0001", "pulsos / galon US");
    }

    @Test
    void whatStaysInEnglishIsToldOnThePage() {
        String html = HtmlReport.page(SampleRecords.fail(), UnitSystem.US, SPANISH);
        assertThat(html).contains("Frases del registro que quedan en inglés: ");
        assertThat(HtmlReport.page(SampleRecords.fail(), UnitSystem.US)).doesNotContain("stand in English");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void noPagePutsIntentOrFaultOnAPerson(Language language) {
        Texts texts = Texts.in(language);
        PaperSamplesTest.samples()
                .forEach((name, run) -> assertThat(HtmlReport.page(run, UnitSystem.US, texts))
                        .as(name)
                        .doesNotContainPattern(ForbiddenWords.ANY));
        assertThat(BucketHtmlReport.page(BucketSamples.hostile(), UnitSystem.US, texts)
                        + KLabel.html(BucketSamples.hostile(), texts))
                .doesNotContainPattern(ForbiddenWords.ANY);
    }
}
