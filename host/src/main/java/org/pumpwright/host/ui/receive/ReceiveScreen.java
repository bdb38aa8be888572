package org.pumpwright.host.ui.receive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Rinsing;
import org.pumpwright.host.ui.work.Word;

/** A unit comes in: a page of what must be said, a page of its claim and who tests, and the plan that follows. JavaFX thread only. */
public final class ReceiveScreen implements Screen {
    private static final int MOST_ANSWERS = 5;

    private final Frame frame;
    private final Saying saying;
    private final ReceiveModel model;
    private final RinsePrompt rinse;
    private final UnitPage unitPage;
    private final ClaimPage claimPage;
    private final BooleanProperty atClaim = new SimpleBooleanProperty();
    private final VBox node = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Takes units in. */
    public ReceiveScreen(Frame frame, ReceiveModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        rinse = new RinsePrompt(frame, model);
        unitPage = new UnitPage(saying, model, rinse);
        claimPage = new ClaimPage(frame, model);
        node.getStyleClass().add("receive-screen");
        for (Region page : List.of(unitPage, claimPage)) {
            VBox.setVgrow(page, Priority.ALWAYS);
        }
        OutcomeBand outcome = new OutcomeBand(saying, model);
        node.getChildren().addAll(unitPage, outcome);
        atClaim.addListener((observed, old, now) -> node.getChildren().setAll(now ? claimPage : unitPage, outcome));
        addActions();
    }

    private void addActions() {
        BooleanBinding known = Bindings.createBooleanBinding(
                () -> model.unit().modelProperty().get().isPresent(),
                model.unit().modelProperty());
        BooleanBinding somebody = Bindings.isNotEmpty(model.technicians().recent());
        ObservableValue<String> otherPage =
                saying.text(atClaim.map(there -> Word.of(there ? "ui.receive.to_unit" : "ui.receive.to_claim")));
        actions.setAll(
                Action.of(saying.text("ui.receive.accept"), this::accept)
                        .when(Bindings.or(model.completeProperty(), model.onlyRinsingProperty()))
                        .asNext(),
                Action.of(saying.text("ui.receive.other_plan"), this::askWhichPlan)
                        .when(known),
                Action.of(otherPage, () -> atClaim.set(!atClaim.get())),
                Action.of(saying.text("ui.receive.clean.short"), rinse::flipClean),
                Action.of(saying.text("ui.receive.technician"), this::askWho).when(somebody),
                Action.of(saying.text("ui.receive.clear"), this::clear));
    }

    private void accept() {
        if (model.rinsing().stateProperty().get() == Rinsing.State.NOT_SAID) {
            rinse.ask(this::accept);
            return;
        }
        model.accept(() -> {
            atClaim.set(false);
            frame.goTo(Moment.READY);
        });
    }

    private void clear() {
        model.clear();
        atClaim.set(false);
    }

    private void askWhichPlan() {
        List<Plan> plans = model.unit().plansOfTheKind();
        askFrom(
                "ui.receive.other_plan",
                plans.stream().map(Plan::title).toList(),
                place -> model.unit().choose(plans.get(place)),
                0);
    }

    private void askWho() {
        List<String> names = List.copyOf(model.technicians().recent());
        askFrom(
                "ui.receive.technician",
                names,
                place -> model.technicians().nameProperty().set(names.get(place)),
                0);
    }

    /** Takes what was chosen, by its place. */
    private interface Taker {
        void take(int place);
    }

    /** Asks from so many at a time as there are keys; the last key but one turns the leaf when there are more. */
    private void askFrom(String key, List<String> titles, Taker taker, int from) {
        int room = titles.size() <= MOST_ANSWERS ? MOST_ANSWERS : MOST_ANSWERS - 1;
        int to = Math.min(titles.size(), from + room);
        VBox lines = new VBox();
        List<Action> answers = new ArrayList<>();
        IntStream.range(from, to).forEach(place -> {
            Label line = new Label("F%d  %s".formatted(answers.size() + 1, titles.get(place)));
            line.getStyleClass().addAll("stand-line", "data");
            line.setWrapText(true);
            lines.getChildren().add(line);
            answers.add(Action.of(new SimpleObjectProperty<>(Integer.toString(place + 1)), () -> taker.take(place)));
        });
        while (answers.size() < room) {
            answers.add(Action.nothing());
        }
        if (room < MOST_ANSWERS) {
            int next = to < titles.size() ? to : 0;
            answers.add(Action.of(saying.text("ui.receive.more"), () -> askFrom(key, titles, taker, next)));
        }
        answers.add(Action.of(saying.text("ui.cancel"), () -> {}));
        frame.ask(new Prompt(saying.text(key), saying.text("ui.receive.which"), Optional.of(lines), answers));
    }

    @Override
    public void shown() {
        model.load();
    }

    /** The plate, unless the cursor or the page says that it is the number of a claim. */
    @Override
    public void scanned(String text) {
        if (atClaim.get() || unitPage.isAtClaim()) {
            model.scannedClaim(text);
        } else {
            model.scannedPlate(text);
        }
    }

    @Override
    public Moment moment() {
        return Moment.RECEIVE;
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
