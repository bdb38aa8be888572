package org.pumpwright.host.report.claim;

import java.util.Comparator;
import java.util.Optional;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Margin;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.record.RunRecord;

/**
 * What a planter needs against what a unit gives. Thread-safe.
 *
 * @param planter rows, spacing, rate and speed
 * @param product what is pumped, in words
 * @param nozzles whether nozzles meter, so that need and margin are counted as water
 * @param margin of what the unit gives
 */
public record PlanterNeed(Planter planter, String product, boolean nozzles, Margin margin) {
    /** A spare that is common practice, no source. */
    public static final double USUAL_SPARE = 0.15;

    /**
     * The need of a planter against the flow of a run at its highest judged duty.
     *
     * @param asWater the whole need, as water where nozzles meter
     * @return empty when the run tells no flow of the unit
     */
    public static Optional<PlanterNeed> of(
            RunRecord run, Planter planter, String product, boolean nozzles, FlowRate asWater, double spare) {
        return most(run)
                .map(flow -> new PlanterNeed(planter, product, nozzles, new Margin(asWater, flow.measured(), spare)));
    }

    /** The flow of a run at its highest judged duty; empty when there is none. */
    static Optional<FeatureJudgement> most(RunRecord run) {
        return run.grade().features().stream()
                .filter(feature -> feature.judged() && feature.feature().quantity() == Feature.Kind.FLOW)
                .max(Comparator.comparingDouble(flow -> flow.feature().duty().fraction()));
    }

    /** The fastest speed at which what there is still gives the rate, without any spare; empty when it gives nothing. */
    Optional<GroundSpeed> fastest() {
        double share = margin.available().value() / margin.needed().m3PerSecond();
        double speed = planter.speed().metresPerSecond() * share;
        return speed > 0 && speed <= 30 ? Optional.of(new GroundSpeed(speed)) : Optional.empty();
    }
}
