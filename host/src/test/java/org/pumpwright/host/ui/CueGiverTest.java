package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Cues to the eye; how the tones sound is another test's. */
final class CueGiverTest extends WindowTest {
    private BenchWindow window;

    @BeforeEach
    void build() throws Exception {
        onScreen(() -> {
            window = frame();
            window.add(new PlainScreen(Moment.STAND, window.saying()));
            return true;
        });
        show(window.scene(), 1280, 800);
    }

    @AfterEach
    void close() throws Exception {
        onScreen(() -> {
            window.close();
            return true;
        });
    }

    @Test
    void theBorderFlashesWithAWordAndGoesOutByItself() throws Exception {
        Scene scene = window.scene();
        String word = onScreen(() -> {
            window.cue(Cue.VERDICT);
            Picture.take(scene, "frame-cue");
            return ((Labeled) scene.lookup(".cue-word")).getText();
        });
        assertThat(word).isEqualTo("VERDICT");
        until(() -> !scene.lookup("#cue").isVisible());
    }

    @Test
    void theFlashLetsEveryPressThrough() throws Exception {
        assertThat(onScreen(() -> window.scene().lookup("#cue").isMouseTransparent()))
                .isTrue();
    }

    @Test
    void soundAndFlashCanEachBeSwitchedOff() throws Exception {
        onScreen(() -> {
            Button signals = button(window.scene(), "cues");
            signals.fire();
            assertThat(signals.getText()).isEqualTo("Flash only");
            assertThat(flashes()).isTrue();
            signals.fire();
            assertThat(signals.getText()).isEqualTo("Sound only");
            assertThat(flashes()).isFalse();
            signals.fire();
            assertThat(signals.getText()).isEqualTo("Off");
            assertThat(flashes()).isFalse();
            signals.fire();
            assertThat(signals.getText()).isEqualTo("Sound, flash");
            assertThat(flashes()).isTrue();
            return true;
        });
    }

    private boolean flashes() {
        Node flash = window.scene().lookup("#cue");
        flash.setVisible(false);
        window.cue(Cue.STEP);
        return flash.isVisible();
    }
}
