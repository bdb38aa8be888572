package org.pumpwright.host.ui;

import java.util.Locale;
import javafx.animation.PauseTransition;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;

/** Gives cues: tones, and a border around the window that flashes with a word. Either can be switched off. JavaFX thread only. */
final class CueGiver extends StackPane implements AutoCloseable {
    private static final Duration SHOWN = Duration.millis(1200);

    /** What cues go to. Each next one is one press further. */
    enum Manner {
        SOUND_AND_FLASH,
        FLASH,
        SOUND,
        NONE;

        boolean sound() {
            return this == SOUND_AND_FLASH || this == SOUND;
        }

        boolean flash() {
            return this == SOUND_AND_FLASH || this == FLASH;
        }

        Manner next() {
            return switch (this) {
                case SOUND_AND_FLASH -> FLASH;
                case FLASH -> SOUND;
                case SOUND -> NONE;
                case NONE -> SOUND_AND_FLASH;
            };
        }

        String key() {
            return "ui.cue.manner." + name().toLowerCase(Locale.ROOT);
        }
    }

    private final ObjectProperty<Manner> manner = new SimpleObjectProperty<>(Manner.SOUND_AND_FLASH);
    private final Saying saying;
    private final Sounds sounds = new Sounds();
    private final Label word = new Label();
    private final PauseTransition end = new PauseTransition(SHOWN);

    CueGiver(Saying saying) {
        this.saying = saying;
        setId("cue");
        setMouseTransparent(true);
        setVisible(false);
        // Where signals are switched on and off: there it covers neither the stand nor what is said.
        setAlignment(Pos.BOTTOM_LEFT);
        word.getStyleClass().add("cue-word");
        getChildren().add(word);
        end.setOnFinished(over -> setVisible(false));
    }

    ObjectProperty<Manner> mannerProperty() {
        return manner;
    }

    void give(Cue cue) {
        if (manner.get().sound()) {
            sounds.play(cue);
        }
        if (manner.get().flash()) {
            getStyleClass().setAll("cue", "cue-" + cue.key());
            word.textProperty().bind(saying.text("ui.cue." + cue.key()));
            setVisible(true);
            end.playFromStart();
        }
    }

    @Override
    public void close() {
        sounds.close();
    }
}
