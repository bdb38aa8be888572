package org.pumpwright.host.app;

import java.time.LocalDate;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.stand.StandDescription;

/** What must be so before anything moves: plan, unit and stand belong together. Thread-safe. */
final class BeforeTheRun {
    private BeforeTheRun() {}

    /**
     * Refuses what must not begin.
     *
     * @param today the day on which the relief check must be in date
     * @throws OrderException saying what is wrong and what to do
     */
    static void check(Plan plan, UnitModel model, StandDescription stand, LocalDate today) throws OrderException {
        checkKind(plan, model);
        checkMeter(plan, stand);
        if (plan.needsReliefCheck()) {
            checkRelief(plan, stand, today);
        }
    }

    private static void checkKind(Plan plan, UnitModel model) throws OrderException {
        if (plan.kind() != model.kind()) {
            throw new OrderException(
                    "plan '%s' is for a %s, model '%s' is a %s. Choose a plan for it, or leave --plan away."
                            .formatted(
                                    plan.id(),
                                    plan.kind().words(),
                                    model.id(),
                                    model.kind().words()));
        }
    }

    private static void checkMeter(Plan plan, StandDescription stand) throws OrderException {
        int wanted = plan.wiring().meter();
        if (stand.channels().meters().stream().noneMatch(meter -> meter.index() == wanted)) {
            throw new OrderException(
                    "plan '%s' reads meter %d, but stand '%s' has none. Fit that meter and describe it in the stand's file, or use a stand that has it."
                            .formatted(plan.id(), wanted, stand.id()));
        }
    }

    private static void checkRelief(Plan plan, StandDescription stand, LocalDate today) throws OrderException {
        Optional<Certificate> relief = stand.reliefCheck();
        if (relief.isEmpty()) {
            throw new OrderException(
                    "plan '%s' runs against a closed outlet, but stand '%s' has no relief check, so nothing was driven. Prove that its relief valve opens in time, then write relief_check into the stand's file."
                            .formatted(plan.id(), stand.id()));
        }
        if (relief.get().standing(today) != Certificate.Standing.IN_DATE) {
            throw new OrderException(
                    "plan '%s' runs against a closed outlet, but the relief check of stand '%s' is %s, so nothing was driven. Prove the relief valve again, then write the new day into the stand's file."
                            .formatted(plan.id(), stand.id(), relief.get().words(today)));
        }
    }
}
