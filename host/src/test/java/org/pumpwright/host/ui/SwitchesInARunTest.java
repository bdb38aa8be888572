package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;

/** Language, units and light are switched in the middle of a run, by a run that was begun by pedal with a scanned serial. */
@Timeout(600)
final class SwitchesInARunTest extends JourneyTest {
    private static final double PACE = 8;

    @Test
    void nothingOfTheRunIsLost() throws Exception {
        openSimulated(PACE, BenchKeys.USUAL, opened::add);
        job.upToTheRun("SN-1");
        job.awaitMeasuring();
        latest.hold();
        settle();
        String english = hands.says();
        assertThat(english).contains("gal/min", "Point ").doesNotContain("L/min");

        hands.press(KeyCode.CONTROL, KeyCode.L);
        hands.press(KeyCode.CONTROL, KeyCode.U);
        hands.press(KeyCode.CONTROL, KeyCode.D);

        assertThat(hands.says())
                .contains("L/min", "Punto ", "Terminar", "PARAR")
                .doesNotContain("gal/min");
        latest.goOn();
        job.awaitEnd();
        job.toVerdict();
        hands.awaitWords("SN-1");
        hands.awaitWords("APROBADO");
        hands.press(KeyCode.CONTROL, KeyCode.L);
        hands.awaitWords("PASS");

        RunRecord run = kept(folder.resolve("records")).get(0);
        assertThat(run.grade().verdict()).isEqualTo(Verdict.PASS);
        assertThat(run.ending().completed()).isTrue();
        assertThat(run.stand().samplesLost()).isZero();
    }

    @Test
    void theUnitIsScannedAndThePedalDoesEverythingThatComesNext() throws Exception {
        openSimulated(0, BenchKeys.USUAL, opened::add);
        job.fillInAllButTheSerial();
        onScreen(() -> {
            scan(window().scene(), "DP-2512-0417");
            return true;
        });
        assertThat(onScreen(() -> ((TextField) window().scene().lookup("#technician")).getText()))
                .isEqualTo("ROSA VIDAL");
        hands.awaitAction(KeyCode.F1);
        pedal(Moment.READY);
        hands.press(KeyCode.F9);
        hands.await("a stand that is fit", () -> hands.canDo(KeyCode.F1) && hands.canDo(KeyCode.F2));
        pedal(Moment.RUN);
        job.awaitEnd();
        pedal(Moment.VERDICT);

        hands.awaitWords("DP-2512-0417");
        hands.awaitWords("PASS");
        assertThat(kept(folder.resolve("records")).get(0).subject().serial()).isEqualTo("DP-2512-0417");
    }

    /** Steps on the pedal; then this screen is in front. */
    private void pedal(Moment then) throws Exception {
        hands.press(KeyCode.F9);
        hands.await("the moment " + then, () -> hands.isAt(then));
    }
}
