package org.pumpwright.host.ui.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.IntakeField;
import org.pumpwright.host.ui.work.IntakeForm;
import org.pumpwright.host.ui.work.Word;

/** The intake of a unit, a page for each part of the talk at the counter; it can be kept after any of them. JavaFX thread only. */
final class IntakePane implements Pane {
    private static final int LAST = IntakeField.PAGES - 1;

    private final Saying saying;
    private final ClaimModel model;
    private final IntakeForm form;
    private final IntakeCells cells;
    private final Runnable changed;
    private final Runnable done;
    private final VBox node = new VBox();
    private final Label step = new Label();
    private final GridPane grid = new GridPane();
    private final List<TextField> typed = new ArrayList<>();
    private int page;

    /**
     * @param changed another page is to be shown with its actions
     * @param done it is over, one way or the other
     */
    IntakePane(Frame frame, ClaimModel model, Runnable changed, Runnable done) {
        this.saying = frame.saying();
        this.model = model;
        this.form = model.form();
        this.cells = new IntakeCells(frame, model);
        this.changed = changed;
        this.done = done;
        node.getStyleClass().add("claim-intake");
        step.getStyleClass().add("headline");
        step.setWrapText(true);
        step.setMinHeight(Label.USE_PREF_SIZE);
        Label needed = new Label();
        needed.getStyleClass().add("intake-hint");
        needed.setWrapText(true);
        needed.textProperty().bind(saying.text("ui.claim.intake.hint"));
        HBox head = new HBox(step, needed);
        head.getStyleClass().add("intake-head");
        HBox.setHgrow(needed, Priority.ALWAYS);
        grid.getStyleClass().add("intake-grid");
        ColumnConstraints half = new ColumnConstraints();
        half.setPercentWidth(50);
        grid.getColumnConstraints().setAll(half, half);
        Label wrong =
                FormColumn.sentence(saying, form.wrongProperty().map(each -> each.orElse(Word.NONE)), "claim-need");
        node.getChildren().addAll(head, grid, wrong);
    }

    void begin() {
        show(0);
    }

    private void show(int which) {
        page = which;
        step.textProperty().bind(saying.text("ui.claim.intake.page" + (page + 1)));
        grid.getChildren().clear();
        typed.clear();
        int place = 0;
        for (IntakeField each : IntakeField.ofPage(page)) {
            if (each != IntakeField.WHY_AGAIN || form.corrects()) {
                Node cell = cells.of(each);
                grid.add(cell, place % 2, place / 2);
                IntakeCells.typedInto(cell).ifPresent(this::chain);
                place++;
            }
        }
        changed.run();
    }

    /** Enter goes on to the next field, as after a scan. */
    private void chain(TextField field) {
        int place = typed.size();
        typed.add(field);
        field.setOnAction(enter -> typed.get((place + 1) % typed.size()).requestFocus());
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void focus() {
        typed.stream().filter(field -> field.getText().isEmpty()).findFirst().ifPresent(TextField::requestFocus);
    }

    @Override
    public void scanned(String text) {
        IntakeField into = page == 0 ? IntakeField.CLAIM : IntakeField.SERIAL;
        if (into.page() == page) {
            form.field(into).set(text);
        }
    }

    @Override
    public List<Action> actions() {
        BooleanBinding good = form.wrongProperty()
                .isEqualTo(Optional.empty())
                .and(model.busyProperty().not());
        Runnable keep = () -> model.deeds().takeIn(form, done);
        String word = form.corrects() ? "ui.claim.intake.correct" : "ui.claim.intake.keep";
        return List.of(
                page == LAST
                        ? Action.of(saying.text(word), keep).when(good).asNext()
                        : Action.of(saying.text("ui.claim.intake.next"), () -> show(page + 1))
                                .asNext(),
                page > 0 ? Action.of(saying.text("ui.claim.intake.before"), () -> show(page - 1)) : Action.nothing(),
                page == LAST
                        ? Action.nothing()
                        : Action.of(saying.text(word), keep).when(good),
                Action.nothing(),
                Action.nothing(),
                Action.of(saying.text("ui.cancel"), done));
    }
}
