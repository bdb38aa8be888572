package org.pumpwright.host.ui.bucket;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.bench.WatchedPlant;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPaperDesk;
import org.pumpwright.host.ui.work.BucketStep;
import org.pumpwright.host.ui.work.ScaleModel;

/** A bucket test with a scale on a serial line, on a simulated board behind what the program takes for the stand's port. */
final class BucketScaleTest extends FramedTest {
    private static final String STEADY = "ST,GS,    912.0 g";

    private BucketModel model;
    private volatile String said = STEADY;
    private volatile boolean plugged = true;
    private volatile SimulatedLine line;
    private volatile String opened = "";
    private final WatchedPlant plant =
            new WatchedPlant(PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant());

    @BeforeEach
    void build() throws Exception {
        var description = services.shelf().stand("serial");
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> {
            line = new SimulatedLine(new SimulatedBoard(plant, description.channels()), 10);
            return line;
        });
        open(stands, description, Optional.of("/dev/ttyACM0"), () -> {
            Path benches = services.home().resolve("fixtures/buckets");
            model = new BucketModel(
                    background,
                    watch,
                    new BucketGuide(services.shelf(), stands, CLOCK).byHand(1),
                    new BucketDesk(services.home(), records, services.book(), CLOCK),
                    benches,
                    new ScaleModel(
                            background,
                            benches,
                            (port, baud) -> scale(port, baud),
                            () -> List.of("/dev/ttyUSB0", "/dev/ttyUSB1")),
                    window.stop());
            BucketPaperDesk papers = new BucketPaperDesk(
                    background,
                    new PaperDesk(services.book(), services.home().resolve("fixtures"), records),
                    paper -> {});
            window.add(new BucketScreen(window, model, papers, window.darkProperty()));
            return true;
        });
        until(() -> model.setUp().benchProperty().get().isPresent());
    }

    private Line scale(String port, int baud) throws StandException {
        if (!plugged) {
            throw new StandException(StandException.Trouble.NO_PORT, port, port + ": there is no such port.");
        }
        opened = port + " " + baud;
        return new TalkingScale(() -> said);
    }

    @Test
    void aStopBeforeTheStandIsEvenReachedIsNotLost() throws Exception {
        onScreen(() -> {
            press(window.scene(), KeyCode.F1);
            press(window.scene(), KeyCode.ESCAPE);
            return true;
        });
        until(() -> window.scene().lookup("#banner").isVisible());
        until(() -> model.stepProperty().get() == BucketStep.PLAN);

        assertThat(plant.wasClosed()).isFalse();
        assertThat(onScreen(() -> model.resultProperty().get())).isEmpty();
        press(KeyCode.F8);
        press(KeyCode.F3);
        assertThat(onScreen(() -> model.setUp().planProperty().get().duties())).hasSize(5);
    }

    @Test
    void aScaleOnALineIsChosenWithItsPortAndReadAtOnce() throws Exception {
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        press(KeyCode.F6);
        asked(true);
        assertThat(ScreenPictures.of(this, window, "bucket-scale")).isEmpty();
        press(KeyCode.F2);
        asked(true);
        assertThat(ScreenPictures.of(this, window, "bucket-port")).isEmpty();
        press(KeyCode.F2);
        until(() -> shows().equals("ui.bucket.scale.shows"));
        assertThat(opened).isEqualTo("/dev/ttyUSB1 9600");
        assertThat(onScreen(() -> model.scales().showsProperty().get().values()))
                .containsExactly("912.0");
        assertThat(onScreen(() -> model.scaleIsRead())).isTrue();
        assertThat(ScreenPictures.of(this, window, "bucket-plan-scale")).isEmpty();

        press(KeyCode.F6);
        asked(true);
        press(KeyCode.F1);
        assertThat(onScreen(() -> model.scales().chosenProperty().get())).isEmpty();
    }

    @Test
    void aScaleThatIsNotThereIsToldBeforeTheWork() throws Exception {
        plugged = false;
        choose();
        until(() -> shows().isEmpty());
        assertThat(onScreen(() -> model.scales().showsProperty().get().values().get(0)))
                .asString()
                .contains("/dev/ttyUSB0: there is no such port");
        press(KeyCode.F1);
        at(BucketStep.PLAN);
        until(() -> window.scene().lookup("#banner").isVisible());
    }

    @Test
    void theScaleIsReadInTheTestAndWhatItCanNotTellIsTyped() throws Exception {
        choose();
        until(() -> shows().equals("ui.bucket.scale.shows"));
        press(KeyCode.F1);
        at(BucketStep.TARE);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();

        said = "US,GS,    912.0 g";
        press(KeyCode.F2);
        until(() -> !model.complaintProperty().get().values().get(0).equals(""));
        at(BucketStep.TARE);
        assertThat(ScreenPictures.of(this, window, "bucket-scale-restless")).isEmpty();
        onScreen(() -> {
            ((TextField) window.scene().lookup("#bucket-grams")).setText("900");
            return true;
        });
        press(KeyCode.F1);
        at(BucketStep.SWING_IN);
        press(KeyCode.F1);
        at(BucketStep.SWING_OUT);
        press(KeyCode.F1);
        at(BucketStep.GROSS);
        said = "ST,GS,  20012.0 g";
        press(KeyCode.F2);
        at(BucketStep.TARE);
        assertThat(onScreen(() -> model.scales().showsProperty().get().values()))
                .containsExactly("20012.0");
        assertThat(onScreen(() -> model.progress().flows().get(0).k())).hasSize(1);
        assertThat(onScreen(() -> model.progress().runProperty().get())).isEqualTo(2);

        press(KeyCode.ESCAPE);
        at(BucketStep.PLAN);
    }

    @Test
    void aBoardThatIsUnpluggedEndsTheTestWithABannerAndAUsableWindow() throws Exception {
        press(KeyCode.F1);
        at(BucketStep.TARE);
        line.unplug();
        at(BucketStep.PLAN);
        until(() -> window.scene().lookup("#banner").isVisible());
        press(KeyCode.F8);
        press(KeyCode.F3);
        assertThat(onScreen(() -> model.setUp().planProperty().get().duties().size()))
                .isEqualTo(5);
    }

    private String shows() {
        return model.scales().showsProperty().get().key();
    }

    private void choose() throws Exception {
        press(KeyCode.F6);
        asked(true);
        press(KeyCode.F2);
        asked(true);
        press(KeyCode.F1);
    }

    private void asked(boolean now) throws Exception {
        until(() -> window.scene().lookup("#prompt").isVisible() == now);
    }

    private void at(BucketStep step) throws Exception {
        until(() -> model.stepProperty().get() == step);
    }
}
