package org.pumpwright.host.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.curve.KnownGoodUnit.Point;

class CurvePopulationTest {
    private static final double[] VOLTS = {2, 4, 6, 8, 10, 12};

    @Test
    void tellsTheUnitsFromTheRuns() {
        CurvePopulation found = CurvePopulation.of(runs(200, 2, 0.03, 0.01), 4);
        assertThat(found.units()).isEqualTo(200);
        assertThat(found.runs()).isEqualTo(400);
        assertThat(found.features()).isEqualTo(8);
        for (CurvePoint point : found.points()) {
            SpreadParts flow = point.flowParts().orElseThrow();
            assertThat(flow.unitSpread()).isCloseTo(0.03, within(0.004));
            assertThat(flow.runSpread()).isCloseTo(0.01, within(0.0012));
            assertThat(point.flowSpread()).isCloseTo(Math.sqrt(0.0010), within(0.004));
            assertThat(flow.meanUncertainty()).isCloseTo(0.03 / Math.sqrt(200), within(0.0005));
            assertThat(point.flowM3PerSecond())
                    .isCloseTo(1e-5 * point.effectiveVolts(), within(1e-7 * point.effectiveVolts()));
        }
    }

    @Test
    void theOrderOfTheRunsChangesNothing() {
        List<KnownGoodRun> runs = runs(6, 2, 0.03, 0.01);
        List<KnownGoodRun> shuffled = new ArrayList<>(runs);
        Collections.shuffle(shuffled, new Random(1));
        CurvePopulation one = CurvePopulation.of(runs, 5);
        CurvePopulation other = CurvePopulation.of(shuffled, 5);
        assertThat(other.jointFactor()).isCloseTo(one.jointFactor(), within(1e-9));
        assertThat(other.points().get(2).flowSpread())
                .isCloseTo(one.points().get(2).flowSpread(), within(1e-12));
    }

    @Test
    void oneFactorForAllPointsCostsLittleMoreThanForOne() {
        // All points of a unit move together, and flow and current too.
        CurvePopulation found = CurvePopulation.of(runs(20, 2, 0.03, 0.0001), 12);
        double one = JointBand.bonferroni(1, 20, 19, 0.99);
        assertThat(found.jointFactor()).isBetween(one - 0.02, one + 0.15);
        assertThat(found.jointFactor()).isLessThan(JointBand.bonferroni(24, 20, 19, 0.99) - 1);
    }

    @Test
    void twoUnitsAreNoPopulation() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePopulation.of(runs(2, 3, 0.03, 0.01), 5))
                .withMessage("a healthy curve needs at least 3 known-good units, there are 2");
    }

    @Test
    void aPumpThatGivesNothingHasNoCurve() {
        List<KnownGoodRun> dry = runs(3, 1, 0, 0).stream()
                .map(run -> new KnownGoodRun(
                        run.serial(),
                        new KnownGoodUnit(run.readings().points().stream()
                                .map(p -> new Point(p.effectiveVolts(), 0, p.motorAmps()))
                                .toList())))
                .toList();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePopulation.of(dry, 5))
                .withMessageContaining("the mean flow of the known-good units is 0.00 at 1.80 effective volts");
    }

    private static List<KnownGoodRun> runs(int units, int runs, double unitSpread, double runSpread) {
        Random random = new Random(4);
        List<KnownGoodRun> all = new ArrayList<>();
        for (int unit = 0; unit < units; unit++) {
            double own = 1 + unitSpread * random.nextGaussian();
            for (int run = 0; run < runs; run++) {
                double scale = own + runSpread * random.nextGaussian();
                all.add(new KnownGoodRun(
                        "U" + unit,
                        new KnownGoodUnit(DoubleStream.of(VOLTS)
                                .mapToObj(v -> new Point(v, scale * 1e-5 * v, scale * (1 + v)))
                                .toList())));
            }
        }
        return all;
    }
}
