package org.pumpwright.host.ui.claim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.ui.Frame;
import org.pumpwright.host.ui.Pick;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.IntakeField;
import org.pumpwright.host.ui.work.IntakeField.Kind;
import org.pumpwright.host.ui.work.IntakeForm;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** What one field of the intake is filled in with: typed, picked from a list, or pressed. JavaFX thread only. */
final class IntakeCells {
    private final Frame frame;
    private final Saying saying;
    private final ClaimModel model;
    private final IntakeForm form;

    IntakeCells(Frame frame, ClaimModel model) {
        this.frame = frame;
        this.saying = frame.saying();
        this.model = model;
        this.form = model.form();
    }

    /** The cell of a field. */
    Node of(IntakeField which) {
        return switch (which.kind()) {
            case PICKED -> picked(which);
            case YES_NO -> pressed(which);
            case SOURCED_DAY, SOURCED_COUNT -> sourced(which);
            case TEXT, DAY, AMOUNT, COUNT -> typed(which);
        };
    }

    private Word name(IntakeField which) {
        Word name = Word.of(which.key());
        return which.needed() ? Word.of("ui.claim.intake.needed", name) : name;
    }

    private Field typed(IntakeField which) {
        Field field = new Field(saying.text(name(which)), "intake-" + which);
        field.text().textProperty().bindBidirectional(form.field(which));
        // A claim keeps its number whatever is corrected.
        field.text().setDisable(which == IntakeField.CLAIM && form.corrects());
        if (which.kind() == Kind.DAY || which.kind() == Kind.SOURCED_DAY) {
            field.text().promptTextProperty().bind(saying.text("ui.claim.intake.like_a_day"));
        }
        return field;
    }

    private Node sourced(IntakeField which) {
        Field field = typed(which);
        field.getStyleClass().add("intake-sourced");
        Segments<Source> says = new Segments<>(
                Arrays.asList(Source.values()),
                source -> saying.text("ui.claim.intake.source." + source.word()),
                "source-" + which);
        says.chosenProperty().set(form.source(which).get());
        says.chosenProperty()
                .addListener((observed, old, now) -> form.source(which).set(now));
        HBox.setHgrow(says, Priority.ALWAYS);
        HBox.setHgrow(field, Priority.SOMETIMES);
        HBox row = new HBox(field, says);
        row.getStyleClass().add("field-row");
        return row;
    }

    private Node pressed(IntakeField which) {
        StringProperty text = form.field(which);
        Segments<String> answers = new Segments<>(
                List.of("yes", "no", ""),
                answer -> saying.text(answer.isEmpty() ? "ui.claim.intake.not_told" : "ui.claim." + answer),
                "intake-" + which);
        answers.chosenProperty().set(Optional.of(text.get()));
        answers.chosenProperty().addListener((observed, old, now) -> text.set(now.orElse("")));
        return named(which, answers);
    }

    private Node picked(IntakeField which) {
        Button button = new Button();
        button.setId("intake-" + which);
        button.getStyleClass().add("pick-button");
        button.setMaxWidth(Double.MAX_VALUE);
        StringProperty field = form.field(which);
        button.textProperty()
                .bind(saying.text(field.map(value -> value.isEmpty() ? Word.of("ui.claim.pick") : word(which, value))));
        button.setOnAction(press -> ask(which, field));
        return named(which, button);
    }

    private Node named(IntakeField which, Node filledIn) {
        Label label = new Label();
        label.getStyleClass().add("field-name");
        label.textProperty().bind(saying.text(name(which)));
        VBox box = new VBox(label, filledIn);
        box.getStyleClass().add("field");
        return box;
    }

    private static Word word(IntakeField which, String value) {
        return switch (which) {
            case KIND -> Word.of("ui.claim.kind." + value);
            case COMPLAINT_CODE -> Word.of("ui.claim.complaint." + value);
            default -> Word.asIs(value);
        };
    }

    private void ask(IntakeField which, StringProperty field) {
        if (which == IntakeField.MODEL) {
            model.deeds()
                    .models(found ->
                            pick(which, found.stream().map(each -> each.id()).toList(), field));
        } else if (which == IntakeField.KIND) {
            pick(which, Arrays.stream(UnitKind.values()).map(UnitKind::word).toList(), field);
        } else {
            pick(which, Arrays.stream(Complaint.values()).map(Complaint::word).toList(), field);
        }
    }

    private void pick(IntakeField which, List<String> values, StringProperty field) {
        List<Row> rows = new ArrayList<>();
        values.forEach(value -> rows.add(new Row(word(which, value), Mark.UNKNOWN, Word.NONE, Word.NONE)));
        Pick.one(frame, which.key() + ".ask", rows, place -> field.set(values.get(place)));
    }

    /** The parts of a cell that are typed into. */
    static Optional<TextField> typedInto(Node cell) {
        return cell.lookup(".text-field") instanceof TextField text ? Optional.of(text) : Optional.empty();
    }
}
