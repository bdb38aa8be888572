package org.pumpwright.host.ui.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.FillBar;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.StandCareModel;
import org.pumpwright.host.ui.work.StandWatchModel;
import org.pumpwright.host.ui.work.Word;

/** The stand: what it reads now above, what was found at it below. JavaFX thread only. */
public final class StandScreen implements Screen {
    private static final int MOST_STANDS = 5;

    private final Frame frame;
    private final Saying saying;
    private final StandWatchModel watch;
    private final StandCareModel care;
    private final VBox node = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Shows the stand that is watched, and cares for it. */
    public StandScreen(Frame frame, StandWatchModel watch, StandCareModel care) {
        this.frame = frame;
        this.saying = frame.saying();
        this.watch = watch;
        this.care = care;
        build();
        addActions();
        care.showCalibrations();
    }

    private void build() {
        node.getStyleClass().add("stand-screen");
        Sign sign = new Sign(care.markProperty().get());
        sign.markProperty().bind(care.markProperty());
        Label headline = new Label();
        headline.setId("stand-headline");
        headline.getStyleClass().add("headline");
        Label advice = new Label();
        advice.getStyleClass().add("stand-advice");
        say(headline, care.headlineProperty());
        say(advice, care.adviceProperty());
        ObservableValue<Boolean> advised = care.adviceProperty().map(word -> !word.equals(Word.NONE));
        advice.visibleProperty().bind(advised);
        advice.managedProperty().bind(advised);
        VBox words = new VBox(headline, advice);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox head = new HBox(sign, words);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("head");
        RowList list = new RowList(saying, care.rows());
        VBox.setVgrow(list, Priority.ALWAYS);
        node.getChildren().addAll(new StandPanel(saying, watch), head, progress(), list);
    }

    private void say(Label label, ObservableValue<Word> word) {
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.textProperty().bind(saying.text(word));
    }

    private FillBar progress() {
        FillBar bar = new FillBar();
        bar.setId("stand-progress");
        bar.shareProperty().bind(care.shareProperty());
        bar.visibleProperty().bind(care.busyProperty());
        bar.managedProperty().bind(care.busyProperty());
        return bar;
    }

    private void addActions() {
        BooleanBinding free = care.busyProperty().not();
        ObservableValue<Word> reading = Bindings.createObjectBinding(
                () -> Word.of(watch.watchingProperty().get() ? "ui.stand.leave" : "ui.stand.read"),
                watch.watchingProperty());
        actions.setAll(
                Action.of(saying.text(reading), this::toggleWatch).when(free),
                Action.of(saying.text("ui.stand.check"), care::check).when(free).asNext(),
                Action.of(saying.text("ui.stand.calibrations"), care::showCalibrations)
                        .when(free),
                Action.of(saying.text("ui.stand.try"), this::askToTry).when(free),
                Action.nothing(),
                Action.of(saying.text("ui.stand.other"), this::askWhichStand).when(free));
    }

    private void toggleWatch() {
        if (watch.watchingProperty().get()) {
            watch.stop();
        } else {
            watch.start();
        }
    }

    private void askToTry() {
        if (watch.standProperty().get().connection() instanceof Connection.Simulated) {
            care.tryBoard();
            return;
        }
        frame.ask(new Prompt(
                saying.text("ui.stand.try.ask"),
                saying.text("ui.stand.try.caution"),
                Optional.empty(),
                Action.atTheEnds(
                        Action.of(saying.text("ui.stand.try.begin"), care::tryBoard),
                        Action.of(saying.text("ui.cancel"), () -> {}))));
    }

    private void askWhichStand() {
        care.stands(found -> {
            List<Action> answers = new ArrayList<>();
            VBox names = new VBox();
            found.stream().limit(MOST_STANDS).forEach(each -> {
                answers.add(stand(each));
                names.getChildren().add(line(each, answers.size()));
            });
            while (answers.size() < MOST_STANDS) {
                answers.add(Action.nothing());
            }
            answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
            frame.ask(new Prompt(
                    saying.text("ui.stand.other.ask"),
                    saying.text("ui.stand.other.text"),
                    Optional.of(names),
                    answers));
        });
    }

    private static Label line(StandDescription description, int place) {
        Label line = new Label("F%d  %s".formatted(place, description.title()));
        line.getStyleClass().addAll("stand-line", "data");
        line.setWrapText(true);
        return line;
    }

    private Action stand(StandDescription description) {
        return Action.of(new SimpleObjectProperty<>(description.id()), () -> {
            watch.choose(description, Optional.empty());
            care.showCalibrations();
            watch.start();
        });
    }

    @Override
    public Moment moment() {
        return Moment.STAND;
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public ObservableList<Action> actions() {
        return actions;
    }
}
