package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.claim.Source;

final class IntakeFormTest {
    private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-03-02T09:00:00-06:00");

    @Test
    void everythingThatASheetCanSayGoesThroughTheForm() throws Exception {
        Path sheet = Firmware.root().resolve("fixtures/claims/example-sheet.yaml");
        ClaimIntake whole = IntakeSheetFile.read(sheet, NOW);
        IntakeForm form = new IntakeForm();
        form.fill(whole, "typing error");

        assertThat(form.corrects()).isTrue();
        assertThat(form.wrongProperty().get()).isEmpty();
        assertThat(form.intake(NOW.plusDays(3))).isEqualTo(whole);
    }

    @Test
    void anEmptyFormIsOfANewClaimAndNeedsItsNumber() {
        IntakeForm form = new IntakeForm();
        form.empty();
        assertThat(form.corrects()).isFalse();
        assertThat(form.wrongProperty().get()).contains(Word.of("ui.claim.wrong.no_claim"));
        assertThatThrownBy(() -> form.intake(NOW)).hasMessageContaining("can't be a claim number");
        form.field(IntakeField.CLAIM).set(" EX-7 ");
        form.field(IntakeField.DECLARED_CLEAN).set("no");
        ClaimIntake intake = form.intake(NOW);
        assertThat(intake.claim()).isEqualTo("EX-7");
        assertThat(intake.received()).isEqualTo(NOW);
        assertThat(intake.decontamination().declared()).contains(false);
    }

    @Test
    void aUnitThatCameEarlierKeepsItsDay() {
        IntakeForm form = new IntakeForm();
        form.field(IntakeField.CLAIM).set("EX-7");
        form.field(IntakeField.RECEIVED).set("2026-02-27");
        assertThat(form.intake(NOW).received()).isEqualTo(NOW.minusDays(3));
    }

    @Test
    void aDayNeedsItsSourceAndACountItsDigits() {
        IntakeForm form = new IntakeForm();
        form.field(IntakeField.CLAIM).set("EX-7");
        form.field(IntakeField.SOLD).set("2025-02-10");
        assertThat(form.wrongProperty().get())
                .contains(Word.of("ui.claim.wrong.source", Word.of(IntakeField.SOLD.key())));
        form.source(IntakeField.SOLD).set(Optional.of(Source.CUSTOMER));
        assertThat(form.wrongProperty().get()).isEmpty();
        form.field(IntakeField.ACRES).set("-4");
        assertThat(form.wrongProperty().get())
                .contains(Word.of("ui.claim.wrong.count", Word.of(IntakeField.ACRES.key())));
        form.field(IntakeField.ACRES).set("");
        assertThat(form.intake(NOW).use().sold().orElseThrow().value()).isEqualTo(LocalDate.of(2025, 2, 10));
    }

    @Test
    void aCorrectionSaysWhy() throws Exception {
        IntakeForm form = new IntakeForm();
        form.fill(
                IntakeSheetFile.read(Firmware.root().resolve("fixtures/claims/example-sheet.yaml"), NOW), "completed");
        form.field(IntakeField.WHY_AGAIN).set(" ");
        assertThat(form.wrongProperty().get()).contains(Word.of("ui.claim.wrong.why"));
    }
}
