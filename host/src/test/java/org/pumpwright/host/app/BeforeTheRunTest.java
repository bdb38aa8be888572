package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.datafile.EditedFile;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandFile;

final class BeforeTheRunTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final Shelf SHELF = new Shelf(Firmware.root().resolve("fixtures"));

    @TempDir
    private Path folder;

    @Test
    void aDeadHeadNeedsAReliefCheck() {
        assertThatThrownBy(() -> deadHeadOn(TestStands.described("serial")))
                .isInstanceOf(OrderException.class)
                .hasMessage(
                        "plan 'dead-head-12v-pump' runs against a closed outlet, but stand 'serial' has no relief check,"
                                + " so nothing was driven. Prove that its relief valve opens in time, then write relief_check into"
                                + " the stand's file.");
    }

    @Test
    void aReliefCheckThatIsPastItsLastDayIsNone() throws Exception {
        Path file = new EditedFile(EditedFile.fixture("stands/simulated.yaml"), folder)
                .with("due: 2099-12-31", "due: 2026-03-01");
        StandDescription stand = StandFile.read(file);
        assertThatThrownBy(() -> deadHeadOn(stand))
                .isInstanceOf(OrderException.class)
                .hasMessageContaining("the relief check of stand 'simulated' is PAST DUE since 2026-03-01")
                .hasMessageContaining("so nothing was driven. Prove the relief valve again");
    }

    @Test
    void aReliefCheckHoldsOnItsLastDay() throws Exception {
        Path file = new EditedFile(EditedFile.fixture("stands/simulated.yaml"), folder)
                .with("due: 2099-12-31", "due: 2026-03-02");
        StandDescription stand = StandFile.read(file);
        assertThatCode(() -> deadHeadOn(stand)).doesNotThrowAnyException();
    }

    @Test
    void aPlanThatClosesNothingNeedsNoReliefCheck() {
        assertThatCode(() -> BeforeTheRun.check(
                        SHELF.plan("quick-12v-pump"), SHELF.model("demo-pump"), TestStands.described("serial"), TODAY))
                .doesNotThrowAnyException();
    }

    @Test
    void aPlanThatReadsAMeterWhichTheStandDoesNotHaveIsRefused() {
        assertThatThrownBy(() -> BeforeTheRun.check(
                        SHELF.plan("valve-sweep"),
                        SHELF.model("demo-hydraulic-pump"),
                        TestStands.described("serial"),
                        TODAY))
                .isInstanceOf(OrderException.class)
                .hasMessageContaining("plan 'valve-sweep' reads meter 1, but stand 'serial' has none. Fit that meter");
    }

    @Test
    void aPlanForAnotherKindIsRefused() {
        assertThatThrownBy(() -> BeforeTheRun.check(
                        SHELF.plan("harness-drop"), SHELF.model("demo-pump"), TestStands.described("simulated"), TODAY))
                .isInstanceOf(OrderException.class)
                .hasMessage(
                        "plan 'harness-drop' is for a harness, model 'demo-pump' is a 12 V diaphragm pump. Choose a plan"
                                + " for it, or leave --plan away.");
    }

    private static void deadHeadOn(StandDescription stand) throws Exception {
        BeforeTheRun.check(SHELF.plan("dead-head-12v-pump"), SHELF.model("demo-pump"), stand, TODAY);
    }
}
