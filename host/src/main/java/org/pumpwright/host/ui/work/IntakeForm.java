package org.pumpwright.host.ui.work;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.Sourced;

/** The intake of a unit while it is filled in. What is left empty is named later; what can't be kept is told at once. JavaFX thread only. */
public final class IntakeForm {
    private final Map<IntakeField, StringProperty> fields = new EnumMap<>(IntakeField.class);
    private final Map<IntakeField, ObjectProperty<Optional<Source>>> sources = new EnumMap<>(IntakeField.class);
    private final ReadOnlyObjectWrapper<Optional<Word>> wrong = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<ClaimIntake> before = Optional.empty();

    /** An empty form. */
    public IntakeForm() {
        for (IntakeField each : IntakeField.values()) {
            StringProperty text = new SimpleStringProperty("");
            text.addListener((observed, old, now) -> check());
            fields.put(each, text);
            ObjectProperty<Optional<Source>> source = new SimpleObjectProperty<>(Optional.empty());
            source.addListener((observed, old, now) -> check());
            sources.put(each, source);
        }
        check();
    }

    private void check() {
        wrong.set(IntakeReading.wrong(this));
    }

    /** What stands in a field. */
    public StringProperty field(IntakeField which) {
        return require(fields.get(which), which);
    }

    /** Who says so, for a field that asks. */
    public ObjectProperty<Optional<Source>> source(IntakeField which) {
        return require(sources.get(which), which);
    }

    private static <T> T require(@Nullable T found, IntakeField which) {
        if (found == null) {
            throw new IllegalStateException("the form has no field " + which);
        }
        return found;
    }

    /** Empties it for a new claim. */
    public void empty() {
        before = Optional.empty();
        fields.values().forEach(field -> field.set(""));
        sources.values().forEach(source -> source.set(Optional.empty()));
        check();
    }

    /**
     * Fills it with an intake, to be completed or corrected.
     *
     * @param why the usual reason, for the person to change
     */
    public void fill(ClaimIntake intake, String why) {
        empty();
        before = Optional.of(intake);
        set(IntakeField.CLAIM, intake.claim());
        set(IntakeField.RECEIVED, intake.received().toLocalDate().toString());
        set(IntakeField.TAKEN_BY, intake.takenBy());
        set(IntakeField.BROUGHT_BY, intake.people().broughtBy());
        set(IntakeField.CONTACT, intake.people().contact());
        set(IntakeField.CUSTOMER, intake.people().customer());
        set(IntakeField.VALUE, intake.value().map(value -> value.text()).orElse(""));
        set(IntakeField.PRACTICE, intake.practice() ? IntakeReading.YES : "");
        set(IntakeField.WHY_AGAIN, why);
        unit(intake);
        use(intake);
        complaint(intake);
        check();
    }

    private void unit(ClaimIntake intake) {
        set(IntakeField.KIND, intake.unit().kind());
        set(IntakeField.MODEL, intake.unit().model());
        set(IntakeField.SERIAL, intake.unit().serial());
        set(IntakeField.DATE_CODE, intake.unit().dateCode().orElse(""));
        set(IntakeField.ACCESSORIES, intake.unit().accessories());
        set(IntakeField.SEAL, intake.unit().seal());
        set(IntakeField.TAG, intake.unit().tag());
    }

    private void use(ClaimIntake intake) {
        sourced(IntakeField.SOLD, intake.use().sold(), Object::toString);
        sourced(IntakeField.DELIVERED, intake.use().delivered(), Object::toString);
        sourced(IntakeField.FIRST_USED, intake.use().firstUsed(), Object::toString);
        sourced(IntakeField.HOURS, intake.use().hours(), IntakeReading::count);
        sourced(IntakeField.ACRES, intake.use().acres(), IntakeReading::count);
        set(IntakeField.REGISTERED, IntakeReading.yesOrNo(intake.use().registered()));
    }

    private void complaint(ClaimIntake intake) {
        set(IntakeField.COMPLAINT, intake.complaint().words());
        set(IntakeField.COMPLAINT_CODE, intake.complaint().code());
        set(IntakeField.CONDITIONS, intake.complaint().conditions());
        set(IntakeField.ALREADY_SWAPPED, intake.complaint().alreadySwapped());
        set(IntakeField.PRODUCT, intake.planter().product());
        set(IntakeField.LAST_FLUSH, intake.planter().lastFlush());
        set(IntakeField.PLANTER, intake.planter().makeUp());
        set(
                IntakeField.DECLARED_CLEAN,
                IntakeReading.yesOrNo(intake.decontamination().declared()));
        set(IntakeField.CONFIRMED_BY, intake.decontamination().confirmedBy().orElse(""));
        int rinses = intake.decontamination().rinses();
        set(IntakeField.RINSES, rinses == 0 ? "" : Integer.toString(rinses));
    }

    private void set(IntakeField which, String text) {
        field(which).set(text);
    }

    private <T> void sourced(IntakeField which, Optional<Sourced<T>> value, Function<T, String> printed) {
        set(which, value.map(known -> printed.apply(known.value())).orElse(""));
        source(which).set(value.map(Sourced::source));
    }

    /** Whether it takes the place of an intake that is on record. */
    public boolean corrects() {
        return before.isPresent();
    }

    /** The intake that it was filled with; empty for a new claim. */
    Optional<ClaimIntake> before() {
        return before;
    }

    /** The first thing that can't be kept as it was typed; empty when all can. */
    public ReadOnlyObjectProperty<Optional<Word>> wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /** Why it takes the place of the one before. */
    public String why() {
        return get(IntakeField.WHY_AGAIN);
    }

    /**
     * What is filled in.
     *
     * @param now when the unit came, where nothing else is typed
     * @throws IllegalArgumentException when a field can't be kept as it is
     */
    public ClaimIntake intake(OffsetDateTime now) {
        return IntakeReading.of(this, now);
    }

    String get(IntakeField which) {
        return field(which).get().strip();
    }
}
