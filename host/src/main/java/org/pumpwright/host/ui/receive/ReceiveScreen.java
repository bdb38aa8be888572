package org.pumpwright.host.ui.receive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Prompt;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.control.ChoiceButton;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.ComplaintChoice;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Product;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Word;

/** A unit comes in: what it is, whose, why, what it has pumped, and the plan that follows from it. JavaFX thread only. */
public final class ReceiveScreen implements Screen {
    private static final int MOST_ANSWERS = 5;

    private final Frame frame;
    private final Saying saying;
    private final ReceiveModel model;
    private final VBox models = new VBox();
    private final VBox node = new VBox();
    private final ObservableList<Action> actions = FXCollections.observableArrayList();

    /** Takes units in. */
    public ReceiveScreen(Frame frame, ReceiveModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        node.getStyleClass().add("receive-screen");
        HBox columns = new HBox(unitColumn(), paperColumn(), complaintColumn());
        columns.getStyleClass().add("columns");
        VBox.setVgrow(columns, Priority.ALWAYS);
        columns.setMinHeight(0);
        node.getChildren().addAll(columns, outcome());
        addActions();
        model.shown().addListener((ListChangeListener<UnitModel>) change -> showModels());
        showModels();
    }

    private Node unitColumn() {
        models.getStyleClass().add("choices");
        ScrollPane scroll = new ScrollPane(models);
        scroll.setFitToWidth(true);
        scroll.setMinHeight(0);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        TextField filter = field("filter", model.filterProperty());
        filter.promptTextProperty().bind(saying.text("ui.receive.filter"));
        List<Node> products = new ArrayList<>();
        for (Product product : Product.values()) {
            ChoiceButton button = new ChoiceButton(
                    saying.text(product.word()), () -> model.productProperty().set(Optional.of(product)));
            button.setId("product-" + products.size());
            button.chosenProperty().bind(model.productProperty().map(now -> now.equals(Optional.of(product))));
            products.add(button);
        }
        VBox column =
                new VBox(heading("ui.receive.model"), filter, scroll, heading("ui.receive.product"), grid(products));
        column.getStyleClass().addAll("column", "column-unit");
        return column;
    }

    private Node paperColumn() {
        TextField serial = field("serial", model.serialProperty());
        serial.disableProperty().bind(model.noPlateProperty());
        HBox.setHgrow(serial, Priority.ALWAYS);
        ChoiceButton noPlate = new ChoiceButton(saying.text("ui.receive.no_plate"), this::flipNoPlate);
        noPlate.setId("no-plate");
        noPlate.chosenProperty().bind(model.noPlateProperty());
        HBox plate = new HBox(serial, noPlate);
        plate.getStyleClass().add("pair");
        TextField technician = field("technician", model.technicianProperty());
        TextField claim = field("claim", model.claimProperty());
        claim.setOnAction(entered -> model.lookUpClaim());
        claim.focusedProperty().addListener((observed, old, now) -> {
            if (!now) {
                model.lookUpClaim();
            }
        });
        VBox who = new VBox(heading("ui.receive.technician"), technician);
        VBox which = new VBox(heading("ui.receive.claim"), claim);
        HBox names = new HBox(who, which);
        names.getStyleClass().add("pair");
        ChoiceButton clean = new ChoiceButton(saying.text("ui.receive.clean"), this::flipClean);
        clean.setId("clean");
        clean.chosenProperty().bind(model.decontaminatedProperty());
        VBox column = new VBox(heading("ui.receive.serial"), plate, names, clean, caution());
        column.getStyleClass().addAll("column", "column-paper");
        return column;
    }

    private Node caution() {
        Label caution = new Label();
        caution.setWrapText(true);
        caution.setMinHeight(Region.USE_PREF_SIZE);
        ObservableValue<Word> word = model.productProperty()
                .map(product -> product.map(Product::caution).orElse(Word.of("ui.receive.caution")));
        caution.textProperty().bind(saying.text(word));
        HBox.setHgrow(caution, Priority.ALWAYS);
        HBox box = new HBox(new Sign(Mark.WATCH), caution);
        box.getStyleClass().add("caution");
        return box;
    }

    private Node complaintColumn() {
        List<Node> all = new ArrayList<>();
        for (ComplaintChoice choice : ComplaintChoice.all()) {
            ChoiceButton button = new ChoiceButton(
                    saying.text(choice.word()), () -> model.complaintProperty().set(Optional.of(choice)));
            button.setId("complaint-" + all.size());
            button.chosenProperty().bind(model.complaintProperty().map(now -> now.equals(Optional.of(choice))));
            all.add(button);
        }
        VBox column = new VBox(heading("ui.receive.complaint"), grid(all));
        column.getStyleClass().addAll("column", "column-complaint");
        return column;
    }

    private Node outcome() {
        Label plan = new Label();
        plan.getStyleClass().addAll("plan-name");
        plan.setWrapText(true);
        ObservableValue<Word> planWord = model.planProperty()
                .map(found -> found.map(each -> Word.of("ui.receive.plan", each.title()))
                        .orElse(Word.of("ui.receive.plan.none")));
        plan.textProperty().bind(saying.text(planWord));
        Label reason = new Label();
        reason.getStyleClass().add("data");
        reason.setWrapText(true);
        reason.textProperty().bind(saying.text(model.reasonProperty()));
        VBox proposed = new VBox(plan, reason);
        proposed.getStyleClass().add("proposed");
        HBox.setHgrow(proposed, Priority.ALWAYS);
        Sign sign = new Sign(Mark.WATCH);
        sign.markProperty().bind(model.completeProperty().map(complete -> complete ? Mark.GOOD : Mark.WATCH));
        Label missing = new Label();
        missing.getStyleClass().add("missing");
        missing.setWrapText(true);
        missing.textProperty().bind(missingText());
        HBox lack = new HBox(sign, missing);
        lack.getStyleClass().add("lack");
        HBox band = new HBox(proposed, lack);
        band.getStyleClass().add("outcome");
        band.setMinHeight(Region.USE_PREF_SIZE);
        return band;
    }

    private StringBinding missingText() {
        return Bindings.createStringBinding(
                () -> {
                    if (model.missing().isEmpty()) {
                        return saying.now(Word.of("ui.receive.complete"));
                    }
                    String all = model.missing().stream().map(saying::now).collect(Collectors.joining(", "));
                    return saying.now(Word.of("ui.receive.missing", all));
                },
                model.missing(),
                saying.languageProperty());
    }

    private TextField field(String id, StringProperty value) {
        TextField field = new TextField();
        field.setId(id);
        field.setMinWidth(0);
        field.setPrefColumnCount(6);
        field.textProperty().bindBidirectional(value);
        return field;
    }

    private Label heading(String key) {
        Label label = new Label();
        label.getStyleClass().add("heading");
        label.textProperty().bind(saying.text(key));
        return label;
    }

    private static GridPane grid(List<Node> nodes) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("choice-grid");
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        grid.getColumnConstraints().addAll(half, half);
        for (int i = 0; i < nodes.size(); i++) {
            grid.add(nodes.get(i), i % 2, i / 2);
        }
        return grid;
    }

    private void showModels() {
        models.getChildren().clear();
        for (UnitModel each : model.shown()) {
            ChoiceButton button = new ChoiceButton(
                    new SimpleObjectProperty<>(each.title()),
                    () -> model.modelProperty().set(Optional.of(each)));
            button.setId("model-" + each.id());
            button.getStyleClass().add("data");
            button.chosenProperty().bind(model.modelProperty().map(now -> now.equals(Optional.of(each))));
            models.getChildren().add(button);
        }
    }

    private void addActions() {
        BooleanBinding known =
                Bindings.createBooleanBinding(() -> model.modelProperty().get().isPresent(), model.modelProperty());
        BooleanBinding several = Bindings.size(model.technicians()).greaterThan(1);
        actions.setAll(
                Action.of(saying.text("ui.receive.accept"), this::accept)
                        .when(model.completeProperty())
                        .asNext(),
                Action.of(saying.text("ui.receive.other_plan"), this::askWhichPlan)
                        .when(known),
                Action.of(saying.text("ui.receive.no_plate"), this::flipNoPlate),
                Action.of(saying.text("ui.receive.clean.short"), this::flipClean),
                Action.of(saying.text("ui.receive.technician"), this::askWho).when(several),
                Action.of(saying.text("ui.receive.clear"), model::clear));
    }

    private void accept() {
        model.accept();
        frame.goTo(Moment.READY);
    }

    private void flipNoPlate() {
        model.noPlateProperty().set(!model.noPlateProperty().get());
    }

    private void flipClean() {
        model.decontaminatedProperty().set(!model.decontaminatedProperty().get());
    }

    private void askWhichPlan() {
        List<Plan> plans = model.plansOfTheKind();
        askFrom(
                "ui.receive.other_plan",
                plans.stream().map(Plan::title).toList(),
                place -> model.choose(plans.get(place)),
                0);
    }

    private void askWho() {
        List<String> names = model.technicians();
        askFrom(
                "ui.receive.technician",
                names,
                place -> model.technicianProperty().set(names.get(place)),
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

    @Override
    public void scanned(String text) {
        model.scanned(text);
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
