package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.Observable;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.grade.Handling;

/**
 * A unit comes in: {@link ClaimInHand} is what it is here for, {@link UnitChoice} what it is, {@link Rinsing} whether it is clean,
 * {@link Technicians} who tests it. Here is what is still missing, and how it is taken in. JavaFX thread only.
 */
public final class ReceiveModel {
    private static final Word RINSING = Word.of("ui.receive.missing.decontaminated");

    private final Background background;
    private final ClaimLookup desk;
    private final WorkInHand work;
    private final UnitChoice unit;
    private final ClaimInHand claim;
    private final Technicians technicians;
    private final Rinsing rinsing = new Rinsing();
    private final IntakePhotos photos;
    private final StringProperty serial = new SimpleStringProperty("");
    private final BooleanProperty noPlate = new SimpleBooleanProperty();
    private final ObservableList<Word> missing = FXCollections.observableArrayList();
    private final ObservableList<Word> missingShown = FXCollections.unmodifiableObservableList(missing);
    private final ObservableList<Word> differences = FXCollections.observableArrayList();
    private final ObservableList<Word> differencesShown = FXCollections.unmodifiableObservableList(differences);
    private final ReadOnlyBooleanWrapper complete = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper onlyRinsing = new ReadOnlyBooleanWrapper();
    private boolean takingIn;

    /**
     * Takes units in, and hands them to the work.
     *
     * @param testedLately names of those who tested lately; called on a worker thread
     */
    public ReceiveModel(
            Background background,
            Shelf shelf,
            ClaimLookup desk,
            Callable<List<String>> testedLately,
            WorkInHand work) {
        this.background = background;
        this.desk = desk;
        this.work = work;
        unit = new UnitChoice(background, shelf);
        claim = new ClaimInHand(background, desk);
        technicians = new Technicians(background, testedLately);
        photos = new IntakePhotos(background, desk, claim);
        claim.stateProperty().addListener((observed, old, now) -> {
            if (now == ClaimInHand.State.FOUND) {
                claim.knownProperty().get().ifPresent(this::fillIn);
            }
        });
        for (Observable each : new Observable[] {
            unit.modelProperty(),
            unit.complaintProperty(),
            unit.planProperty(),
            serial,
            noPlate,
            technicians.nameProperty(),
            rinsing.productProperty(),
            rinsing.stateProperty(),
            claim.stateProperty(),
            claim.knownProperty(),
            work.busyProperty()
        }) {
            each.addListener(changed -> look());
        }
        look();
    }

    /** Reads what is chosen from. */
    public void load() {
        unit.load();
        technicians.load();
    }

    /** The plate was scanned. */
    public void scannedPlate(String text) {
        noPlate.set(false);
        serial.set(text.strip());
    }

    /** The number of a claim was scanned. */
    public void scannedClaim(String text) {
        claim.numberProperty().set(text.strip());
        claim.lookUp();
    }

    /** What was said already stays; what differs is named. */
    private void fillIn(ClaimLookup.Known known) {
        unit.fillIn(known.model(), known.complaint());
        if (serial.get().isBlank() && !noPlate.get()) {
            known.serial().ifPresent(this::fillInSerial);
        }
        if (rinsing.productProperty().get().isEmpty()) {
            rinsing.productProperty().set(Product.ofName(known.product()));
        }
        if (rinsing.stateProperty().get() == Rinsing.State.NOT_SAID) {
            rinsing.known(known.handling());
        }
    }

    private void fillInSerial(String known) {
        if (known.equalsIgnoreCase(WorkOrder.NO_PLATE)) {
            noPlate.set(true);
        } else {
            serial.set(known);
        }
    }

    private void look() {
        differences.setAll(claim.differences(unit.modelProperty().get().map(UnitModel::id), read()));
        List<Word> found = new ArrayList<>();
        ask(found, !technicians.nameProperty().get().isBlank(), "technician");
        ask(found, unit.modelProperty().get().isPresent(), "model");
        ask(found, noPlate.get() || !serial.get().isBlank(), "serial");
        ask(found, rinsing.productProperty().get().isPresent(), "product");
        ask(found, rinsing.stateProperty().get() != Rinsing.State.NOT_SAID, "decontaminated");
        ask(found, unit.complaintProperty().get().isPresent(), "complaint");
        ask(
                found,
                unit.modelProperty().get().isEmpty()
                        || unit.planProperty().get().isPresent(),
                "plan");
        ask(found, claim.stateProperty().get() != ClaimInHand.State.ASKED, "claim");
        boolean whole = claim.knownProperty()
                .get()
                .map(known -> known.lacking().isEmpty())
                .orElse(true);
        ask(found, whole, "intake");
        ask(found, !work.busyProperty().get(), "run");
        missing.setAll(found);
        complete.set(found.isEmpty());
        onlyRinsing.set(found.size() == 1 && found.get(0).equals(RINSING));
    }

    private static void ask(List<Word> missing, boolean there, String what) {
        if (!there) {
            missing.add(Word.of("ui.receive.missing." + what));
        }
    }

    private String read() {
        return noPlate.get() ? WorkOrder.NO_PLATE : serial.get().strip();
    }

    /**
     * Takes the unit in hand; the fields are empty afterwards, but for the technician. A claim at the desk is told first whether the
     * unit is clean; a claim that turns up only now is shown first.
     *
     * @param done is done when it is in hand
     */
    public void accept(Runnable done) {
        if (!complete.get() || takingIn) {
            return;
        }
        boolean foundBefore = claim.stateProperty().get() == ClaimInHand.State.FOUND;
        claim.lookUp(() -> {
            boolean found = claim.stateProperty().get() == ClaimInHand.State.FOUND;
            if (complete.get() && (foundBefore || !found)) {
                tellClaim(order(), found, done);
            }
        });
    }

    private void tellClaim(WorkOrder order, boolean atDesk, Runnable done) {
        if (!atDesk) {
            take(order, done);
            return;
        }
        takingIn = true;
        background.run(
                () -> {
                    desk.handled(order.claim().orElseThrow(), order.job().handling());
                    return order;
                },
                told -> {
                    takingIn = false;
                    take(told, done);
                },
                failure -> {
                    takingIn = false;
                    background.trouble(Trouble.of(failure));
                });
    }

    private void take(WorkOrder order, Runnable done) {
        if (work.busyProperty().get()) {
            return;
        }
        technicians.remember();
        clear();
        work.take(order);
        done.run();
    }

    private WorkOrder order() {
        String who = technicians.nameProperty().get().strip();
        Optional<String> named = claim.knownProperty()
                .get()
                .map(ClaimLookup.Known::product)
                .filter(name -> !name.isBlank())
                .filter(name ->
                        Product.ofName(name).equals(rinsing.productProperty().get())
                                || Product.ofName(name).isEmpty());
        Handling handling = rinsing.handling(who, named);
        return new WorkOrder(
                unit.modelProperty().get().orElseThrow(),
                unit.planProperty().get().orElseThrow(),
                read(),
                who,
                rinsing.productProperty().get().orElseThrow(),
                new Acceptance.Job(
                        unit.complaintProperty().get().flatMap(ComplaintChoice::complaint),
                        false,
                        Optional.empty(),
                        claim.given(),
                        handling),
                claim.given(),
                Optional.empty());
    }

    /** Empties the fields, but for the technician. */
    public void clear() {
        claim.numberProperty().set("");
        unit.clear();
        serial.set("");
        noPlate.set(false);
        rinsing.clear();
    }

    /** What it is here for. */
    public ClaimInHand claim() {
        return claim;
    }

    /** What it is, and what the customer says. */
    public UnitChoice unit() {
        return unit;
    }

    /** What it has pumped, and whether it is clean. */
    public Rinsing rinsing() {
        return rinsing;
    }

    /** Who tests. */
    public Technicians technicians() {
        return technicians;
    }

    /** Its pictures. */
    public IntakePhotos photos() {
        return photos;
    }

    /** What is still to be said, in the order of the screen. */
    public ObservableList<Word> missing() {
        return missingShown;
    }

    /** What does not fit what the claim says. */
    public ObservableList<Word> differences() {
        return differencesShown;
    }

    /** As read from the plate. */
    public StringProperty serialProperty() {
        return serial;
    }

    /** Whether there is no plate to read it from. */
    public BooleanProperty noPlateProperty() {
        return noPlate;
    }

    /** Whether nothing is missing. */
    public ReadOnlyBooleanProperty completeProperty() {
        return complete.getReadOnlyProperty();
    }

    /** Whether nothing is missing but to say that it is clean. */
    public ReadOnlyBooleanProperty onlyRinsingProperty() {
        return onlyRinsing.getReadOnlyProperty();
    }
}
