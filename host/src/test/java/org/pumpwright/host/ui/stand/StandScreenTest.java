package org.pumpwright.host.ui.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.StandCareModel;

/** The screen of the stand, on the simulated one. */
final class StandScreenTest extends FramedTest {
    private StandCareModel care;

    @BeforeEach
    void build() throws Exception {
        var description = services.shelf().stand("simulated");
        open(services.stands(), description, Optional.empty(), () -> {
            care = new StandCareModel(background, watch, services.stands(), services.shelf(), window.stop(), CLOCK);
            window.add(new StandScreen(window, watch, care));
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
}
