package org.pumpwright.host.ui;

import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import org.pumpwright.host.ui.work.Word;

/**
 * What the window shows in one moment of the work. A screen builds its nodes once and binds them to what it shows; it keeps no thread
 * busy. Its title is the text
 * {@code ui.MOMENT.title}, its explanation {@code ui.MOMENT.help}. JavaFX thread only.
 */
public interface Screen {
    /** Which moment it is for. */
    Moment moment();

    /** What it shows; the same node each time. */
    Node node();

    /** Its big actions, six at most; the first is F1. They may change while it is shown. */
    ObservableList<Action> actions();

    /** Key of the text above it. */
    default String titleKey() {
        return "ui." + moment().key() + ".title";
    }

    /** What is in hand there, beside the title; empty where the screen says so itself. */
    default Optional<ObservableValue<Word>> inHand() {
        return Optional.empty();
    }

    /** Key of the text behind "What does this mean?". */
    default String helpKey() {
        return "ui." + moment().key() + ".help";
    }

    /** It has come to the front. */
    default void shown() {}

    /** Another screen has come to the front. */
    default void hidden() {}

    /** A barcode was scanned while it was in front. */
    default void scanned(String text) {}
}
