package org.pumpwright.host.ui.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** A person notes what was seen on a unit, that it was rinsed, or answers for a test without that. JavaFX thread only. */
final class NotePane implements Pane {
    private static final String USUAL_RINSES = "2";
    private static final int MOST_RINSES = 50;

    private final Saying saying;
    private final ClaimModel model;
    private final Runnable done;
    private final HBox node = new HBox();
    private final List<Kind> kinds = kinds();
    private final RowList list;
    private final ObservableValue<Optional<Kind>> kind;
    private final Field words;
    private final Field person;
    private final Field rinses;
    private final Field corrects;
    private final ObjectBinding<Word> need;

    /** What can be noted: one of the usual things, a rinse, or that a step was gone past. */
    private record Kind(String key, Optional<Seen> seen, boolean rinse) {
        boolean waiver() {
            return seen.isEmpty() && !rinse;
        }
    }

    private static List<Kind> kinds() {
        List<Kind> kinds = new ArrayList<>();
        kinds.add(new Kind(Seen.NOTE.key(), Optional.of(Seen.NOTE), false));
        kinds.add(new Kind("ui.claim.note.rinsed", Optional.empty(), true));
        for (Seen seen : Seen.values()) {
            if (seen != Seen.NOTE) {
                kinds.add(new Kind(seen.key(), Optional.of(seen), false));
            }
        }
        kinds.add(new Kind(Waiver.Step.DECONTAMINATION.key(), Optional.empty(), false));
        return List.copyOf(kinds);
    }

    NotePane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.done = done;
        list = new RowList(
                saying,
                FXCollections.observableArrayList(
                        kinds.stream().map(NotePane::row).toList()));
        list.setId("note-kinds");
        HBox.setHgrow(list, Priority.ALWAYS);
        kind = list.getSelectionModel()
                .selectedIndexProperty()
                .map(place -> place.intValue() < 0 ? Optional.<Kind>empty() : Optional.of(kinds.get(place.intValue())));
        words = new Field(
                saying.text(kind.map(now ->
                        Word.of(now.filter(Kind::waiver).isPresent() ? "ui.claim.reason" : "ui.claim.note.words"))),
                "note-words");
        person = new Field(saying.text("ui.claim.person"), "note-person");
        person.text().textProperty().bindBidirectional(model.personProperty());
        rinses = new Field(saying.text("ui.claim.note.rinses"), "note-rinses");
        corrects = new Field(saying.text("ui.claim.note.corrects"), "note-corrects");
        need = Bindings.createObjectBinding(
                this::need,
                list.getSelectionModel().selectedIndexProperty(),
                words.text().textProperty(),
                rinses.text().textProperty(),
                model.personProperty());
        FormColumn.onlyWhile(words, is(now -> !now.rinse()));
        FormColumn.onlyWhile(rinses, is(Kind::rinse));
        FormColumn.onlyWhile(corrects, is(now -> now.seen().isPresent() && hasNotes()));
        FormColumn form = new FormColumn(saying)
                .with(words)
                .with(rinses)
                .with(person)
                .with(corrects)
                .saying(need, "claim-need");
        node.getStyleClass().add("claim-note");
        node.setMinHeight(0);
        node.getChildren().addAll(list, form);
    }

    private static Row row(Kind kind) {
        return new Row(
                Word.of(kind.key()),
                kind.waiver() ? Mark.WATCH : Mark.UNKNOWN,
                kind.seen()
                        .map(seen -> Word.of("ui.claim.note.hint." + seen.word()))
                        .orElse(Word.of(kind.rinse() ? "ui.claim.note.clean" : "ui.claim.note.waived")),
                Word.NONE);
    }

    private BooleanBinding is(Predicate<Kind> which) {
        return Bindings.createBooleanBinding(
                () -> kind.getValue().filter(which).isPresent(),
                list.getSelectionModel().selectedIndexProperty(),
                model.shownProperty());
    }

    private boolean hasNotes() {
        return model.shownProperty()
                .get()
                .filter(view -> !view.file().observations().isEmpty())
                .isPresent();
    }

    private Word need() {
        Optional<Kind> now = kind.getValue();
        if (now.isEmpty()) {
            return Word.of("ui.claim.note.need.kind");
        }
        Kind what = now.get();
        boolean empty = words.text().getText().isBlank();
        if (what.waiver() && empty) {
            return Word.of("ui.claim.note.need.reason");
        }
        if (what.seen().filter(Seen.NOTE::equals).isPresent() && empty) {
            return Word.of("ui.claim.note.need.words");
        }
        if (what.rinse() && !isCount(rinses.text().getText())) {
            return Word.of("ui.claim.note.need.rinses", MOST_RINSES);
        }
        return model.personProperty().get().isBlank() ? Word.of("ui.claim.need.person") : Word.NONE;
    }

    private static boolean isCount(String typed) {
        return typed.strip().matches("[1-9]\\d?") && Integer.parseInt(typed.strip()) <= MOST_RINSES;
    }

    /** @param rinsed whether a rinse is what is to be noted first */
    void begin(boolean rinsed) {
        words.text().clear();
        corrects.text().clear();
        rinses.text().setText(USUAL_RINSES);
        list.getSelectionModel().clearAndSelect(rinsed ? 1 : 0);
        list.scrollTo(0);
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void focus() {
        boolean rinse = kind.getValue().filter(Kind::rinse).isPresent();
        (rinse ? person : words).text().requestFocus();
    }

    @Override
    public List<Action> actions() {
        return Pane.ofForm(saying, model, need, "ui.claim.note.keep", this::keep, done);
    }

    private void keep() {
        Kind what = kind.getValue().orElseThrow();
        String said = words.text().getText();
        if (what.rinse()) {
            model.deeds().rinsed(Integer.parseInt(rinses.text().getText().strip()), done);
        } else if (what.seen().isPresent()) {
            String why = corrects.text().getText().strip();
            boolean again = hasNotes() && !why.isEmpty();
            model.deeds().note(what.seen().get(), said, again ? Optional.of(why) : Optional.empty(), done);
        } else {
            model.deeds().waive(said, done);
        }
    }
}
