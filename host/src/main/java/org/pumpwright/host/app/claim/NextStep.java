package org.pumpwright.host.app.claim;

import java.util.EnumSet;
import java.util.Set;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Waiver;

/** What a claim waits for, in the order of the work, and whose move that is. Common practice, no source. Thread-safe. */
public enum NextStep {
    COMPLETE_INTAKE(Whose.DESK),
    RINSE(Whose.SHOP),
    TEST(Whose.STAND),
    FIND(Whose.TECHNICIAN),
    DECIDE(Whose.DESK),
    /** It is decided; the unit and the papers are still here. */
    HAND_OVER(Whose.DESK),
    /** The unit has left the shop. */
    NOTHING(Whose.NOBODY);

    private final Whose whose;

    NextStep(Whose whose) {
        this.whose = whose;
    }

    /** Who is to act. */
    public enum Whose {
        DESK,
        SHOP,
        STAND,
        TECHNICIAN,
        NOBODY
    }

    /** Whose move it is. */
    public Whose whose() {
        return whose;
    }

    /** What only the people of a claim can lack, whom an outline leaves out. */
    private static final Set<Missing> OF_PEOPLE = EnumSet.of(Missing.BROUGHT_BY, Missing.CONTACT);

    /** The step that a claim waits for. */
    public static NextStep of(ClaimFile file) {
        return of(file, !file.runs().isEmpty(), Set.of());
    }

    /**
     * The same of a claim's outline, which knows neither its runs nor its people.
     *
     * @param tested whether a run of it is on record
     */
    public static NextStep ofOutline(ClaimFile outline, boolean tested) {
        return of(outline, tested, OF_PEOPLE);
    }

    private static NextStep of(ClaimFile file, boolean tested, Set<Missing> unknown) {
        if (file.whereabouts().to().isOut()) {
            return NOTHING;
        }
        if (file.decision().isPresent()) {
            return HAND_OVER;
        }
        if (file.missing().stream().anyMatch(item -> item.beforeTheTest() && !unknown.contains(item))) {
            return COMPLETE_INTAKE;
        }
        if (file.finding().isPresent()) {
            return DECIDE;
        }
        return tested || file.whereabouts().to() == CustodyState.TESTED ? FIND : beforeTheTest(file);
    }

    private static NextStep beforeTheTest(ClaimFile file) {
        boolean clean = file.intake().decontamination().confirmed()
                || file.waivers().stream().anyMatch(each -> each.step() == Waiver.Step.DECONTAMINATION);
        return clean ? TEST : RINSE;
    }
}
