package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ThermistorTest {
    private static final double ZERO_CELSIUS = 273.15;
    private static final SteinhartHart CURVE = SampleCalibrations.CURVE;
    private static final Thermistor THERMISTOR = SampleCalibrations.THERMISTOR;

    /**
     * The coefficients come from one source, the guide of an analogue temperature-sensor module; the resistances from another,
     * the table in appendix C of the instruction manual of a data-logger's thermistor probe (10 kohm at 25 degC).
     */
    @ParameterizedTest
    @CsvSource({"-40, 336103.2", "-20, 97006.9", "-10, 55303.9", "0, 32650.9", "1, 31030.8"})
    void publishedCoefficientsAgreeWithAPublishedTable(double celsius, double ohms) {
        assertThat(CURVE.kelvin(ohms) - ZERO_CELSIUS).isCloseTo(celsius, within(0.001));
        assertThat(CURVE.ohms(celsius + ZERO_CELSIUS)).isCloseTo(ohms, within(3e-5 * ohms));
    }

    /**
     * Three points of a published table of a 10 kohm thermistor labelled B = 3950 (-20, 25 and 70 degC) give coefficients that
     * return the points between. One B for all would be 1.6 K off at the cold end.
     */
    @ParameterizedTest
    @CsvSource({"-12, 61026.4", "20.5, 12213.8", "29.5, 8228.1", "61, 2382"})
    void threePointsOfATableGiveTheOthers(double celsius, double ohms) {
        SteinhartHart fitted = new SteinhartHart(0.00117887909, 0.000226052229, 1.19182645e-7);
        assertThat(fitted.kelvin(ohms) - ZERO_CELSIUS).isCloseTo(celsius, within(0.01));
    }

    @Property(seed = "5")
    void everyTemperatureHasItsResistance(@ForAll @DoubleRange(min = 200, max = 500) double kelvin) {
        assertThat(CURVE.kelvin(CURVE.ohms(kelvin))).isCloseTo(kelvin, within(1e-9));
    }

    @Test
    void aCurveWithoutItsCubeIsTheOneWithB() {
        SteinhartHart beta = new SteinhartHart(1 / 298.15 - Math.log(10_000) / 3950, 1.0 / 3950, 0);
        assertThat(beta.kelvin(10_000)).isCloseTo(298.15, within(1e-9));
        assertThat(beta.ohms(298.15)).isCloseTo(10_000, within(1e-6));
    }

    @Test
    void equalResistancesDivideTheReferenceInHalf() {
        assertThat(THERMISTOR.si(32_768) - ZERO_CELSIUS).isCloseTo(25, within(0.001));
        assertThat(THERMISTOR.code(298.15)).isCloseTo(32_768, within(1.0));
    }

    @Test
    void moreSignalIsColder() {
        assertThat(THERMISTOR.si(40_000)).isLessThan(THERMISTOR.si(20_000));
    }

    @Test
    void anOpenOrShortedThermistorStaysAtTheEndOfItsRangeAndIsTold() {
        assertThat(THERMISTOR.si(65_535)).isEqualTo(253.15);
        assertThat(THERMISTOR.trouble(65_535))
                .contains("wire off, or colder than the -20.0 °C to which its curve was fitted");
        assertThat(THERMISTOR.si(0)).isEqualTo(343.15);
        assertThat(THERMISTOR.trouble(0)).contains("shorted, or hotter than the 70.0 °C to which its curve was fitted");
    }

    /** At 25 degC a 10 kohm thermistor changes by about 4.4 % a kelvin, so that 0.44 % of resistance are 0.1 K. */
    @Test
    void theResistorsUncertaintyBecomesKelvin() {
        Thermistor loose = new Thermistor(CURVE, 10_000, 253.15, 343.15, UncertaintyParts.of(0.0044, 0));
        double before = CURVE.ohms(298.15 - 0.005);
        double after = CURVE.ohms(298.15 + 0.005);
        double sharePerKelvin = Math.log(before / after) / 0.01;
        assertThat(loose.standardUncertainty(298.15)).isCloseTo(0.0044 / sharePerKelvin, within(1e-6));
        assertThat(loose.standardUncertainty(298.15)).isCloseTo(0.1, within(0.002));
    }

    @Test
    void anEmptyRangeIsRefused() {
        UncertaintyParts none = UncertaintyParts.of(0, 0);
        assertThatThrownBy(() -> new Thermistor(CURVE, 10_000, 300, 290, none))
                .hasMessage("the fitted range runs from 300.0 to 290.0 K, the first must be below the second");
        assertThatThrownBy(() -> new SteinhartHart(0.001, 0, 0))
                .hasMessage("Steinhart-Hart b is 0.0 1/K, allowed are 1.0E-6 to 0.1 1/K");
    }
}
