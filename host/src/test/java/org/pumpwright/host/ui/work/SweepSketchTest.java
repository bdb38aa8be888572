package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.ui.WindowTest;
import org.pumpwright.host.ui.work.SweepView.Lies;

/** The picture of a sweep while it is made. */
final class SweepSketchTest {
    @TempDir
    Path records;

    private final SweepSketch sketch = new SweepSketch();
    private HealthyCurve curve;
    private Duty judged;

    @BeforeEach
    void begin() throws Exception {
        Shelf shelf = WindowTest.services(records).shelf();
        curve = shelf.curve("demo-pump");
        var plan = shelf.plan("quick-12v-pump");
        judged = plan.judged().get(1);
        sketch.begin(plan, Optional.of(curve));
    }

    @Test
    void theBandIsTheHealthyRangeFromEndToEnd() {
        var band = sketch.view().band();
        assertThat(band.get(0).volts()).isEqualTo(curve.points().get(0).effectiveVolts());
        Band middle = curve.flow(band.get(30).volts());
        assertThat(band.get(30).low()).isEqualTo(middle.low());
        assertThat(band.get(30).high()).isEqualTo(middle.high());
    }

    @Test
    void aPointLiesWhereItsErrorBarSaysSo() {
        Band band = curve.flow(volts());
        assertThat(lies(band.centre(), 0.001)).isEqualTo(Lies.INSIDE);
        assertThat(lies(band.low() * 0.9, 0.001)).isEqualTo(Lies.BELOW);
        assertThat(lies(band.high() * 1.1, 0.001)).isEqualTo(Lies.ABOVE);
        assertThat(lies(band.low() * 1.001, 0.01)).isEqualTo(Lies.NEAR);
    }

    @Test
    void aFlowThatIsNotKnownHasNoErrorBarAndAPointForInformationIsNotHeldAgainstTheBand() {
        sketch.done(new PlanPoint(9, Leg.DOWN, judged), values(0, Double.POSITIVE_INFINITY));
        var dot = sketch.view().dots().get(0);
        assertThat(dot.half()).isZero();
        assertThat(dot.lies()).isEqualTo(Lies.INSIDE);
    }

    @Test
    void theRingIsThereOnlyWhileTheUnitIsDriven() {
        sketch.live(judged, values(1e-4, 0.01));
        assertThat(sketch.view().now().orElseThrow().volts()).isCloseTo(volts(), within(1e-9));
        sketch.live(Duty.ZERO, values(0, 1));
        assertThat(sketch.view().now()).isEmpty();
    }

    private double volts() {
        return judged.fraction() * 13.5 - (1 - judged.fraction()) * curve.freewheelVolts();
    }

    private Lies lies(double flow, double uncertainty) {
        sketch.done(new PlanPoint(2, Leg.UP, judged), values(flow, uncertainty));
        var dots = sketch.view().dots();
        return dots.get(dots.size() - 1).lies();
    }

    private static LiveValues values(double flow, double uncertainty) {
        return new LiveValues(new FlowRate(flow), uncertainty, 5, 13.5);
    }
}
