package org.pumpwright.host.ui.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Pick;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.IntakeForm;
import org.pumpwright.host.ui.work.IntakeForm.Entered;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** The intake of a unit, six fields at a time. JavaFX thread only. */
final class IntakePane implements Pane {
    private static final int PAGES = 3;

    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;
    private final Runnable changed;
    private final Runnable done;
    private final VBox node = new VBox();
    private final Label step = new Label();
    private final GridPane grid = new GridPane();
    private int page;

    /**
     * @param changed another page is to be shown with its actions
     * @param done it is over, one way or the other
     */
    IntakePane(Frame frame, ClaimModel model, Runnable changed, Runnable done) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.changed = changed;
        this.done = done;
        node.getStyleClass().add("claim-intake");
        step.getStyleClass().add("headline");
        step.setWrapText(true);
        grid.getStyleClass().add("intake-grid");
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        grid.getColumnConstraints().setAll(half, half);
        node.getChildren().addAll(step, grid);
    }

    void begin() {
        show(0);
    }

    private void show(int which) {
        page = which;
        step.textProperty().bind(saying.text("ui.claim.intake.page" + (page + 1)));
        grid.getChildren().clear();
        int place = 0;
        for (Entered each : Entered.values()) {
            if (each.page() == page) {
                grid.add(each.picked() ? picked(each) : typed(each), place % 2, place / 2);
                place++;
            }
        }
        changed.run();
        node.requestFocus();
    }

    private Node typed(Entered which) {
        Field field = new Field(saying.text(which.key()), "intake-" + which);
        field.text().textProperty().bindBidirectional(model.form().field(which));
        return field;
    }

    private Node picked(Entered which) {
        Label name = new Label();
        name.getStyleClass().add("field-name");
        name.textProperty().bind(saying.text(which.key()));
        Button button = new Button();
        button.setId("intake-" + which);
        button.getStyleClass().add("pick-button");
        button.setMaxWidth(Double.MAX_VALUE);
        StringProperty field = model.form().field(which);
        button.textProperty()
                .bind(saying.text(field.map(value -> value.isEmpty() ? Word.of("ui.claim.pick") : word(which, value))));
        button.setOnAction(press -> ask(which, field));
        VBox box = new VBox(name, button);
        box.getStyleClass().add("field");
        return box;
    }

    private static Word word(Entered which, String value) {
        return switch (which) {
            case KIND -> Word.of("ui.claim.kind." + value);
            case COMPLAINT_CODE -> Word.of("ui.claim.complaint." + value);
            case DECLARED_CLEAN -> Word.of("ui.claim.declared." + value);
            default -> Word.asIs(value);
        };
    }

    private void ask(Entered which, StringProperty field) {
        if (which == Entered.MODEL) {
            model.models(
                    found -> pick(which, found.stream().map(each -> each.id()).toList(), field));
            return;
        }
        pick(which, choices(which), field);
    }

    private static List<String> choices(Entered which) {
        return switch (which) {
            case KIND -> Arrays.stream(UnitKind.values()).map(UnitKind::word).toList();
            case COMPLAINT_CODE ->
                Arrays.stream(Complaint.values()).map(Complaint::word).toList();
            default -> List.of("yes", "no");
        };
    }

    private void pick(Entered which, List<String> values, StringProperty field) {
        List<Row> rows = new ArrayList<>();
        values.forEach(value -> rows.add(new Row(word(which, value), Mark.UNKNOWN, Word.NONE, Word.NONE)));
        IntConsumer taken = place -> field.set(values.get(place));
        Pick.one(frame, which.key() + ".ask", rows, taken);
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public List<Action> actions() {
        IntakeForm form = model.form();
        boolean last = page == PAGES - 1;
        return List.of(
                Action.of(
                                saying.text(last ? "ui.claim.intake.keep" : "ui.claim.intake.next"),
                                last ? () -> model.takeIn(done) : () -> show(page + 1))
                        .when(form.field(Entered.CLAIM)
                                .isNotEmpty()
                                .and(model.busyProperty().not()))
                        .asNext(),
                page > 0 ? Action.of(saying.text("ui.claim.intake.before"), () -> show(page - 1)) : Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.cancel"), done));
    }
}
