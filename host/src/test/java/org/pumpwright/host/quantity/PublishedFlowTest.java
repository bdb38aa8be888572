package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** K-factors, test flows and conversions as others have printed them. Makers of meters are not named; their manuals are public. */
final class PublishedFlowTest {
    private static final double CUBIC_INCH_M3 = 0.0254 * 0.0254 * 0.0254;
    private static final double M3_PER_GALLON = 231 * CUBIC_INCH_M3;

    /**
     * Owner's manual of a turbine meter: five flows, frequency, K. The nominal K is the middle between the largest and the smallest.
     * Flows are printed to 0.1 or 0.01 gal/min, one of them rounded the wrong way; the deviations from the nominal K to 0.01 %, under
     * the heading of full scale, though they are shares of the reading.
     */
    @ParameterizedTest
    @CsvSource({
        "769.7, 3078.59, 14.9, 0.05, -0.65",
        "466.1, 3086.75, 9.03, 0.01, -0.38",
        "285.2, 3118.64, 5.52, 0.01, 0.65",
        "171.7, 3103.95, 3.32, 0.01, 0.17",
        "103.6, 3101.80, 2.01, 0.01, 0.10"
    })
    void fivePointsOfATurbineMeter(double hertz, double k, double gpm, double digit, double percent) {
        KFactor nominal = KFactor.ofPulsesPerUsGallon((3118.64 + 3078.59) / 2);
        assertThat(nominal.flowAt(hertz).gallonsPerMinute()).isCloseTo(gpm, within(digit));
        double off = KFactor.ofPulsesPerUsGallon(k).pulsesPerM3() / nominal.pulsesPerM3() - 1;
        assertThat(100 * off).isCloseTo(percent, within(0.005));
    }

    /** A totalizer's manual: 650 Hz at 85 gal/min are K 458.82. */
    @Test
    void kFromFullScale() {
        assertThat(KFactor.ofPulsesPerUsGallon(458.82).flowAt(650).gallonsPerMinute())
                .isCloseTo(85, within(85 * 0.005 / 458.82));
    }

    /** The same manual: 4.3 ft/s in a pipe of 3.068 in are 99.1 gal/min, and 700 Hz then a K of 423.9, printed from rounded steps. */
    @Test
    void kFromTheVelocityInAPipe() {
        double area = Math.PI / 4 * Math.pow(3.068 * 0.0254, 2);
        FlowRate flow = new FlowRate(4.3 * 0.3048 * area);
        assertThat(area / (0.0254 * 0.0254)).isCloseTo(7.39, within(0.005));
        assertThat(flow.gallonsPerMinute()).isCloseTo(99.1, within(0.05));
        assertThat(new KFactor(700 / flow.m3PerSecond()).pulsesPerUsGallon()).isCloseTo(423.9, within(0.1));
    }

    /** State agriculture department, prover of 5 gal: a cubic inch is 0.8658 gal in 1000, and 6 of them "almost 260" in 50 000. */
    @Test
    void cubicInchesInAFiveGallonProver() {
        double share = CUBIC_INCH_M3 / Volume.ofUsGallons(5).m3();
        assertThat(1000 * share).isCloseTo(0.8658, within(5e-5));
        assertThat(50_000 * 6 * share).isBetween(259.0, 260.0);
    }

    /**
     * Test flows of displacement meters, COMAR 20.70.06.03, gal/min: the lowest of a 5/8 inch meter and the highest of a 1 inch meter.
     * With 231 in3 to the gallon, worked out apart.
     */
    @ParameterizedTest
    @CsvSource({"0.25, 0.946352946", "50, 189.2705892"})
    void testFlowsInLitresPerMinute(double gpm, double litresPerMinute) {
        assertThat(FlowRate.ofGallonsPerMinute(gpm).litresPerMinute()).isCloseTo(litresPerMinute, within(1e-9));
    }

    /** Factors as exact fractions, from 1 in = 25.4 mm and 1 gal = 231 in3 (NIST Handbook 44, appendix C). */
    @Test
    void gallonsFromExactFractions() {
        assertThat(Volume.M3_PER_US_GALLON).isCloseTo(473_176_473.0 / 125_000_000_000.0, within(1e-18));
        assertThat(M3_PER_GALLON).isCloseTo(Volume.M3_PER_US_GALLON, within(1e-17));
        assertThat(FlowRate.ofGallonsPerMinute(1).m3PerSecond())
                .isCloseTo(157_725_491.0 / 2_500_000_000_000.0, within(1e-19));
        assertThat(FlowRate.ofGallonsPerMinute(1).litresPerMinute()).isCloseTo(3.785411784, within(1e-12));
        assertThat(KFactor.ofPulsesPerUsGallon(1).pulsesPerLitre())
                .isCloseTo(125_000_000.0 / 473_176_473.0, within(1e-15));
        assertThat(Volume.ofUsGallons(1.200949925504855).litres()).isCloseTo(4.54609, within(1e-12));
    }
}
