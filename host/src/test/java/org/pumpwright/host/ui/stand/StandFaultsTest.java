package org.pumpwright.host.ui.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.bench.WatchedPlant;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.work.LinkState;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.StandCareModel;

/** STOP, and a pulled plug, while the stand is looked after: on a simulated board behind what the program takes for a serial port. */
final class StandFaultsTest extends FramedTest {
    private StandCareModel care;
    private final WatchedPlant plant =
            new WatchedPlant(PracticeUnit.healthy(UnitKind.PUMP_12V, 1).plant());
    private volatile double pace = 1;
    private volatile boolean plugged = true;
    private volatile SimulatedLine line;

    @BeforeEach
    void build() throws Exception {
        var description = services.shelf().stand("serial");
        SimulatedBoard board = new SimulatedBoard(plant, description.channels());
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> {
            if (!plugged) {
                throw new StandException(StandException.Trouble.NO_PORT, port, port + ": there is no such port.");
            }
            line = new SimulatedLine(board, pace);
            return line;
        });
        open(stands, description, Optional.of("/dev/ttyUSB0"), () -> {
            care = new StandCareModel(background, watch, stands, services.shelf(), window.stop(), CLOCK);
            window.add(new StandScreen(window, watch, care));
            return true;
        });
    }

    @Test
    void stopEndsTheSelfCheckAtOnceAndTheBoardIsSafe() throws Exception {
        press(KeyCode.F2);
        until(() -> plant.closed() && care.shareProperty().get() > 0.2);
        stopEndsItSafe();
        assertThat(onScreen(() -> care.shareProperty().get())).isLessThan(1);
        assertThat(ScreenPictures.of(this, window, "stand-stopped")).isEmpty();
    }

    @Test
    void theSelfCheckShowsHowFarItIsAndThatThePowerIsOn() throws Exception {
        pace = 0.2;
        press(KeyCode.F2);
        until(() -> plant.closed() && care.shareProperty().get() > 0.1);
        assertThat(onScreen(() -> window.scene().lookup("#stand-progress").isVisible()))
                .isTrue();
        assertThat(onScreen(() -> watch.ticks().get(3).mark())).isEqualTo(Mark.WATCH);
        assertThat(ScreenPictures.of(this, window, "stand-checking")).isEmpty();
    }

    @Test
    void stopEndsTheTrialOfTheBoardAtOnceAndTheBoardIsSafe() throws Exception {
        press(KeyCode.F4);
        press(KeyCode.F1);
        until(() -> plant.driven());
        stopEndsItSafe();
        assertThat(onScreen(() -> care.shareProperty().get())).isLessThan(1);
    }

    @Test
    void theTrialShowsHowFarItIs() throws Exception {
        pace = 4;
        press(KeyCode.F4);
        press(KeyCode.F1);
        until(() -> care.rows().size() > 8);
        assertThat(onScreen(() -> care.headlineProperty().get().key())).isEqualTo("ui.stand.trying");
        assertThat(onScreen(() -> care.shareProperty().get())).isBetween(0.1, 0.9);
        assertThat(ScreenPictures.of(this, window, "stand-trying")).isEmpty();
        press(KeyCode.ESCAPE);
        until(() -> !care.busyProperty().get());
    }

    @Test
    void stopBeforeTheStandIsReachedArmsNothing() throws Exception {
        onScreen(() -> {
            press(window.scene(), KeyCode.F2);
            press(window.scene(), KeyCode.ESCAPE);
            return true;
        });
        until(() -> !care.busyProperty().get());
        assertThat(onScreen(() -> care.headlineProperty().get().key())).isEqualTo("ui.stand.stopped");
        assertThat(plant.wasClosed()).isFalse();
    }

    private void stopEndsItSafe() throws Exception {
        long begin = System.currentTimeMillis();
        press(KeyCode.ESCAPE);
        until(() -> !plant.closed());
        // A board whose link is only lost takes a second; a busy machine is allowed for.
        assertThat(System.currentTimeMillis() - begin)
                .as("ms until the contactor is open")
                .isLessThan(900);
        until(() -> !care.busyProperty().get());
        assertThat(plant.closed()).isFalse();
        assertThat(plant.driven()).isFalse();
        assertThat(onScreen(() -> care.headlineProperty().get().key())).isEqualTo("ui.stand.stopped");
        assertThat(onScreen(() -> care.rows().get(0).finding().key())).isEqualTo("ui.stand.safe.confirmed");
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isTrue();
    }

    @Test
    void aPulledPlugIsToldAndTheStandComesBackByItself() throws Exception {
        press(KeyCode.F1);
        until(() -> watch.linkProperty().get() == LinkState.HEARD);

        plugged = false;
        line.unplug();
        until(() -> watch.linkProperty().get() == LinkState.LOST);
        assertThat(onScreen(() -> watch.ticks().get(0).mark())).isEqualTo(Mark.BAD);
        assertThat(onScreen(() -> watch.readings().size())).isZero();
        assertThat(onScreen(() -> ((Label) window.scene().lookup("#stand-state")).getText()))
                .startsWith("LOST");
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isTrue();
        assertThat(ScreenPictures.of(this, window, "stand-lost")).isEmpty();

        plugged = true;
        until(() -> watch.linkProperty().get() == LinkState.HEARD);
        assertThat(onScreen(() -> watch.ticks().get(0).mark())).isEqualTo(Mark.GOOD);
        assertThat(onScreen(() -> watch.readings().size())).isEqualTo(5);
        press(KeyCode.F8);
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isFalse();
    }

    @Test
    void aLostStandIsNotLookedForAnyMoreOnceNobodyWantsToReadIt() throws Exception {
        press(KeyCode.F1);
        until(() -> watch.linkProperty().get() == LinkState.HEARD);
        plugged = false;
        line.unplug();
        until(() -> watch.linkProperty().get() == LinkState.LOST);

        press(KeyCode.F1);
        until(() -> watch.linkProperty().get() == LinkState.OFF);
        assertThat(onScreen(() -> watch.watchingProperty().get())).isFalse();
    }
}
