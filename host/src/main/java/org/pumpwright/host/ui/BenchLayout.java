package org.pumpwright.host.ui;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.work.Word;

/** Where everything in the window is. Only the border's flash lies over the rest, and it lets every press through. JavaFX thread only. */
final class BenchLayout extends StackPane {
    private final Saying saying;
    private final MomentRail rail;
    private final ActionBar actions = new ActionBar();
    private final Banner banner;
    private final HelpPane help;
    private final PromptPane prompt = new PromptPane();
    private final Label title = new Label();
    private final Label subject = new Label();
    private final StackPane middle = new StackPane();

    BenchLayout(Saying saying, TopBar top, MomentRail rail, StopKnob stop, CueGiver cues) {
        this.saying = saying;
        this.rail = rail;
        banner = new Banner(saying);
        help = new HelpPane(saying);
        getStyleClass().add("bench");
        // The keyboard begins nowhere, so that no space bar sets off what happened to come first.
        setFocusTraversable(true);
        HBox titles = titleRow();
        // Trouble takes the title's place, so that the screen keeps most of its own; F7 explains all the same.
        titles.visibleProperty().bind(banner.visibleProperty().not());
        titles.managedProperty().bind(titles.visibleProperty());
        VBox work = new VBox(titles, banner, middle);
        work.getStyleClass().add("work");
        VBox.setVgrow(middle, Priority.ALWAYS);
        middle.getStyleClass().add("middle");
        middle.setMinSize(0, 0);
        BorderPane screen = new BorderPane(work);
        screen.setRight(help);
        screen.setBottom(bottom(stop));
        BorderPane all = new BorderPane(screen);
        all.setTop(top);
        all.setLeft(left(cues));
        getChildren().addAll(all, cues);
    }

    MomentRail rail() {
        return rail;
    }

    ActionBar actions() {
        return actions;
    }

    Banner banner() {
        return banner;
    }

    HelpPane help() {
        return help;
    }

    PromptPane prompt() {
        return prompt;
    }

    /** Brings a screen to the front. */
    void show(Screen screen) {
        title.textProperty().bind(saying.text(screen.titleKey()));
        subject.textProperty().unbind();
        subject.setText("");
        screen.inHand().ifPresent(word -> subject.textProperty().bind(saying.text(word)));
        help.explain(screen.helpKey());
        middle.getChildren().setAll(screen.node(), prompt);
    }

    private HBox titleRow() {
        title.getStyleClass().add("screen-title");
        subject.setId("title-subject");
        subject.getStyleClass().addAll("title-subject", "data");
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        Button meaning = new Button();
        meaning.setId("meaning");
        meaning.getStyleClass().add("meaning");
        Label key = new Label("F7");
        key.getStyleClass().add("key");
        meaning.setGraphic(key);
        meaning.textProperty().bind(saying.text("ui.help"));
        meaning.setOnAction(pressed -> help.toggle());
        HBox row = new HBox(title, subject, between, meaning);
        row.getStyleClass().add("title-row");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private HBox bottom(StopKnob stop) {
        HBox.setHgrow(actions, Priority.ALWAYS);
        HBox bottom = new HBox(actions, stop);
        bottom.getStyleClass().add("bottom");
        return bottom;
    }

    private VBox left(CueGiver cues) {
        ObservableValue<Word> manner = Bindings.createObjectBinding(
                () -> Word.of(cues.mannerProperty().get().key()), cues.mannerProperty());
        Button quiet = new Button();
        quiet.setId("cues");
        quiet.getStyleClass().addAll("flip", "cues");
        Label caption = new Label();
        caption.getStyleClass().add("flip-caption");
        caption.textProperty().bind(saying.text("ui.cue.title"));
        quiet.setGraphic(caption);
        quiet.textProperty().bind(saying.text(manner));
        quiet.setMaxWidth(Double.MAX_VALUE);
        quiet.setOnAction(
                pressed -> cues.mannerProperty().set(cues.mannerProperty().get().next()));
        VBox left = new VBox(rail, quiet);
        left.getStyleClass().add("left");
        VBox.setVgrow(rail, Priority.ALWAYS);
        return left;
    }
}
