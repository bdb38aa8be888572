package org.pumpwright.host.ui.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pumpwright.host.app.claim.DecisionDesk.Declined;
import org.pumpwright.host.app.claim.DecisionDesk.FindingAsked;
import org.pumpwright.host.app.claim.FindingFit;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimRows;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/**
 * A technician signs what was found: a neutral category that agrees with the runs, whether the complaint showed, and what that rests on.
 * JavaFX thread only.
 */
final class FindingPane implements Pane {
    private static final List<Category> CATEGORIES = List.of(Category.values());

    private final Saying saying;
    private final ClaimModel model;
    private final Runnable done;
    private final HBox node = new HBox();
    private final ObservableList<Row> rows = FXCollections.observableArrayList();
    private final RowList categories;
    private final Segments<Reproduced> reproduced;
    private final Field basis;
    private final Field parts;
    private final Field signer;
    private final Field declinedBy;
    private final Field declinedWhy;
    private final Field corrects;
    private final BooleanProperty declines = new SimpleBooleanProperty();
    private final BooleanProperty again = new SimpleBooleanProperty();
    private final ObjectBinding<Word> need;

    FindingPane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.done = done;
        categories = new RowList(saying, rows);
        categories.setId("finding-categories");
        HBox.setHgrow(categories, Priority.ALWAYS);
        reproduced = new Segments<>(Arrays.asList(Reproduced.values()), each -> saying.text(each.key()), "reproduced");
        basis = new Field(saying.text("ui.claim.basis"), "finding-basis");
        parts = new Field(saying.text("ui.claim.parts"), "finding-parts");
        signer = new Field(saying.text("ui.claim.signer"), "finding-signer");
        declinedBy = new Field(saying.text("ui.claim.declined_by"), "finding-declined-by");
        declinedWhy = new Field(saying.text("ui.claim.reason"), "finding-declined-why");
        corrects = FormColumn.onlyWhile(new Field(saying.text("ui.claim.why_again"), "finding-corrects"), again);
        need = need();
        FormColumn form = new FormColumn(saying)
                .titled("ui.claim.reproduced")
                .with(reproduced)
                .with(basis, corrects)
                .with(parts, signer)
                .with(declinedBy, declinedWhy)
                .saying(need, "claim-need");
        FormColumn.onlyWhile(declinedBy.getParent(), declines);
        categories
                .getSelectionModel()
                .selectedIndexProperty()
                .addListener((observed, old, now) -> chosen().ifPresent(this::chose));
        node.getStyleClass().add("claim-finding");
        node.setMinHeight(0);
        node.getChildren().addAll(categories, form);
    }

    private Optional<Category> chosen() {
        int place = categories.getSelectionModel().getSelectedIndex();
        return place < 0 || place >= CATEGORIES.size() ? Optional.empty() : Optional.of(CATEGORIES.get(place));
    }

    private Optional<FindingFit> fit() {
        return model.shownProperty().get().map(view -> view.fit());
    }

    private void chose(Category category) {
        FindingFit.only(category)
                .ifPresent(answer -> reproduced.chosenProperty().set(Optional.of(answer)));
        declines.set(
                category == Category.C4 && fit().filter(FindingFit::provoked).isEmpty());
    }

    private ObjectBinding<Word> need() {
        return Bindings.createObjectBinding(
                this::lacking,
                categories.getSelectionModel().selectedIndexProperty(),
                reproduced.chosenProperty(),
                basis.text().textProperty(),
                signer.text().textProperty(),
                declinedBy.text().textProperty(),
                declinedWhy.text().textProperty(),
                corrects.text().textProperty(),
                declines,
                again);
    }

    private Word lacking() {
        Optional<Category> category = chosen();
        if (category.isEmpty()) {
            return Word.of("ui.claim.finding.need.category");
        }
        if (fit().filter(each -> each.agreeing().contains(category.get())).isEmpty()) {
            return Word.of("ui.claim.finding.need.other", category.get().name());
        }
        Optional<Reproduced> answer = reproduced.chosenProperty().get();
        if (answer.isEmpty()) {
            return Word.of("ui.claim.finding.need.reproduced");
        }
        Optional<Reproduced> only = FindingFit.only(category.get());
        if (only.isPresent() && !only.equals(answer)) {
            return Word.of(
                    "ui.claim.finding.need.answer",
                    category.get().name(),
                    Word.of(only.get().key()));
        }
        return lackingWords();
    }

    private Word lackingWords() {
        if (empty(basis)) {
            return Word.of("ui.claim.finding.need.basis");
        }
        if (again.get() && empty(corrects)) {
            return Word.of("ui.claim.need.why_again");
        }
        if (empty(signer)) {
            return Word.of("ui.claim.need.signer");
        }
        return declines.get() && (empty(declinedBy) || empty(declinedWhy))
                ? Word.of("ui.claim.finding.need.declined")
                : Word.NONE;
    }

    private static boolean empty(Field field) {
        return field.text().getText().isBlank();
    }

    void begin() {
        model.shownProperty().get().ifPresent(view -> {
            rows.setAll(ClaimRows.categories(view));
            again.set(view.file().finding().isPresent());
        });
        categories.getSelectionModel().clearSelection();
        declines.set(false);
        reproduced.chosenProperty().set(Optional.empty());
        for (Field each : List.of(basis, parts, declinedBy, declinedWhy, corrects)) {
            each.text().clear();
        }
        signer.text().setText(model.personProperty().get());
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void focus() {
        categories.requestFocus();
    }

    @Override
    public List<Action> actions() {
        return Pane.ofForm(saying, model, need, "ui.claim.sign", this::sign, done);
    }

    private void sign() {
        Optional<Declined> declined = declines.get()
                ? Optional.of(new Declined(
                        declinedBy.text().getText(), declinedWhy.text().getText()))
                : Optional.empty();
        List<String> concerned = Arrays.stream(parts.text().getText().split(",", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
        FindingAsked asked = new FindingAsked(
                chosen().orElseThrow(),
                reproduced.chosenProperty().get().orElseThrow(),
                basis.text().getText(),
                concerned,
                signer.text().getText(),
                declined);
        model.deeds().find(asked, again.get() ? Optional.of(corrects.text().getText()) : Optional.empty(), done);
    }
}
