package org.pumpwright.host.ui.claim;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.app.claim.DecisionDesk.DecisionAsked;
import org.pumpwright.host.app.claim.DecisionNeeds;
import org.pumpwright.host.app.claim.DecisionNeeds.Need;
import org.pumpwright.host.app.claim.DecisionNeeds.Written;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Field;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Segments;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;
import org.pumpwright.host.ui.work.Word;

/** The desk decides and signs, never by the hand that measured; what the rules say stands beside it and decides nothing. JavaFX thread only. */
final class DecisionPane implements Pane {
    private final Saying saying;
    private final ClaimModel model;
    private final Runnable done;
    private final HBox node = new HBox();
    private final Segments<Outcome> outcome;
    private final Field reason;
    private final Field signer;
    private final Field second;
    private final Field amount;
    private final Field corrects;
    private final BooleanProperty again = new SimpleBooleanProperty();
    private final ObjectBinding<Word> need;

    DecisionPane(Saying saying, ClaimModel model, Runnable done) {
        this.saying = saying;
        this.model = model;
        this.done = done;
        outcome = new Segments<>(Arrays.asList(Outcome.values()), each -> saying.text(each.key()), "outcome");
        reason = new Field(saying.text("ui.claim.reason"), "decision-reason");
        signer = new Field(saying.text("ui.claim.signer"), "decision-signer");
        second = new Field(saying.text("ui.claim.second"), "decision-second");
        amount = new Field(saying.text("ui.claim.amount"), "decision-amount");
        corrects = FormColumn.onlyWhile(new Field(saying.text("ui.claim.why_again"), "decision-corrects"), again);
        Observable[] written = {
            outcome.chosenProperty(),
            reason.text().textProperty(),
            signer.text().textProperty(),
            second.text().textProperty(),
            amount.text().textProperty(),
            corrects.text().textProperty(),
            model.shownProperty()
        };
        need = Bindings.createObjectBinding(this::lacking, written);
        FormColumn form = new FormColumn(saying)
                .with(outcome)
                .with(reason, amount)
                .with(signer, second)
                .with(corrects)
                .saying(need, "claim-need")
                .saying(Bindings.createObjectBinding(this::against, written), "claim-against");
        VBox rules = rules();
        HBox.setHgrow(rules, Priority.ALWAYS);
        node.getStyleClass().add("claim-decision");
        node.setMinHeight(0);
        node.getChildren().addAll(rules, form);
    }

    private VBox rules() {
        Label label = new Label();
        label.setId("decision-rules");
        label.getStyleClass().add("claim-rules");
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.textProperty()
                .bind(saying.text(model.shownProperty()
                        .map(view -> view.flatMap(each -> each.reviewed().coverage())
                                .map(coverage -> Word.of("ui.claim.by_rules", coverage.rules()))
                                .orElse(Word.of("ui.claim.no_rules")))));
        RowList weighed = new RowList(saying, model.weighed());
        weighed.setId("decision-weighed");
        VBox.setVgrow(weighed, Priority.ALWAYS);
        VBox rules = new VBox(label, weighed);
        rules.setMinHeight(0);
        return rules;
    }

    private Optional<Amount> amount() {
        String typed = amount.text().getText();
        return typed.isBlank() ? Optional.empty() : Optional.of(Amount.of(typed));
    }

    private Word lacking() {
        Optional<ClaimView> view = model.shownProperty().get();
        if (view.isEmpty()) {
            return Word.NONE;
        }
        Optional<Amount> given;
        try {
            given = amount();
        } catch (IllegalArgumentException e) {
            return Word.of("ui.claim.need.amount_wrong");
        }
        DecisionNeeds needs = view.get().needs();
        return needs
                .of(new Written(
                        outcome.chosenProperty().get(),
                        reason.text().getText(),
                        signer.text().getText(),
                        second.text().getText(),
                        given,
                        corrects.text().getText()))
                .stream()
                .findFirst()
                .map(first -> said(first, needs, given))
                .orElse(Word.NONE);
    }

    private Word said(Need first, DecisionNeeds needs, Optional<Amount> given) {
        String key = "ui.claim.need." + first.name().toLowerCase(Locale.ROOT);
        return switch (first) {
            case ATTACHMENTS -> Word.of(key, listed(needs.lacking(given)));
            case OTHER_SIGNER -> Word.of(key, signer.text().getText().strip());
            case OTHER_SECOND -> Word.of(key, second.text().getText().strip());
            default -> Word.of(key);
        };
    }

    private static Word listed(List<Missing> lacking) {
        return lacking.stream()
                .map(each -> Word.of(each.key()))
                .reduce((one, other) -> Word.of("ui.claim.need.list", one, other))
                .orElse(Word.NONE);
    }

    /** Tells when the rules speak against what was chosen; it may be signed all the same. */
    private Word against() {
        Optional<CoverageAssessment> coverage =
                model.shownProperty().get().flatMap(view -> view.reviewed().coverage());
        Optional<Outcome> chosen = outcome.chosenProperty().get();
        if (coverage.isEmpty() || chosen.isEmpty()) {
            return Word.NONE;
        }
        List<String> rules = DecisionNeeds.against(coverage.get(), chosen.get());
        if (rules.isEmpty()) {
            return Word.NONE;
        }
        return chosen.get() == Outcome.DENY
                ? Word.of("ui.claim.against.deny")
                : Word.of("ui.claim.against.approve", Word.of("claim.rule." + rules.get(0)));
    }

    void begin() {
        for (Field each : List.of(reason, second, amount, corrects)) {
            each.text().clear();
        }
        outcome.chosenProperty().set(Optional.empty());
        model.shownProperty().get().ifPresent(view -> {
            again.set(view.file().decision().isPresent());
            String person = model.personProperty().get();
            signer.text().setText(view.needs().hasMeasured(person) ? "" : person);
        });
    }

    @Override
    public Node node() {
        return node;
    }

    @Override
    public void focus() {
        outcome.getChildren().get(0).requestFocus();
    }

    @Override
    public List<Action> actions() {
        return Pane.ofForm(saying, model, need, "ui.claim.sign", this::sign, done);
    }

    private void sign() {
        String other = second.text().getText().strip();
        DecisionAsked asked = new DecisionAsked(
                outcome.chosenProperty().get().orElseThrow(),
                reason.text().getText(),
                signer.text().getText(),
                other.isEmpty() ? Optional.empty() : Optional.of(other),
                amount());
        model.deeds().decide(asked, again.get() ? Optional.of(corrects.text().getText()) : Optional.empty(), done);
    }
}
