package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** What a unit has pumped and whether it was rinsed, in the record and on the technician's page. */
final class HandlingOnPaperTest {
    private static final Handling CLEAN =
            new Handling(Optional.of("fertilizer"), Optional.of("Robin Example"), Optional.empty());
    private static final Handling UNCLEANED = new Handling(
            Optional.of("uan-32"), Optional.empty(), Optional.of(new Decision("Robin Example", "it leaks only so")));

    private static RunRecord run(Handling handling) {
        RunRecord run = SampleRecords.pass();
        return run.told(run.subject(), run.intake().handled(handling));
    }

    @Test
    void aRecordOfWhichNobodyWasAskedStaysAsItWasToTheByte() {
        assertThat(RunContent.of(SampleRecords.pass())).doesNotContain("handling");
    }

    @Test
    void whatWasSaidIsReadBack() {
        for (Handling handling : new Handling[] {CLEAN, UNCLEANED}) {
            RunRecord run = run(handling);
            assertThat(RunContent.read(RunContent.of(run), run.trace()).intake().handling())
                    .isEqualTo(handling);
        }
    }

    @Test
    void thePageSaysWhatWasPumpedAndWhoHasMadeSure() {
        assertThat(TextReport.page(run(CLEAN), UnitSystem.US))
                .contains("Pumped  fertilizer", "Rinsed  yes, says Robin Example");
        String spanish = HtmlReport.page(run(CLEAN), UnitSystem.METRIC, new Interpreter(Texts.in(Language.ES)));
        assertThat(spanish).contains("fertilizante", "sí, según Robin Example");
    }

    @Test
    void thePageSaysWhoAnswersForAUnitThatWasNotRinsed() {
        assertThat(TextReport.page(run(UNCLEANED), UnitSystem.US))
                .contains("Rinsed  NO: Robin Example answers for it: it leaks only so");
    }
}
