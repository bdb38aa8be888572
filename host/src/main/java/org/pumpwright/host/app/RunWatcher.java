package org.pumpwright.host.app;

import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.run.RunListener;

/** Hears how a run goes, and before it what will be done and against what it will be held. */
public interface RunWatcher extends RunListener {
    /**
     * The stand is open, and the run begins.
     *
     * @param plan what will be done
     * @param curve what it will be held against; empty where nothing will be judged
     * @param stand what a stand in order shows
     */
    default void begins(Plan plan, Optional<HealthyCurve> curve, StandExpectations stand) {}

    /** Which run of the unit it is, and which came before it. */
    default void counts(EarlierRuns earlier) {}

    /**
     * A person has stopped the run and the stand is safe: why, in plain words, for the record. The record waits for it; should
     * the program end meanwhile, the run's journal has all that was measured.
     *
     * @return empty when nobody says
     */
    default Optional<String> whyStopped() {
        return Optional.empty();
    }
}
