package org.pumpwright.host.app;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.catalog.UnitModel;

/**
 * What the customer says is wrong, as a code. A sweep alone finds nothing in a unit that fails hot or now and then, so the
 * complaint proposes the plan. Common practice, no source. Thread-safe.
 */
public enum Complaint {
    NO_FLOW(
            "quick-12v-pump",
            "override-split",
            "flow, amps and volts together tell a seized unit from an open one",
            "the override tells an electrical fault from a hydraulic one"),
    LOW(
            "full-12v-pump",
            "valve-sweep",
            "the whole curve, the start and the winding tell wear, drag and resistance apart",
            "the whole curve up and down tells a sticking valve from wear"),
    SURGING(
            "full-12v-pump",
            "valve-sweep",
            "every point is watched for surging, the way down too",
            "a sticking spool shows as the gap between the way up and the way down"),
    WONT_START(
            "restart-12v-pump",
            "override-split",
            "one dead spot shows in ten starts, not in one",
            "the override tells a dead coil from a seized spool"),
    QUITS_HOT("soak-12v-pump", "", "what trips when hot passes a short sweep", ""),
    LEAKS("dead-head-12v-pump", "", "a weep shows at the highest pressure", ""),
    BLOWS_FUSE("quick-12v-pump", "", "too much current shows at the first points and ends the run", ""),
    READS_WRONG("full-12v-pump", "", "the stand's own meter tells whether the unit or the reading is wrong", ""),
    READS_WITH_NO_FLOW("zero-flow-12v-pump", "", "the drive may put pulses into the meter's wire", ""),
    INTERMITTENT("wiggle-12v-pump", "", "what comes and goes must be provoked", "");

    private final String pumpPlan;
    private final String hydraulicPlan;
    private final String pumpReason;
    private final String hydraulicReason;

    Complaint(String pumpPlan, String hydraulicPlan, String pumpReason, String hydraulicReason) {
        this.pumpPlan = pumpPlan;
        this.hydraulicPlan = hydraulicPlan;
        this.pumpReason = pumpReason;
        this.hydraulicReason = hydraulicReason;
    }

    /**
     * A plan that fits a complaint.
     *
     * @param plan its name
     * @param reason why this one
     */
    public record Proposal(String plan, String reason) {}

    /** The complaint as it is typed: small letters with dashes. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The complaint with this word.
     *
     * @throws OrderException naming the words that are known
     */
    public static Complaint ofWord(String word) throws OrderException {
        for (Complaint complaint : values()) {
            if (complaint.word().equalsIgnoreCase(word.strip())) {
                return complaint;
            }
        }
        throw new OrderException("there is no complaint '%s'. Known are: %s."
                .formatted(word, Arrays.stream(values()).map(Complaint::word).collect(Collectors.joining(", "))));
    }

    /** The plan for a unit of this model with this complaint. */
    public Proposal proposal(UnitModel model) {
        if (model.kind() == UnitKind.PUMP_12V) {
            return new Proposal(pumpPlan, pumpReason);
        }
        if (model.kind() == UnitKind.HYDRAULIC_PUMP && !hydraulicPlan.isEmpty()) {
            return new Proposal(hydraulicPlan, hydraulicReason);
        }
        return new Proposal(model.plan(), "the model's own plan covers it");
    }
}
