package org.pumpwright.host.ui.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.BenchWindow;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.WindowTest;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.StandCareModel;
import org.pumpwright.host.ui.work.StandWatchModel;

/** The screen of the stand, on the simulated one. */
final class StandScreenTest extends WindowTest {
    @TempDir
    Path records;

    private BenchWindow window;
    private StandWatchModel watch;
    private StandCareModel care;
    private Background background;

    @BeforeEach
    void build() throws Exception {
        BenchServices services = services(records);
        var description = services.shelf().stand("simulated");
        onScreen(() -> {
            background = Background.threads(trouble -> window.trouble(trouble));
            watch = new StandWatchModel(background, services.stands(), CLOCK);
            watch.choose(description, Optional.empty());
            window = frame(watch.ticks());
            care = new StandCareModel(background, watch, services.stands(), services.shelf(), window.stop(), CLOCK);
            window.add(new StandScreen(window, watch, care));
            return true;
        });
        show(window.scene(), 1280, 800);
    }

    @AfterEach
    void close() throws Exception {
        onScreen(() -> {
            watch.stop();
            background.close();
            window.close();
            return true;
        });
    }

    @Test
    void readsEveryChannelOfTheStand() throws Exception {
        press(KeyCode.F1);
        until(() -> watch.readings().size() == 6);

        assertThat(onScreen(() -> watch.ticks().get(0).mark())).isEqualTo(Mark.GOOD);
        assertThat(ScreenPictures.of(this, window, "stand-read")).isEmpty();
    }

    @Test
    void findsTheSimulatedStandFit() throws Exception {
        press(KeyCode.F2);
        until(() -> care.markProperty().get() == Mark.GOOD);

        assertThat(onScreen(() -> care.headlineProperty().get().key())).isEqualTo("ui.stand.fit");
        assertThat(onScreen(() -> care.rows().size())).isEqualTo(6);
        assertThat(ScreenPictures.of(this, window, "stand-checked")).isEmpty();
    }

    @Test
    void triesTheBoardAndListsEveryCheck() throws Exception {
        press(KeyCode.F4);
        until(() -> !care.busyProperty().get());

        assertThat(onScreen(() -> care.headlineProperty().get().key())).isEqualTo("ui.stand.conforms");
        assertThat(onScreen(() -> care.rows().size())).isGreaterThan(20);
        assertThat(ScreenPictures.of(this, window, "stand-tried")).isEmpty();
    }

    @Test
    void everyVisibleTextFollowsTheLanguage() throws Exception {
        press(KeyCode.F1);
        until(() -> watch.readings().size() == 6);
        press(KeyCode.F7);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        press(KeyCode.F2);
        until(() -> care.markProperty().get() == Mark.GOOD);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
    }

    @Test
    void anotherStandIsChosenByAPromptInsideTheWindow() throws Exception {
        press(KeyCode.F6);
        until(() -> window.scene().lookup("#prompt").isVisible());

        assertThat(ScreenPictures.of(this, window, "stand-other")).isEmpty();
        press(KeyCode.F6);
        assertThat(onScreen(() -> window.scene().lookup("#prompt").isVisible())).isFalse();
    }

    private void press(KeyCode key) throws Exception {
        Scene scene = window.scene();
        onScreen(() -> {
            press(scene, key);
            return true;
        });
    }
}
