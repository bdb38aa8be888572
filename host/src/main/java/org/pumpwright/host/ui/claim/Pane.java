package org.pumpwright.host.ui.claim;

import java.util.List;
import javafx.scene.Node;
import org.pumpwright.host.ui.Action;

/** One of the things that the desk's screen shows, with its actions. JavaFX thread only. */
interface Pane {
    /** What it shows. */
    Node node();

    /** Its actions, made anew each time it comes to the front. */
    List<Action> actions();

    /** Gives the keyboard to what is filled in first. */
    default void focus() {}

    /** Something was scanned while none of its fields had the keyboard. */
    default void scanned(String text) {}
}
