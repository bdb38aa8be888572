package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Word;

/** Says in a framed line that what is shown is no test of a real part; it is not there when it is one. JavaFX thread only. */
public final class PretenceSign extends HBox {
    /** @param pretence why not; {@link Word#NONE} when everything is real */
    public PretenceSign(Saying saying, ObservableValue<Word> pretence) {
        getStyleClass().add("pretence");
        Label words = new Label();
        words.getStyleClass().add("pretence-words");
        words.setMinWidth(Region.USE_PREF_SIZE);
        words.textProperty().bind(saying.text(pretence));
        getChildren().addAll(new Sign(Mark.WATCH), words);
        setMaxHeight(USE_PREF_SIZE);
        visibleProperty().bind(pretence.map(word -> !word.equals(Word.NONE)));
        managedProperty().bind(visibleProperty());
    }
}
