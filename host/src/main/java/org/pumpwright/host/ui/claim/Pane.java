package org.pumpwright.host.ui.claim;

import java.util.List;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.binding.ObjectBinding;
import javafx.scene.Node;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.Word;

/** One of the things that the desk's screen shows, with its actions. JavaFX thread only. */
interface Pane {
    /** What it shows. */
    Node node();

    /** Its actions, made anew each time it comes to the front. */
    List<Action> actions();

    /**
     * The actions of a form: keep it, when nothing is missing and nothing is being kept, or leave it.
     *
     * @param need what is missing, {@link Word#NONE} when nothing is
     * @param keep what keeping is called
     */
    static List<Action> ofForm(
            Saying saying,
            ClaimModel model,
            ObjectBinding<Word> need,
            String keep,
            Runnable keeping,
            Runnable leaving) {
        BooleanBinding whole =
                need.isEqualTo(Word.NONE).and(model.busyProperty().not());
        return Action.atTheEnds(
                Action.of(saying.text(keep), keeping).when(whole).asNext(),
                Action.of(saying.text("ui.cancel"), leaving));
    }

    /** Gives the keyboard to what is filled in first. */
    default void focus() {}

    /** Something was scanned while none of its fields had the keyboard. */
    default void scanned(String text) {}
}
