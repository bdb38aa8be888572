package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.ui.work.IntakeForm.Entered;

class IntakeFormTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00-06:00");

    @Test
    void completingAnIntakeKeepsWhatTheFormDoesNotAskFor() throws Exception {
        Path sheet = Firmware.root().resolve("fixtures/claims/example-sheet.yaml");
        ClaimIntake whole = IntakeSheetFile.read(sheet, NOW);
        IntakeForm form = new IntakeForm();
        form.fill(whole);

        assertThat(form.corrects()).isTrue();
        assertThat(form.intake(NOW.plusDays(3))).isEqualTo(whole);
    }

    @Test
    void anEmptyFormIsOfANewClaimAndNeedsItsNumber() {
        IntakeForm form = new IntakeForm();
        form.empty();
        assertThat(form.corrects()).isFalse();
        assertThatThrownBy(() -> form.intake(NOW)).hasMessageContaining("can't be a claim number");
        form.field(Entered.CLAIM).set(" EX-7 ");
        form.field(Entered.DECLARED_CLEAN).set("no");
        ClaimIntake intake = form.intake(NOW);
        assertThat(intake.claim()).isEqualTo("EX-7");
        assertThat(intake.received()).isEqualTo(NOW);
        assertThat(intake.decontamination().declared()).contains(false);
    }
}
