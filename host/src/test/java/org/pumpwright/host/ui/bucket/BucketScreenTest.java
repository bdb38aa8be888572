package org.pumpwright.host.ui.bucket;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPaperDesk;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.ScaleModel;

/** A bucket test through the window, on the simulated bucket, by the keys alone. */
final class BucketScreenTest extends FramedTest {
    private final List<Path> opened = new ArrayList<>();
    private BucketModel model;

    @BeforeEach
    void build() throws Exception {
        build(40);
    }

    private void build(double pace) throws Exception {
        var description = services.shelf().stand("simulated");
        open(services.stands(), description, Optional.empty(), () -> {
            model = new BucketModel(
                    background,
                    watch,
                    new BucketGuide(services.shelf(), services.stands(), CLOCK).byHand(pace),
                    new BucketDesk(services.home(), records, services.book(), CLOCK),
                    services.home().resolve("fixtures/buckets"),
                    new ScaleModel(
                            background,
                            services.home().resolve("fixtures/buckets"),
                            (port, baud) -> new TalkingScale(() -> "ST,GS,    912.0 g"),
                            () -> List.of("/dev/ttyUSB0", "/dev/ttyUSB1")),
                    window.stop());
            BucketPaperDesk papers = new BucketPaperDesk(
                    background,
                    new PaperDesk(services.book(), services.home().resolve("fixtures"), records),
                    opened::add);
            window.add(new BucketScreen(window, model, papers, window.darkProperty()));
            return true;
        });
        until(() -> model.setUp().benchProperty().get().isPresent());
    }

    private void at(BucketStep step) throws Exception {
        until(() -> model.stepProperty().get() == step);
    }

    @Test
    void aPlanIsSeenAndChangedBeforeItBegins() throws Exception {
        assertThat(onScreen(
                        () -> model.setUp().benchProperty().get().orElseThrow().name()))
                .isEqualTo("simulated-bench");
        assertThat(onScreen(() -> model.setUp().planProperty().get().total())).isEqualTo(20);
        press(KeyCode.F3);
        press(KeyCode.F4);
        press(KeyCode.F5);
        assertThat(onScreen(() -> model.setUp().planProperty().get().total())).isEqualTo(50);
        assertThat(onScreen(() -> model.setUp().planProperty().get().seconds())).isEqualTo(120);
        onScreen(() -> {
            scan(window.scene(), "M-7713");
            return true;
        });
        assertThat(onScreen(() -> model.setUp().serialProperty().get())).isEqualTo("M-7713");
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "bucket-plan")).isEmpty();
    }

    @Test
    void theKeysAloneLeadToAnAcceptedK() throws Exception {
        onScreen(() -> {
            model.setUp()
                    .plan(model.setUp()
                            .planProperty()
                            .get()
                            .otherFlows()
                            .otherFlows()
                            .otherRuns()
                            .otherRuns());
            return true;
        });
        int total = onScreen(() -> model.setUp().planProperty().get().total());
        assertThat(total).isEqualTo(9);
        press(KeyCode.F1);
        for (int run = 1; run <= total; run++) {
            at(BucketStep.TARE);
            if (run == 5) {
                assertThat(ScreenPictures.of(this, window, "bucket-tare")).isEmpty();
            }
            press(KeyCode.F2);
            at(BucketStep.SWING_IN);
            press(KeyCode.F1);
            at(BucketStep.SWING_OUT);
            press(KeyCode.F1);
            at(BucketStep.GROSS);
            press(KeyCode.F2);
        }
        at(BucketStep.RESULT);
        double k = onScreen(() -> model.resultProperty()
                .get()
                .orElseThrow()
                .record()
                .result()
                .single()
                .pulsesPerM3());
        assertThat(k * 3.785411784e-3).isBetween(2900.0, 3100.0);
        assertThat(onScreen(() -> model.progress().flows().stream()
                        .map(flow -> flow.mark())
                        .toList()))
                .containsOnly(Mark.GOOD);
        assertThat(onScreen(() -> model.resultProperty().get().orElseThrow().troubles()))
                .isEmpty();
        assertThat(text("bucket-k")).matches("(29|30)\\d\\d\\.\\d");
        assertThat(text("bucket-k-u")).matches("± \\d\\.\\d");
        assertThat(text("bucket-k-other")).matches("7\\d\\d\\.\\d\\d");
        assertThat(text("bucket-record")).contains("simulated/K20260302");
        papersAreMade();
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "bucket-result")).isEmpty();
    }

    private String text(String id) throws Exception {
        return onScreen(() -> ((Label) window.scene().lookup("#" + id)).getText());
    }

    private void papersAreMade() throws Exception {
        String id = onScreen(
                () -> model.resultProperty().get().orElseThrow().record().id());
        press(KeyCode.F1);
        until(() -> opened.size() == 1);
        press(KeyCode.F2);
        until(() -> opened.size() == 2);
        press(KeyCode.F3);
        until(() -> opened.size() == 3);
        assertThat(opened)
                .extracting(paper -> paper.getFileName().toString())
                .containsExactly(id + "-bucket.pdf", id + "-label.pdf", "certificate.xml");
        for (Path paper : opened.subList(0, 2)) {
            byte[] pdf = Files.readAllBytes(paper);
            assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
            assertThat(pdf.length).isGreaterThan(10_000);
        }
    }

    @Test
    void aWeightThatIsNoneIsToldAndAskedAgain() throws Exception {
        press(KeyCode.F1);
        at(BucketStep.TARE);
        onScreen(() -> {
            ((TextField) window.scene().lookup("#bucket-grams")).setText("900,5");
            return true;
        });
        press(KeyCode.F1);
        assertThat(onScreen(() -> model.complaintProperty().get().key())).isEqualTo("ui.bucket.point");
        assertThat(onScreen(() -> model.stepProperty().get())).isEqualTo(BucketStep.TARE);
        assertThat(ScreenPictures.of(this, window, "bucket-wrong-weight")).isEmpty();
    }

    @Test
    void stopEndsTheTestAndKeepsTheWindowUsable() throws Exception {
        press(KeyCode.F1);
        at(BucketStep.TARE);
        press(KeyCode.F2);
        at(BucketStep.SWING_IN);
        press(KeyCode.ESCAPE);
        at(BucketStep.PLAN);
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isTrue();
        press(KeyCode.F8);
        until(() -> ((Label) window.scene().lookup(".banner-detail")).getText().contains("Runs before it: 0, kept in"));
        press(KeyCode.F8);
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isFalse();
        press(KeyCode.F3);
        assertThat(onScreen(() -> model.setUp().planProperty().get().duties().size()))
                .isEqualTo(5);
    }

    @Test
    void theCountIsReadFromAcrossTheShop() throws Exception {
        build(1);
        press(KeyCode.F1);
        at(BucketStep.TARE);
        press(KeyCode.F2);
        at(BucketStep.SWING_IN);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        press(KeyCode.F1);
        until(() -> model.progress().liveProperty().get().pulses() > 200);
        assertThat(ScreenPictures.of(this, window, "bucket-counting")).isEmpty();
    }
}
