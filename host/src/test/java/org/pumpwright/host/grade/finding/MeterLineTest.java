package org.pumpwright.host.grade.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;

class MeterLineTest {
    private static final double LIMIT = 800_000;
    private static final double LAG = 4e-7;
    private static final double[] FLOWS = {2e-5, 4e-5, 8e-5, 1.5e-4, 2.5e-4};

    private static List<MeterLine.Point> points(double relative, Random random) {
        List<MeterLine.Point> points = new ArrayList<>();
        for (double flow : FLOWS) {
            double k = LIMIT * (1 - LAG / flow) * (1 + relative * random.nextGaussian());
            points.add(new MeterLine.Point(flow, Uncertain.of(k, Math.max(1, k * relative))));
        }
        return points;
    }

    @Test
    void theLineOfExactPointsGivesLimitAndLagBack() {
        MeterLine line = MeterLine.of(points(0, new Random(1))).orElseThrow();
        assertThat(line.limit().value()).isCloseTo(LIMIT, within(1e-3));
        assertThat(line.lag().value()).isCloseTo(LAG, within(1e-13));
        assertThat(line.at(1e-4).value()).isCloseTo(LIMIT * (1 - LAG / 1e-4), within(1e-3));
    }

    /** Two standard uncertainties hold the truth in 95 of 100; with three degrees of freedom and the Birge ratio, 90 and more. */
    @Test
    void limitAndLagHoldTheTruthAsOftenAsStated() {
        Random random = new Random(7);
        int limit = 0;
        int lag = 0;
        for (int i = 0; i < 500; i++) {
            MeterLine line = MeterLine.of(points(0.002, random)).orElseThrow();
            limit += StepBench.holds(line.limit(), LIMIT) ? 1 : 0;
            lag += StepBench.holds(line.lag(), LAG) ? 1 : 0;
        }
        assertThat(limit).isGreaterThanOrEqualTo(450);
        assertThat(lag).isGreaterThanOrEqualTo(450);
    }

    @Test
    void twoFlowsReadTwiceAreTooFew() {
        List<MeterLine.Point> points = new ArrayList<>(points(0, new Random(1)).subList(0, 2));
        points.addAll(points(0, new Random(1)).subList(0, 2));
        assertThat(MeterLine.flows(points)).isEqualTo(2);
        assertThat(MeterLine.of(points)).isEmpty();
    }
}
