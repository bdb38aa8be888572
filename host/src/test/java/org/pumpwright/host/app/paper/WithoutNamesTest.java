package org.pumpwright.host.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;

/** The record that goes to the factory: everything of the unit, and nobody's name. */
final class WithoutNamesTest {
    private static String content(Handling handling) {
        RunRecord run = SampleRecords.pass();
        Intake intake = Intake.NONE
                .complaining("low")
                .after(List.of("20260401-161210-11ab", "20260401-171210-11ac"))
                .observing(List.of("Pat Seen says that it drips"))
                .decided(new Decision("Pat Decider", "Pat Decider wants it"))
                .claiming("C-77")
                .handled(handling);
        RunRecord.Subject was = run.subject();
        RunRecord.Subject subject =
                new RunRecord.Subject(was.model(), was.modelTitle(), was.serial(), "Pat Tester", was.practice());
        return RunContent.of(Corrected.withoutNames(run.told(subject, intake)));
    }

    @Test
    void whatItPumpedStaysAndWhoSaysThatItIsCleanDoesNot() {
        assertThat(content(new Handling(Optional.of("uan-32"), Optional.of("Pat Rinser"), Optional.empty())))
                .contains("uan-32", "C-77", "20260401-171210-11ac")
                .doesNotContain("Pat ");
    }

    @Test
    void whoLetItOnTheStandUncleanedIsLeftOutWithTheReason() {
        Decision decision = new Decision("Pat Chief", "Pat Owner waits for it");
        assertThat(content(new Handling(Optional.of("uan-32"), Optional.empty(), Optional.of(decision))))
                .contains("uan-32")
                .doesNotContain("Pat ", "uncleaned");
    }
}
