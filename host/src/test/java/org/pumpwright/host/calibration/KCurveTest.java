package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

final class KCurveTest {
    /** The worked calibration of a flow meter's programming manual (November 2013, page 19): gal/min and pulses/gal. */
    private static final KCurve PUBLISHED = new KCurve(List.of(
            point(2.00, 3101.80),
            point(3.32, 3103.95),
            point(5.49, 3118.64),
            point(9.06, 3086.75),
            point(15.0, 3078.59)));

    /** A turbine that slips at low flow, invented. */
    private static final KCurve STEEP =
            new KCurve(List.of(point(0.2, 2000), point(0.5, 2600), point(1, 2900), point(2, 3000), point(6, 2500)));

    private static KPoint point(double gpm, double pulsesPerGallon) {
        return new KPoint(FlowRate.ofGallonsPerMinute(gpm), KFactor.ofPulsesPerUsGallon(pulsesPerGallon));
    }

    /** Frequency and flow of the same page; it prints frequencies to 0.1 Hz that its K meet within 0.2 %. */
    @ParameterizedTest
    @CsvSource({"103.6, 2.00", "171.7, 3.32", "285.2, 5.49", "466.1, 9.06", "769.7, 15.0"})
    void thePublishedFrequenciesGiveThePublishedFlows(double hertz, double gpm) {
        assertThat(PUBLISHED.flowAt(hertz).gallonsPerMinute()).isCloseTo(gpm, within(0.002 * gpm));
    }

    /** Known from meter manuals: K of 10000 pulses/gal at 5000 Hz is 30 gal/min. */
    @Test
    void oneKServesEveryFlow() {
        KCurve one = KCurve.constant(KFactor.ofPulsesPerUsGallon(10_000));
        assertThat(one.flowAt(5000).gallonsPerMinute()).isCloseTo(30, within(1e-9));
        assertThat(one.flowAt(0).m3PerSecond()).isZero();
        assertThat(one.at(FlowRate.ofGallonsPerMinute(2)).pulsesPerUsGallon()).isCloseTo(10_000, within(1e-8));
        assertThat(one.flowPerHertz(FlowRate.ofGallonsPerMinute(2)))
                .isCloseTo(1 / KFactor.ofPulsesPerUsGallon(10_000).pulsesPerM3(), within(1e-20));
    }

    @Property(seed = "3")
    void theFlowOfAFrequencyGivesThatFrequency(@ForAll @DoubleRange(min = 0.01, max = 9) double gpm) {
        for (KCurve curve : List.of(PUBLISHED, STEEP)) {
            FlowRate flow = FlowRate.ofGallonsPerMinute(gpm);
            double hertz = flow.m3PerSecond() * curve.at(flow).pulsesPerM3();
            assertThat(curve.flowAt(hertz).gallonsPerMinute()).isCloseTo(gpm, within(1e-10 * gpm));
        }
    }

    @Property(seed = "3")
    void theSensitivityIsTheSlopeOfTheFlow(@ForAll @DoubleRange(min = 0.01, max = 9) double gpm) {
        FlowRate flow = FlowRate.ofGallonsPerMinute(gpm);
        double hertz = flow.m3PerSecond() * STEEP.at(flow).pulsesPerM3();
        double step = 1e-6 * hertz;
        double slope = (STEEP.flowAt(hertz + step).m3PerSecond()
                        - STEEP.flowAt(hertz - step).m3PerSecond())
                / (2 * step);
        boolean atACorner =
                STEEP.points().stream().anyMatch(p -> Math.abs(p.flow().gallonsPerMinute() - gpm) < 1e-4 * gpm);
        if (!atACorner) {
            assertThat(STEEP.flowPerHertz(flow)).isCloseTo(slope, within(1e-6 * slope));
        }
    }

    @Test
    void beyondTheTableTheEndsHold() {
        assertThat(STEEP.at(FlowRate.ofGallonsPerMinute(0.1)).pulsesPerUsGallon())
                .isCloseTo(2000, within(1e-9));
        assertThat(STEEP.at(FlowRate.ofGallonsPerMinute(8)).pulsesPerUsGallon()).isCloseTo(2500, within(1e-9));
    }

    @Test
    void tablesThatHaveNoAnswerAreRefused() {
        assertThatThrownBy(() -> new KCurve(List.of(point(2, 3000), point(2, 3010))))
                .hasMessage("the K table goes from 2.000 to 2.000 gal/min, each flow must be above the one before");
        assertThatThrownBy(() -> new KCurve(List.of(point(1, 3000), point(2, 1000))))
                .hasMessage("K falls so fast from 1.000 to 2.000 gal/min that more flow would give fewer pulses");
        assertThatThrownBy(() -> new KCurve(List.of())).hasMessage("a meter needs a K-factor: none is given");
    }
}
