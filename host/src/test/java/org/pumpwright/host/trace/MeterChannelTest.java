package org.pumpwright.host.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.KPoint;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;

final class MeterChannelTest {
    private static final KFactor SLOW = KFactor.ofPulsesPerUsGallon(2000);
    private static final KFactor FAST = KFactor.ofPulsesPerUsGallon(3000);

    private static MeterChannel meter(KCurve k, double relativeUncertainty) {
        return new MeterChannel(0, k, relativeUncertainty, new FlowRate(0), Certificate.undated("none"));
    }

    private static KCurve table(double share) {
        return new KCurve(List.of(
                new KPoint(FlowRate.ofGallonsPerMinute(1), new KFactor(SLOW.pulsesPerM3() * share)),
                new KPoint(FlowRate.ofGallonsPerMinute(3), new KFactor(FAST.pulsesPerM3() * share))));
    }

    @Test
    void withOneKTheFlowsUncertaintyHoldsFrequencyAndKAsShares() {
        Uncertain flow = meter(KCurve.constant(FAST), 0.004).flow(new Uncertain(100, 0.3, 12));
        assertThat(new FlowRate(flow.value()).gallonsPerMinute()).isCloseTo(2, within(1e-12));
        assertThat(flow.relative()).isCloseTo(0.005, within(1e-12));
    }

    /** Between the points K is 2500 at 2 gal/min; a K that is 0.1 % higher everywhere moves the flow by the solved amount. */
    @Test
    void withATableAnErrorOfKIsCarriedThroughTheSolution() {
        double hertz = 2 * 2500 / 60.0;
        Uncertain flow = meter(table(1), 0.001).flow(new Uncertain(hertz, 0, 12));
        assertThat(new FlowRate(flow.value()).gallonsPerMinute()).isCloseTo(2, within(1e-9));
        double moved = meter(table(1.001), 0).flow(hertz).m3PerSecond();
        assertThat(flow.standardUncertainty()).isCloseTo(flow.value() - moved, within(0.002 * (flow.value() - moved)));
    }

    @Test
    void noPulsesAreNoFlow() {
        assertThat(meter(table(1), 0.01).flow(Uncertain.of(0, 0.1)).value()).isZero();
    }
}
