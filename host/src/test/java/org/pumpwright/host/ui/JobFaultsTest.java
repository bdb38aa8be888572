package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.ui.work.ClaimLookup;
import org.pumpwright.host.ui.work.Product;
import org.pumpwright.host.ui.work.WorkOrder;

/** Runs that do not go as they should, on a simulated board behind what the program takes for a serial port. */
final class JobFaultsTest extends FramedTest {
    private JobScreens job;
    private volatile PacedLine line;

    private void build(String plan, double pace) throws Exception {
        var description = services.shelf().stand("serial");
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> {
            line = JourneyTest.healthy(pace);
            return line;
        });
        BenchServices onTheLine = new BenchServices(
                services.home(),
                services.shelf(),
                stands,
                records,
                services.recordFolder(),
                services.book(),
                services.clock());
        WorkOrder order = new WorkOrder(
                services.shelf().model("demo-pump"),
                services.shelf().plan(plan),
                "AB-1234",
                "Rosa Vidal",
                Product.WATER,
                Acceptance.Job.PLAIN,
                Optional.empty(),
                Optional.empty());
        open(stands, description, Optional.of("port"), () -> {
            job = JobScreens.of(
                    window,
                    background,
                    watch,
                    onTheLine,
                    new JobScreens.Setting(ClaimLookup.NONE, paper -> {}, OptionalDouble.empty()));
            job.addTo(window, Optional.empty());
            job.work().take(order);
            job.work().fitProperty().set(true);
            window.goTo(Moment.RUN);
            return true;
        });
        press(KeyCode.F1);
    }

    @Test
    void stopInARunIsAnInvalidRunThatSaysWhyAndLeavesAUsableWindow() throws Exception {
        build("quick-12v-pump", 4);
        until(() -> job.run().view().sweepProperty().get().dots().size() >= 2);
        line.hold();
        assertThat(ScreenPictures.of(this, window, "run-live")).isEmpty();
        line.goOn();

        press(KeyCode.ESCAPE);
        until(() -> job.run().questions().asksWhyProperty().get());
        assertThat(onScreen(() -> window.scene().lookup("#prompt").isVisible())).isTrue();
        assertThat(ScreenPictures.of(this, window, "run-why")).isEmpty();
        press(KeyCode.F1);

        RunRecord record = over();
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
        assertThat(record.ending().reason()).contains("STOP was pressed").endsWith("something leaked or sprayed");
        assertThat(record.trace().samples()).isNotEmpty();
        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.VERDICT);
        assertThat(onScreen(() -> watch.ticks().get(3).mark().name())).isEqualTo("UNKNOWN");
    }

    @Test
    void aBoardThatIsUnpluggedGivesABannerAKeptRunAndAUsableWindow() throws Exception {
        build("quick-12v-pump", 4);
        until(() -> !job.run().view().sweepProperty().get().dots().isEmpty());
        line.unplug();

        RunRecord record = over();
        assertThat(record.grade().verdict()).isEqualTo(Verdict.INVALID);
        assertThat(record.trace().points()).isNotEmpty();
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isTrue();
        try (var kept = Files.walk(records)) {
            assertThat(kept.filter(file -> file.endsWith("page.html"))).hasSize(1);
        }
        press(KeyCode.F1);
        assertThat(onScreen(window::current)).isEqualTo(Moment.VERDICT);
        assertThat(ScreenPictures.of(this, window, "verdict-unplugged")).isEmpty();
    }

    @Test
    void thePlansQuestionsAreAskedOverTheRunAndTheAnswersGoToIt() throws Exception {
        build("wiggle-12v-pump", 0);
        until(() -> job.run().questions().questionProperty().get().isPresent());
        assertThat(onScreen(() -> window.scene().lookup("#prompt").isVisible())).isTrue();
        assertThat(ScreenPictures.of(this, window, "run-asks")).isEmpty();
        String first = onScreen(() ->
                job.run().questions().questionProperty().get().orElseThrow().name());
        press(KeyCode.F1);
        until(() -> job.run()
                .questions()
                .questionProperty()
                .get()
                .filter(ask -> !ask.name().equals(first))
                .isPresent());
        press(KeyCode.F2);
        until(() -> job.run().questions().asksWhyProperty().get());
        press(KeyCode.F6);

        RunRecord record = over();
        assertThat(record.trace().answers()).hasSize(2);
        assertThat(record.ending().reason()).isEqualTo("the technician ended the run");
        assertThat(List.of(Verdict.INVALID, Verdict.NOT_TESTED))
                .contains(record.grade().verdict());
    }

    private RunRecord over() throws Exception {
        until(() -> job.work().resultProperty().get().isPresent()
                && !job.run().runningProperty().get());
        return onScreen(() -> job.work().resultProperty().get().orElseThrow().record());
    }
}
