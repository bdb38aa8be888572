package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.Complaint.Proposal;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;

/** A unit comes in: what it is, whose, why, and what it has pumped; out of that the proposed plan. JavaFX thread only. */
public final class ReceiveModel {
    private final Background background;
    private final Shelf shelf;
    private final ClaimLookup claims;
    private final WorkInHand work;
    private final List<UnitModel> models = new ArrayList<>();
    private final List<Plan> plans = new ArrayList<>();
    private final ObservableList<UnitModel> shown = FXCollections.observableArrayList();
    private final ObservableList<UnitModel> shownShown = FXCollections.unmodifiableObservableList(shown);
    private final ObservableList<String> technicians = FXCollections.observableArrayList();
    private final ObservableList<String> techniciansShown = FXCollections.unmodifiableObservableList(technicians);
    private final ObservableList<Word> missing = FXCollections.observableArrayList();
    private final ObservableList<Word> missingShown = FXCollections.unmodifiableObservableList(missing);
    private final StringProperty filter = new SimpleStringProperty("");
    private final ObjectProperty<Optional<UnitModel>> model = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty serial = new SimpleStringProperty("");
    private final BooleanProperty noPlate = new SimpleBooleanProperty();
    private final StringProperty technician = new SimpleStringProperty("");
    private final StringProperty claim = new SimpleStringProperty("");
    private final ObjectProperty<Optional<ComplaintChoice>> complaint = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Product>> product = new SimpleObjectProperty<>(Optional.empty());
    private final BooleanProperty decontaminated = new SimpleBooleanProperty();
    private final ReadOnlyObjectWrapper<Optional<Plan>> plan = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Word> reason = new ReadOnlyObjectWrapper<>(Word.NONE);
    private final ReadOnlyBooleanWrapper complete = new ReadOnlyBooleanWrapper();

    /** Takes units in, and hands them to the work. */
    public ReceiveModel(Background background, Shelf shelf, ClaimLookup claims, WorkInHand work) {
        this.background = background;
        this.shelf = shelf;
        this.claims = claims;
        this.work = work;
        filter.addListener((observed, old, now) -> filter());
        model.addListener((observed, old, now) -> propose());
        complaint.addListener((observed, old, now) -> propose());
        for (Observable each : new Observable[] {
            model, serial, noPlate, technician, complaint, product, decontaminated, plan, work.busyProperty()
        }) {
            each.addListener(changed -> lookForMissing());
        }
        lookForMissing();
    }

    /** Everything of the shelf that is chosen from. */
    private record Choices(List<UnitModel> models, List<Plan> plans) {}

    /** Reads the shop's models and plans. */
    public void load() {
        background.run(() -> new Choices(shelf.models(), shelf.plans()), this::loaded);
    }

    private void loaded(Choices choices) {
        models.clear();
        models.addAll(choices.models());
        plans.clear();
        plans.addAll(choices.plans());
        filter();
        propose();
    }

    private void filter() {
        String wanted = filter.get().strip().toLowerCase(Locale.ROOT);
        shown.setAll(models.stream()
                .filter(each -> (each.id() + " " + each.title())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted))
                .toList());
    }

    private void propose() {
        Optional<Proposal> proposal = model.get().map(this::proposal);
        plan.set(proposal.flatMap(each -> plan(each.plan())));
        reason.set(proposal.map(each -> Stored.sentence(each.reason())).orElse(Word.NONE));
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

    /** A barcode was scanned: it is the serial. */
    public void scanned(String text) {
        noPlate.set(false);
        serial.set(text.strip());
    }

    /** Looks the claim up, and fills in what it says where nothing was said yet. */
    public void lookUpClaim() {
        String number = claim.get().strip();
        if (!number.isEmpty()) {
            background.run(() -> claims.find(number), found -> found.ifPresent(this::fillIn));
        }
    }

    private void fillIn(ClaimLookup.Known known) {
        known.model()
                .flatMap(id ->
                        models.stream().filter(each -> each.id().equals(id)).findFirst())
                .ifPresent(found -> model.set(Optional.of(found)));
        if (serial.get().isBlank()) {
            known.serial().ifPresent(serial::set);
        }
        if (complaint.get().isEmpty()) {
            known.complaint().ifPresent(each -> complaint.set(Optional.of(new ComplaintChoice(Optional.of(each)))));
        }
    }

    private void lookForMissing() {
        List<Word> found = new ArrayList<>();
        ask(found, model.get().isPresent(), "model");
        ask(found, noPlate.get() || !serial.get().isBlank(), "serial");
        ask(found, !technician.get().isBlank(), "technician");
        ask(found, complaint.get().isPresent(), "complaint");
        ask(found, product.get().isPresent(), "product");
        ask(found, decontaminated.get(), "decontaminated");
        ask(found, model.get().isEmpty() || plan.get().isPresent(), "plan");
        ask(found, !work.busyProperty().get(), "run");
        missing.setAll(found);
        complete.set(found.isEmpty());
    }

    private static void ask(List<Word> missing, boolean there, String what) {
        if (!there) {
            missing.add(Word.of("ui.receive.missing." + what));
        }
    }

    /** Takes the unit in hand; the fields are empty afterwards, but for the technician. */
    public void accept() {
        if (!complete.get()) {
            return;
        }
        Acceptance.Job job =
                new Acceptance.Job(complaint.get().flatMap(ComplaintChoice::complaint), false, Optional.empty());
        String who = technician.get().strip();
        WorkOrder order = new WorkOrder(
                model.get().orElseThrow(),
                plan.get().orElseThrow(),
                noPlate.get() ? WorkOrder.NO_PLATE : serial.get().strip(),
                who,
                product.get().orElseThrow(),
                job,
                Optional.of(claim.get().strip()).filter(number -> !number.isEmpty()),
                Optional.empty());
        if (!technicians.contains(who)) {
            technicians.add(0, who);
        }
        clear();
        work.take(order);
    }

    /** Empties the fields, but for the technician. */
    public void clear() {
        filter.set("");
        model.set(Optional.empty());
        serial.set("");
        noPlate.set(false);
        claim.set("");
        complaint.set(Optional.empty());
        product.set(Optional.empty());
        decontaminated.set(false);
    }

    /** The models that fit what was typed. */
    public ObservableList<UnitModel> shown() {
        return shownShown;
    }

    /** Who has tested since the window was opened, the latest first. */
    public ObservableList<String> technicians() {
        return techniciansShown;
    }

    /** What is still to be said, in the order of the screen. */
    public ObservableList<Word> missing() {
        return missingShown;
    }

    /** Part of a model's name. */
    public StringProperty filterProperty() {
        return filter;
    }

    /** What the unit is. */
    public ObjectProperty<Optional<UnitModel>> modelProperty() {
        return model;
    }

    /** As read from the plate. */
    public StringProperty serialProperty() {
        return serial;
    }

    /** Whether there is no plate to read it from. */
    public BooleanProperty noPlateProperty() {
        return noPlate;
    }

    /** Who tests. */
    public StringProperty technicianProperty() {
        return technician;
    }

    /** Number of the claim; may stay empty. */
    public StringProperty claimProperty() {
        return claim;
    }

    /** What the customer says. */
    public ObjectProperty<Optional<ComplaintChoice>> complaintProperty() {
        return complaint;
    }

    /** What the unit has pumped. */
    public ObjectProperty<Optional<Product>> productProperty() {
        return product;
    }

    /** Whether it was drained and rinsed. */
    public BooleanProperty decontaminatedProperty() {
        return decontaminated;
    }

    /** The plan it would go through. */
    public ReadOnlyObjectProperty<Optional<Plan>> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** Why that plan. */
    public ReadOnlyObjectProperty<Word> reasonProperty() {
        return reason.getReadOnlyProperty();
    }

    /** Whether nothing is missing. */
    public ReadOnlyBooleanProperty completeProperty() {
        return complete.getReadOnlyProperty();
    }
}
