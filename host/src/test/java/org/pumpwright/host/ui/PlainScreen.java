package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A screen for tests of the frame: a field to type into, and actions that are written down. JavaFX thread only. */
final class PlainScreen implements Screen {
    final List<String> done = new ArrayList<>();
    final SimpleBooleanProperty firstPossible = new SimpleBooleanProperty(true);
    final TextField field = new TextField();
    private final Moment moment;
    private final VBox node = new VBox(field);
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    PlainScreen(Moment moment, Saying saying) {
        this.moment = moment;
        field.setId("field");
        actions.setAll(
                Action.of(saying.text("ui.stand.read"), () -> done.add("first")).when(firstPossible),
                Action.nothing(),
                Action.of(saying.text("ui.stand.check"), () -> done.add("third")));
    }

    @Override
    public Moment moment() {
        return moment;
    }

    @Override
    public String titleKey() {
        return "ui.stand.title";
    }

    @Override
    public String helpKey() {
        return "ui.stand.help";
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableList<Action> actions() {
        return actions;
    }

    @Override
    public void shown() {
        done.add("shown");
    }

    @Override
    public void hidden() {
        done.add("hidden");
    }

    @Override
    public void scanned(String text) {
        done.add("scanned " + text);
    }
}
