package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.work.ClaimLookup;
import org.pumpwright.host.ui.work.PracticeModel.Stage;

/** A whole job on the simulated stand, from a unit that comes in to its papers, and practice. */
final class JobJourneyTest extends FramedTest {
    private final LinkedBlockingQueue<Path> opened = new LinkedBlockingQueue<>();
    private JobScreens job;

    @BeforeEach
    void build() throws Exception {
        var description = services.shelf().stand("simulated");
        open(services.stands(), description, Optional.empty(), () -> {
            job = JobScreens.of(
                    window,
                    background,
                    watch,
                    services,
                    new JobScreens.Setting(ClaimLookup.NONE, opened::add, OptionalDouble.empty()));
            job.addTo(window, Optional.empty());
            return true;
        });
    }

    @Test
    void aUnitGoesFromTheDoorToItsPaperByKeysAlone() throws Exception {
        receive();
        assertThat(pictures("receive-complete")).isEmpty();
        press(KeyCode.F1);
        until(() -> window.current() == Moment.READY);
        assertThat(pictures("ready-to-check")).isEmpty();

        press(KeyCode.F2);
        until(() ->
                job.work().fitProperty().get() && !job.ready().busyProperty().get());
        assertThat(pictures("ready-fit")).isEmpty();

        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.RUN);
        until(() -> job.work().resultProperty().get().isPresent()
                && !job.run().runningProperty().get());
        assertThat(onScreen(() -> job.run().view().strip().size())).isGreaterThan(100);
        assertThat(onScreen(() -> job.run().view().sweepProperty().get().dots().size()))
                .isEqualTo(9);
        assertThat(pictures("run-over")).isEmpty();

        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.VERDICT);
        assertThat(onScreen(() -> job.verdict().verdictProperty().get())).contains(Verdict.PASS);
        assertThat(pictures("verdict-pass")).isEmpty();

        press(KeyCode.F2);
        Path page = opened.poll(20, TimeUnit.SECONDS);
        assertThat(page).isNotNull().startsWith(records);
        assertThat(PaperText.of(page).words())
                .contains("PASS")
                .contains("AB-1234")
                .contains("surging");
    }

    @Test
    void whatIsMissingIsNamedAndNothingIsTakenInBeforeItIsThere() throws Exception {
        assertThat(pictures("receive-empty")).isEmpty();
        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.RECEIVE);
        assertThat(onScreen(() -> job.receive().missing().size())).isEqualTo(6);
    }

    @Test
    void aSurpriseIsGuessedBeforeItIsTold() throws Exception {
        press(KeyCode.DIGIT9, true);
        until(() -> !job.practice().faults().isEmpty());
        assertThat(pictures("practice-choose")).isEmpty();
        press(KeyCode.F1);
        until(() -> job.practice().stageProperty().get() == Stage.GUESS
                && !job.run().runningProperty().get());
        assertThat(onScreen(() -> job.practice().quiz().answerProperty().get().key()))
                .isEmpty();
        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.PRACTICE);
        assertThat(pictures("practice-guess")).isEmpty();

        String truth = onScreen(() -> job.work()
                .orderProperty()
                .get()
                .flatMap(order -> order.practice())
                .map(PracticeUnit::fault)
                .orElseThrow()
                .word());
        onScreen(() -> {
            button(window.scene(), "fault-" + truth).fire();
            return true;
        });
        assertThat(onScreen(() -> job.practice().quiz().rightProperty().get())).isEqualTo(1);
        assertThat(onScreen(() -> ((Labeled) window.scene().lookup("#tally")).getText()))
                .isEqualTo("Right: 1 of 1");
        assertThat(pictures("practice-answer")).isEmpty();
    }

    @Test
    void aWornUnitFailsAndTheVerdictNamesWhatToDoNext() throws Exception {
        practise(PumpFault.SLIP);
        assertThat(onScreen(() -> job.verdict().verdictProperty().get())).contains(Verdict.FAIL);
        assertThat(pictures("run-fail")).isEmpty();
        go(Moment.VERDICT);
        assertThat(onScreen(() -> job.verdict().next().size())).isGreaterThan(2);
        assertThat(pictures("verdict-fail")).isEmpty();
    }

    @Test
    void aFaultOfTheStandIsNoVerdictOnTheUnit() throws Exception {
        practise(PumpFault.LOW_SUPPLY);
        assertThat(onScreen(() -> job.verdict().verdictProperty().get())).contains(Verdict.INVALID);
        go(Moment.VERDICT);
        assertThat(pictures("verdict-invalid")).isEmpty();
    }

    private List<String> pictures(String name) throws Exception {
        List<String> clipped = ScreenPictures.of(this, window, name);
        onScreen(() -> {
            window.saying().languageProperty().set(Language.EN);
            return true;
        });
        return clipped;
    }

    private void practise(PumpFault fault) throws Exception {
        press(KeyCode.DIGIT9, true);
        until(() -> !job.practice().faults().isEmpty());
        onScreen(() -> {
            job.practice().faultProperty().set(Optional.of(fault));
            job.practice().severityProperty().set(Severity.SEVERE);
            return true;
        });
        press(KeyCode.F2);
        until(() -> job.practice().stageProperty().get() == Stage.ANSWER
                && !job.run().runningProperty().get());
    }

    private void go(Moment moment) throws Exception {
        onScreen(() -> {
            window.goTo(moment);
            return true;
        });
    }

    private void receive() throws Exception {
        until(() -> window.scene().lookup("#model-demo-pump") != null);
        onScreen(() -> {
            ((Button) window.scene().lookup("#model-demo-pump")).fire();
            scan(window.scene(), "AB-1234");
            ((TextField) window.scene().lookup("#technician")).setText("Rosa Vidal");
            ((TextField) window.scene().lookup("#claim")).setText("C-77");
            button(window.scene(), "complaint-2").fire();
            button(window.scene(), "product-0").fire();
            return true;
        });
        press(KeyCode.F4);
        assertThat(onScreen(() -> job.receive().serialProperty().get())).isEqualTo("AB-1234");
        assertThat(onScreen(() -> job.receive().missing())).isEmpty();
        assertThat(onScreen(() ->
                        job.receive().unit().planProperty().get().orElseThrow().id()))
                .isEqualTo("full-12v-pump");
        onScreen(() -> {
            var quick = job.receive().unit().plansOfTheKind().stream()
                    .filter(each -> each.id().equals("quick-12v-pump"))
                    .findFirst();
            job.receive().unit().choose(quick.orElseThrow());
            return true;
        });
    }

    private void press(KeyCode key, boolean alt) throws Exception {
        onScreen(() -> {
            press(window.scene(), key, false, alt);
            return true;
        });
    }
}
