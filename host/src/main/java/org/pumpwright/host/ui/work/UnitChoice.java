package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.Complaint.Proposal;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;

/** What a unit is and what the customer says of it; out of that the proposed plan. JavaFX thread only. */
public final class UnitChoice {
    private final Background background;
    private final Shelf shelf;
    private final List<UnitModel> models = new ArrayList<>();
    private final List<Plan> plans = new ArrayList<>();
    private final ObservableList<UnitModel> shown = FXCollections.observableArrayList();
    private final ObservableList<UnitModel> shownShown = FXCollections.unmodifiableObservableList(shown);
    private final StringProperty filter = new SimpleStringProperty("");
    private final ObjectProperty<Optional<UnitModel>> model = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<ComplaintChoice>> complaint = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Plan>> plan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> reason = new ReadOnlyObjectWrapper<>(Word.NONE);

    /** Chooses from this shelf. */
    UnitChoice(Background background, Shelf shelf) {
        this.background = background;
        this.shelf = shelf;
        filter.addListener((observed, old, now) -> filter());
        model.addListener((observed, old, now) -> propose());
        complaint.addListener((observed, old, now) -> propose());
    }

    /** Everything of the shelf that is chosen from. */
    private record Choices(List<UnitModel> models, List<Plan> plans) {}

    /** Reads the shop's models and plans. */
    void load() {
        background.run(() -> new Choices(shelf.models(), shelf.plans()), this::loaded);
    }

    private void loaded(Choices choices) {
        models.clear();
        models.addAll(choices.models());
        plans.clear();
        plans.addAll(choices.plans());
        filter();
        if (plan.get().isEmpty()) {
            propose();
        }
    }

    private void filter() {
        String wanted = filter.get().strip().toLowerCase(Locale.ROOT);
        List<UnitModel> fitting = models.stream()
                .filter(each -> (each.id() + " " + each.title())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .toList();
        // Buttons that are there already are not made anew under somebody's finger.
        if (!shown.equals(fitting)) {
            shown.setAll(fitting);
        }
    }

    private void propose() {
        Optional<Proposal> proposal = model.get().map(this::proposal);
        plan.set(proposal.flatMap(each -> plan(each.plan())));
        reason.set(proposal.map(each -> Word.stored(each.reason())).orElse(Word.NONE));
    }

    private Proposal proposal(UnitModel unit) {
        return complaint
                .get()
                .flatMap(ComplaintChoice::complaint)
                .map(each -> each.proposal(unit))
                .orElseGet(() -> new Proposal(unit.plan(), "the model's own plan covers it"));
    }

    private Optional<Plan> plan(String id) {
        return plans.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** The plans that fit the model. */
    public List<Plan> plansOfTheKind() {
        return plans.stream()
                .filter(each -> model.get()
                        .map(UnitModel::kind)
                        .filter(each.kind()::equals)
                        .isPresent())
                .toList();
    }

    /** Takes another plan than the proposed one. */
    public void choose(Plan other) {
        plan.set(Optional.of(other));
        reason.set(Word.of("ui.receive.plan.chosen"));
    }

    /** Fills in what a claim says where nothing was said yet. */
    void fillIn(Optional<String> id, Optional<Complaint> said) {
        if (model.get().isEmpty()) {
            id.flatMap(each ->
                            models.stream().filter(one -> one.id().equals(each)).findFirst())
                    .ifPresent(found -> model.set(Optional.of(found)));
        }
        if (complaint.get().isEmpty()) {
            said.ifPresent(each -> complaint.set(Optional.of(new ComplaintChoice(Optional.of(each)))));
        }
    }

    /** Nothing is chosen. */
    void clear() {
        filter.set("");
        model.set(Optional.empty());
        complaint.set(Optional.empty());
    }

    /** The models that fit what was typed. */
    public ObservableList<UnitModel> shown() {
        return shownShown;
    }

    /** Part of a model's name. */
    public StringProperty filterProperty() {
        return filter;
    }

    /** What the unit is. */
    public ObjectProperty<Optional<UnitModel>> modelProperty() {
        return model;
    }

    /** What the customer says. */
    public ObjectProperty<Optional<ComplaintChoice>> complaintProperty() {
        return complaint;
    }

    /** The plan it would go through. */
    public ReadOnlyObjectProperty<Optional<Plan>> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** Why that plan. */
    public ReadOnlyObjectProperty<Word> reasonProperty() {
        return reason.getReadOnlyProperty();
    }
}
