package org.pumpwright.host.ui.ready;

import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.PretenceSign;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.control.TitledRows;
import org.pumpwright.host.ui.work.ReadyModel;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.Word;
import org.pumpwright.host.ui.work.WorkInHand;
import org.pumpwright.host.ui.work.WorkOrder;

/** A unit is put on the stand: what to mind and to connect at the left, the stand's checks at the right. JavaFX thread only. */
public final class ReadyScreen implements Screen {
    private final Frame frame;
    private final Saying saying;
    private final ReadyModel model;
    private final RunModel run;
    private final WorkInHand work;
    private final VBox node = new VBox();
    private final BooleanBinding unit;
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Makes ready what is in hand, and begins its run. */
    public ReadyScreen(Frame frame, ReadyModel model, RunModel run, WorkInHand work) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.run = run;
        this.work = work;
        unit = Bindings.createBooleanBinding(() -> work.orderProperty().get().isPresent(), work.orderProperty());
        node.getStyleClass().add("ready-screen");
        HBox lists = new HBox(
                new TitledRows(saying, "ui.ready.connect", model.connect(), "connect"),
                new TitledRows(saying, "ui.ready.checks", model.checks(), "checks"));
        lists.getStyleClass().add("columns");
        lists.setMinHeight(0);
        VBox.setVgrow(lists, Priority.ALWAYS);
        node.getChildren().addAll(subject(), head(), lists);
        work.fitProperty().addListener((observed, old, now) -> addActions());
        addActions();
    }

    private Node subject() {
        Label subject = new Label();
        subject.getStyleClass().addAll("subject", "data");
        subject.setWrapText(true);
        ObservableValue<Word> word = work.orderProperty()
                .map(order -> order.map(ReadyScreen::subject).orElse(Word.NONE));
        subject.textProperty().bind(saying.text(word));
        return subject;
    }

    private static Word subject(WorkOrder order) {
        String model = order.model().title();
        String plan = order.plan().title();
        return order.serial().equals(WorkOrder.NO_PLATE)
                ? Word.of("ui.ready.subject.no_plate", model, plan)
                : Word.of("ui.ready.subject", model, order.serial(), plan);
    }

    private Node head() {
        Sign sign = new Sign(model.markProperty().get());
        sign.markProperty().bind(model.markProperty());
        Label headline = new Label();
        headline.getStyleClass().add("ready-headline");
        headline.setWrapText(true);
        headline.setMinHeight(Region.USE_PREF_SIZE);
        headline.textProperty().bind(saying.text(model.headlineProperty()));
        Label remedy = new Label();
        remedy.getStyleClass().add("ready-remedy");
        remedy.setWrapText(true);
        remedy.setMinHeight(Region.USE_PREF_SIZE);
        remedy.textProperty().bind(saying.text(model.remedyProperty()));
        remedy.visibleProperty().bind(model.remedyProperty().map(word -> !word.equals(Word.NONE)));
        remedy.managedProperty().bind(remedy.visibleProperty());
        VBox words = new VBox(headline, remedy);
        words.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox head = new HBox(sign, words, new PretenceSign(saying, run.pretenceProperty()));
        head.getStyleClass().add("ready-head");
        return head;
    }

    private void addActions() {
        BooleanBinding free =
                model.busyProperty().not().and(run.runningProperty().not()).and(unit);
        Action check = Action.of(saying.text("ui.ready.check"), model::check).when(free);
        Action start = Action.of(saying.text("ui.ready.start"), this::start).when(free.and(work.fitProperty()));
        boolean fit = work.fitProperty().get();
        actions.setAll(
                fit ? start.asNext() : start,
                fit ? check : check.asNext(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.ready.stand"), () -> frame.goTo(Moment.STAND)),
                Action.of(saying.text("ui.ready.back"), () -> frame.goTo(Moment.RECEIVE)));
    }

    private void start() {
        frame.goTo(Moment.RUN);
        run.begin(saying.unitsProperty().get());
    }

    @Override
    public Moment moment() {
        return Moment.READY;
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
