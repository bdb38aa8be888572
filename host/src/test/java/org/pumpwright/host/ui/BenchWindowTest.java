package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.work.Trouble;

/** The frame around every screen. */
final class BenchWindowTest extends WindowTest {
    private BenchWindow window;
    private Scene scene;
    private PlainScreen stand;
    private PlainScreen practice;

    @BeforeEach
    void build() throws Exception {
        onScreen(() -> {
            window = frame();
            scene = window.scene();
            stand = new PlainScreen(Moment.STAND, window.saying());
            practice = new PlainScreen(Moment.PRACTICE, window.saying());
            window.add(stand);
            return true;
        });
        show(scene, 1280, 800);
    }

    @AfterEach
    void close() throws Exception {
        onScreen(() -> {
            window.close();
            return true;
        });
    }

    @Test
    void functionKeysDoTheActionsInTheirPlaces() throws Exception {
        onScreen(() -> {
            press(scene, KeyCode.F3);
            press(scene, KeyCode.F2);
            press(scene, KeyCode.F6);
            press(scene, KeyCode.F1);
            return true;
        });
        assertThat(stand.done).containsExactly("shown", "third", "first");
    }

    @Test
    void thePedalDoesTheFirstActionThatCanBeDone() throws Exception {
        onScreen(() -> {
            press(scene, KeyCode.F9);
            stand.firstPossible.set(false);
            press(scene, KeyCode.F9);
            press(scene, KeyCode.F1);
            return true;
        });
        assertThat(stand.done).containsExactly("shown", "first", "third");
    }

    @Test
    void altAndADigitGoToAMomentAndOneWithoutAScreenIsNotThere() throws Exception {
        onScreen(() -> {
            press(scene, KeyCode.DIGIT1, false, true);
            return true;
        });
        assertThat(window.current()).isEqualTo(Moment.STAND);
        assertThat(scene.lookup("#moment-receive")).isNull();
        assertThat(stand.done).containsExactly("shown");
    }

    @Test
    void goingToAnotherMomentTellsBothScreens() throws Exception {
        onScreen(() -> {
            window.add(practice);
            button(scene, "moment-practice").fire();
            return true;
        });
        assertThat(stand.done).containsExactly("shown", "hidden");
        assertThat(practice.done).containsExactly("shown");
    }

    @Test
    void languageUnitsAndLightSwitchByKey() throws Exception {
        onScreen(() -> {
            press(scene, KeyCode.L, true, false);
            press(scene, KeyCode.U, true, false);
            press(scene, KeyCode.D, true, false);
            return true;
        });
        assertThat(window.saying().languageProperty().get()).isEqualTo(Language.ES);
        assertThat(window.saying().unitsProperty().get()).isEqualTo(UnitSystem.METRIC);
        assertThat(window.darkProperty().get()).isTrue();
        assertThat(onScreen(() -> button(scene, "stop").getText())).isEqualTo("PARAR");
    }

    @Test
    void everyVisibleTextFollowsTheLanguage() throws Exception {
        onScreen(() -> {
            window.trouble(Trouble.named("stand_no_answer", ""));
            press(scene, KeyCode.F7);
            return true;
        });
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
    }

    @Test
    void troubleStaysUntilItIsUnderstoodAndTheWindowGoesOn() throws Exception {
        onScreen(() -> {
            window.trouble(Trouble.named("stand_no_answer", "COM7: nothing answered"));
            window.trouble(Trouble.named("stand_no_answer", "COM7: nothing answered"));
            press(scene, KeyCode.F3);
            return true;
        });
        assertThat(onScreen(() -> scene.lookup("#banner").isVisible())).isTrue();
        assertThat(stand.done).contains("third");
        assertThat(ScreenPictures.of(this, window, "frame-trouble")).isEmpty();
        onScreen(() -> {
            press(scene, KeyCode.F8);
            return true;
        });
        assertThat(onScreen(() -> scene.lookup("#banner").isVisible())).isFalse();
    }

    @Test
    void helpOpensBesideTheScreen() throws Exception {
        onScreen(() -> {
            press(scene, KeyCode.F7);
            return true;
        });
        assertThat(onScreen(() -> scene.lookup("#help").isVisible())).isTrue();
        assertThat(ScreenPictures.of(this, window, "frame-help")).isEmpty();
    }

    @Test
    void anAnswerClosesThePromptAndGivesTheActionsBack() throws Exception {
        onScreen(() -> {
            window.ask(Prompt.of(
                    window.saying().text("ui.stand.try.ask"),
                    window.saying().text("ui.stand.try.caution"),
                    Action.of(window.saying().text("ui.cancel"), () -> stand.done.add("answered"))));
            return true;
        });
        assertThat(ScreenPictures.of(this, window, "frame-prompt")).isEmpty();
        onScreen(() -> {
            press(scene, KeyCode.F1);
            press(scene, KeyCode.F1);
            return true;
        });
        assertThat(stand.done).containsExactly("shown", "answered", "first");
    }

    @Test
    void aScanGoesToTheScreenAndNotIntoTheField() throws Exception {
        onScreen(() -> {
            stand.field.requestFocus();
            stand.field.setText("SN-1042");
            stand.field.positionCaret(7);
            scan(scene, "SN-1042");
            return true;
        });
        assertThat(stand.done).contains("scanned SN-1042");
    }

    @Test
    void stopActsWhenTheButtonIsPressedNotWhenItIsLetGo() throws Exception {
        StringBuilder why = new StringBuilder();
        onScreen(() -> {
            window.stop().register((Consumer<String>) why::append);
            pressMouse(button(scene, "stop"));
            return true;
        });
        until(() -> why.length() > 0);
        assertThat(onScreen(() -> ((Labeled) scene.lookup(".banner-what")).getText()))
                .isEqualTo("STOP was pressed at 03:15");
    }

    @Test
    void stopIsAlwaysInFrontAndOpen() throws Exception {
        onScreen(() -> {
            window.ask(Prompt.of(
                    window.saying().text("ui.stand.try.ask"),
                    window.saying().text("ui.stand.try.caution"),
                    Action.of(window.saying().text("ui.cancel"), () -> {})));
            window.trouble(Trouble.named("program", "x"));
            return true;
        });
        settle();
        assertThat(onScreen(() -> {
                    Button stop = button(scene, "stop");
                    var middle = stop.localToScene(stop.getWidth() / 2, stop.getHeight() / 2);
                    return scene.getRoot().contains(middle)
                            && !stop.isDisabled()
                            && stop.isVisible()
                            && stop.getHeight() >= 64;
                }))
                .isTrue();
    }
}
