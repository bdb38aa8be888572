package org.pumpwright.host.ui.work;

import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ComplaintAsMade;
import org.pumpwright.host.claim.Decontamination;
import org.pumpwright.host.claim.OnThePlanter;
import org.pumpwright.host.claim.People;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;

/** The intake of a unit, a few fields at a time. What is left empty is named later. JavaFX thread only. */
public final class IntakeForm {
    private final Map<Entered, StringProperty> fields = new EnumMap<>(Entered.class);
    private Optional<ClaimIntake> before = Optional.empty();

    /** What is filled in; pages of six. */
    public enum Entered {
        CLAIM(0, false),
        TAKEN_BY(0, false),
        BROUGHT_BY(0, false),
        CONTACT(0, false),
        CUSTOMER(0, false),
        PRODUCT(0, false),
        KIND(1, true),
        MODEL(1, true),
        SERIAL(1, false),
        ACCESSORIES(1, false),
        SEAL(1, false),
        TAG(1, false),
        COMPLAINT(2, false),
        COMPLAINT_CODE(2, true),
        CONDITIONS(2, false),
        DECLARED_CLEAN(2, true);

        private final int page;
        private final boolean picked;

        Entered(int page, boolean picked) {
            this.page = page;
            this.picked = picked;
        }

        /** On which page, from 0. */
        public int page() {
            return page;
        }

        /** Whether it is picked from a list instead of typed. */
        public boolean picked() {
            return picked;
        }

        /** Key of its name. */
        public String key() {
            return "ui.claim.intake." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** An empty form. */
    public IntakeForm() {
        for (Entered each : Entered.values()) {
            fields.put(each, new SimpleStringProperty(""));
        }
    }

    /** What stands in a field. */
    public StringProperty field(Entered which) {
        StringProperty field = fields.get(which);
        if (field == null) {
            throw new IllegalStateException("the form has no field " + which);
        }
        return field;
    }

    /** Empties it for a new claim. */
    public void empty() {
        fields.values().forEach(field -> field.set(""));
        before = Optional.empty();
    }

    /** Fills it with an intake that has gaps. */
    public void fill(ClaimIntake intake) {
        before = Optional.of(intake);
        set(Entered.CLAIM, intake.claim());
        set(Entered.TAKEN_BY, intake.takenBy());
        set(Entered.BROUGHT_BY, intake.people().broughtBy());
        set(Entered.CONTACT, intake.people().contact());
        set(Entered.CUSTOMER, intake.people().customer());
        set(Entered.PRODUCT, intake.planter().product());
        set(Entered.KIND, intake.unit().kind());
        set(Entered.MODEL, intake.unit().model());
        set(Entered.SERIAL, intake.unit().serial());
        set(Entered.ACCESSORIES, intake.unit().accessories());
        set(Entered.SEAL, intake.unit().seal());
        set(Entered.TAG, intake.unit().tag());
        set(Entered.COMPLAINT, intake.complaint().words());
        set(Entered.COMPLAINT_CODE, intake.complaint().code());
        set(Entered.CONDITIONS, intake.complaint().conditions());
        set(
                Entered.DECLARED_CLEAN,
                intake.decontamination()
                        .declared()
                        .map(yes -> yes ? "yes" : "no")
                        .orElse(""));
    }

    private void set(Entered which, String text) {
        field(which).set(text);
    }

    /** Whether it completes a claim that is open already. */
    public boolean corrects() {
        return before.isPresent();
    }

    /**
     * What is filled in; what this form does not ask for stays as it was.
     *
     * @throws IllegalArgumentException when a field can't be kept as it is
     */
    public ClaimIntake intake(OffsetDateTime now) {
        String clean = get(Entered.DECLARED_CLEAN);
        Optional<Boolean> declared = clean.isEmpty() ? Optional.empty() : Optional.of(clean.equals("yes"));
        Decontamination was = before.map(ClaimIntake::decontamination).orElse(Decontamination.NONE);
        return new ClaimIntake(
                get(Entered.CLAIM),
                before.map(ClaimIntake::received).orElse(now),
                new People(get(Entered.BROUGHT_BY), get(Entered.CONTACT), get(Entered.CUSTOMER)),
                new UnitAsReceived(
                        get(Entered.KIND),
                        get(Entered.MODEL),
                        get(Entered.SERIAL),
                        before.flatMap(each -> each.unit().dateCode()),
                        get(Entered.ACCESSORIES),
                        get(Entered.SEAL),
                        get(Entered.TAG)),
                before.map(ClaimIntake::use).orElse(TimeInUse.UNKNOWN),
                new OnThePlanter(
                        before.map(each -> each.planter().makeUp()).orElse(""),
                        get(Entered.PRODUCT),
                        before.map(each -> each.planter().lastFlush()).orElse("")),
                new ComplaintAsMade(
                        get(Entered.COMPLAINT),
                        get(Entered.COMPLAINT_CODE),
                        get(Entered.CONDITIONS),
                        before.map(each -> each.complaint().alreadySwapped()).orElse("")),
                new Decontamination(declared, was.confirmedBy(), was.rinses()),
                before.flatMap(ClaimIntake::value),
                get(Entered.TAKEN_BY),
                before.map(ClaimIntake::practice).orElse(false));
    }

    private String get(Entered which) {
        return field(which).get().strip();
    }
}
