package org.pumpwright.host.demand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;

/** Planters and products against worked examples of extension services. */
final class PlanterTest {
    /** Each to the rounding it was printed with. */
    @ParameterizedTest(name = "{5}")
    @CsvSource({
        "20, 4, 20, 0.27, 0.005, 'Cornell Cooperative Extension crop guide 2024, 7.6'",
        "30, 7, 30, 1.0, 0.07, 'Montana State Univ. Extension MT 2000-14, example 3b (printed to one figure)'",
    })
    void aRowNeedsThePublishedFlow(
            double gpa, double mph, double inches, double printedGpm, double printedTo, String source) {
        Planter planter = new Planter(
                1,
                inches * Planter.METRES_PER_INCH,
                ApplicationRate.ofGallonsPerAcre(gpa),
                GroundSpeed.ofMilesPerHour(mph));

        assertThat(planter.perRow().gallonsPerMinute()).as(source).isCloseTo(printedGpm, within(printedTo));
    }

    /** Albany County (Wyoming) weed and pest page: 3.75 gal/min over 222 in at 5 mph is 20 gal/acre. */
    @Test
    void aFlowGivesThePublishedRate() {
        ApplicationRate rate = Planter.rateOf(
                FlowRate.ofGallonsPerMinute(3.75), 1, 222 * Planter.METRES_PER_INCH, GroundSpeed.ofMilesPerHour(5));

        assertThat(rate.gallonsPerAcre()).isCloseTo(20, within(0.1));
    }

    /** Montana State Univ. Extension MT 2000-14, appendix K, example 3a: 10 gal/min, 30 gal/acre, 420 in: 4.7 mph. */
    @Test
    void aFlowAllowsThePublishedSpeed() {
        Planter planter = new Planter(
                1, 420 * Planter.METRES_PER_INCH, ApplicationRate.ofGallonsPerAcre(30), GroundSpeed.ofMilesPerHour(1));

        assertThat(planter.speedAt(FlowRate.ofGallonsPerMinute(10)).milesPerHour())
                .isCloseTo(4.7, within(0.05));
    }

    /**
     * The formula of the Mesa County (Colorado) weed board, gpa = 495 gpm / (mph ft), turned round: 15 gal/acre at 6 mph on 60
     * ft.
     */
    @Test
    void aBoomNeedsTheFlowOfItsSwath() {
        Planter boom = new Planter(
                36, 20 * Planter.METRES_PER_INCH, ApplicationRate.ofGallonsPerAcre(15), GroundSpeed.ofMilesPerHour(6));

        assertThat(boom.whole().gallonsPerMinute()).isCloseTo(15 * 6 * 60 / 495.0, within(1e-9));
    }

    /** A state exam's formula sheet prints 327 for 0.15 gal/min, 48 in and 5 mph, having lost the 88; 3.71 is right. */
    @Test
    void theKnownWrongPublishedValueIsNotReproduced() {
        ApplicationRate rate = Planter.rateOf(
                FlowRate.ofGallonsPerMinute(0.15), 1, 48 * Planter.METRES_PER_INCH, GroundSpeed.ofMilesPerHour(5));

        assertThat(rate.gallonsPerAcre()).isCloseTo(3.71, within(0.005));
    }

    @Property(tries = 200, seed = "5940")
    void theConstantIs5940(
            @ForAll @DoubleRange(min = 1, max = 100) double gpa,
            @ForAll @DoubleRange(min = 1, max = 12) double mph,
            @ForAll @DoubleRange(min = 5, max = 60) double inches) {
        Planter planter = new Planter(
                16,
                inches * Planter.METRES_PER_INCH,
                ApplicationRate.ofGallonsPerAcre(gpa),
                GroundSpeed.ofMilesPerHour(mph));

        assertThat(planter.perRow().gallonsPerMinute())
                .isCloseTo(gpa * mph * inches / 5940, within(1e-12 * gpa * mph * inches));
        assertThat(planter.whole().m3PerSecond()).isEqualTo(planter.perRow().m3PerSecond() * 16);
    }

    /** Metric: L/min = L/ha x km/h x m / 600. */
    @Test
    void metricUnitsGiveTheMetricFormula() {
        Planter planter =
                new Planter(8, 0.762, ApplicationRate.ofLitresPerHectare(46.77), GroundSpeed.ofKilometresPerHour(8.85));

        assertThat(planter.perRow().litresPerMinute()).isCloseTo(46.77 * 8.85 * 0.762 / 600, within(1e-12));
    }

    /** Pounds a gallon and factor as the Univ. of Nebraska (2016) and the Univ. of Georgia (2026) print them. */
    @ParameterizedTest
    @CsvSource({
        "6.6, 0.89",
        "7.0, 0.92",
        "8.0, 0.98",
        "8.34, 1.00",
        "9.0, 1.04",
        "10.65, 1.13",
        "10.8, 1.14",
        "11.0, 1.15",
        "11.2, 1.16",
        "11.06, 1.15",
        "11.4, 1.17",
        "11.5, 1.17",
        "11.6, 1.18",
        "12.0, 1.20",
        "14.0, 1.30"
    })
    void theFactorOfAProductIsThePublishedOne(double pounds, String factor) {
        assertThat(String.format(
                        Locale.ROOT,
                        "%.2f",
                        ProductFactor.ofPoundsPerUsGallon(pounds).rootOfSpecificGravity()))
                .isEqualTo(factor);
    }

    @Test
    void waterAndProductConvertBackAndForth() {
        ProductFactor uan = ProductFactor.ofPoundsPerUsGallon(10.65);
        FlowRate flow = FlowRate.ofGallonsPerMinute(2);

        assertThat(uan.asWater(flow).gallonsPerMinute()).isCloseTo(2 * 1.1300, within(2e-4));
        assertThat(uan.ofWater(uan.asWater(flow)).m3PerSecond()).isCloseTo(flow.m3PerSecond(), within(1e-18));
    }

    @Test
    void theUncertaintyOfTheFlowDecidesHowSureTheMarginIs() {
        FlowRate needed = new FlowRate(1e-4);

        assertThat(margin(needed, 1.20e-4, 2e-6).finding()).isEqualTo(Margin.Finding.ENOUGH);
        assertThat(margin(needed, 1.18e-4, 2e-6).finding()).isEqualTo(Margin.Finding.TIGHT);
        assertThat(margin(needed, 1.03e-4, 2e-6).finding()).isEqualTo(Margin.Finding.NOT_CERTAIN);
        assertThat(margin(needed, 0.95e-4, 2e-6).finding()).isEqualTo(Margin.Finding.TOO_LITTLE);
        assertThat(margin(needed, 1.20e-4, 2e-6).expandedUncertainty()).isCloseTo(0.04, within(1e-12));
    }

    @Test
    void whatCannotBeAPlanterIsRefused() {
        assertThatThrownBy(
                        () -> new Planter(0, 0.762, ApplicationRate.ofGallonsPerAcre(5), GroundSpeed.ofMilesPerHour(5)))
                .hasMessage("number of rows is 0.0, allowed are 1.0 to 200.0");
        assertThatThrownBy(() -> ProductFactor.ofPoundsPerUsGallon(1))
                .hasMessageStartingWith("density is 119.826")
                .hasMessageEndingWith(" kg/m3, allowed are 500.0 to 2500.0 kg/m3");
    }

    private static Margin margin(FlowRate needed, double available, double u) {
        return new Margin(needed, Uncertain.of(available, u), 0.15);
    }
}
