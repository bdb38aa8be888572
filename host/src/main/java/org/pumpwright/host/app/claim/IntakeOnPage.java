package org.pumpwright.host.app.claim;

import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;

/** What was written down when a unit came in, as lines of the claim's text page. Thread-safe. */
final class IntakeOnPage {
    private IntakeOnPage() {}

    /** Adds it; the people only where asked for. */
    static void add(PageText page, ClaimIntake intake, boolean people) {
        page.title("Intake");
        page.fact("received", intake.received().toString());
        if (people) {
            page.fact("brought by", intake.people().broughtBy());
            page.fact("contact", intake.people().contact());
            page.fact("customer", intake.people().customer());
        }
        unit(page, intake.unit());
        use(page, intake.use());
        page.fact("planter", intake.planter().makeUp());
        page.fact("product", intake.planter().product());
        page.fact("last flush", intake.planter().lastFlush());
        page.fact(
                "complaint",
                "\"%s\" (%s)"
                        .formatted(
                                intake.complaint().words(), intake.complaint().code()));
        page.fact("conditions", intake.complaint().conditions());
        page.fact("swapped", intake.complaint().alreadySwapped());
        page.fact("clean", clean(intake));
        page.fact("worth", intake.value().map(value -> value.text()).orElse(""));
    }

    private static void unit(PageText page, UnitAsReceived unit) {
        page.fact("unit", "%s %s".formatted(unit.kind(), unit.model()).strip());
        page.fact("serial", unit.serial());
        page.fact("date code", unit.dateCode().orElse(""));
        page.fact("accessories", unit.accessories());
        page.fact("seal", unit.seal());
        page.fact("tag", unit.tag());
    }

    private static void use(PageText page, TimeInUse use) {
        page.sourced("sold", use.sold());
        page.sourced("delivered", use.delivered());
        page.sourced("first used", use.firstUsed());
        page.sourced("hours", use.hours());
        page.sourced("acres", use.acres());
    }

    private static String clean(ClaimIntake intake) {
        String declared = intake.decontamination()
                .declared()
                .map(yes -> yes ? "declared" : "declared not clean")
                .orElse("not declared");
        return declared
                + intake.decontamination()
                        .confirmedBy()
                        .map(name -> ", rinsed %d times, confirmed by %s"
                                .formatted(intake.decontamination().rinses(), name))
                        .orElse(", not confirmed");
    }
}
