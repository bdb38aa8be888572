package org.pumpwright.host.calibrate.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DensityTest {
    /** Tanaka et al., Metrologia 38 (2001) 301, table: printed to 0.1 g/m3. */
    @ParameterizedTest
    @CsvSource({"0, 999.8428", "10, 999.7027", "15, 999.1026", "20, 998.2067", "30, 995.6488"})
    void airFreeWaterIsAsPrintedByTanaka(double celsius, double kgPerM3) {
        assertThat(WaterDensity.airFree(celsius)).isCloseTo(kgPerM3, within(5.1e-5));
    }

    /** Kell's formula as restated in J. Res. NIST 97 (1992) 335, another fit to other data; on the older temperature scale. */
    @ParameterizedTest
    @CsvSource({"10, 999.699634", "20, 998.204132", "30, 995.647259", "40, 992.215767"})
    void kellsOlderFormulaAgreesWithinFourPartsInAMillion(double celsius, double kgPerM3) {
        assertThat(WaterDensity.airFree(celsius)).isCloseTo(kgPerM3, within(0.004));
    }

    @Test
    void dissolvedAirTakesAFewGramsOffACubicMetre() {
        assertThat(WaterDensity.dissolvedAir(0)).isBetween(-0.005, -0.004);
        assertThat(WaterDensity.dissolvedAir(40)).isBetween(-0.005, 0.0);
        assertThat(WaterDensity.airSaturated(20)).isLessThan(WaterDensity.airFree(20));
        assertThat(new Water(true, 0.2, 0.2).kgPerM3(20)).isEqualTo(WaterDensity.airSaturated(20) + 0.2);
    }

    @Test
    void waterOutsideTheFormulaIsRefused() {
        assertThatThrownBy(() -> WaterDensity.airFree(40.5))
                .hasMessage("water temperature is 40.5 °C, allowed are 0.0 to 40.0 °C");
    }

    /**
     * Worked out apart from this program from the constants of Metrologia 45 (2008) 149; no published check value was found.
     * Columns: temperature, pressure, humidity, CIPM-2007, simple formula of OIML R 111-1, E.3.
     */
    @ParameterizedTest
    @CsvSource({
        "15, 101325, 20, 1.2239641, 1.2238346",
        "20, 101325, 20, 1.2024579, 1.2024140",
        "20, 101325, 80, 1.1961759, 1.1961746",
        "25, 100000, 80, 1.1576456, 1.1577109",
        "30, 95000, 20, 1.0883065, 1.0883520"
    })
    void moistAirByBothFormulas(double celsius, double pascals, double humidity, double cipm, double simple) {
        Air air = new Air(celsius, pascals, humidity);
        assertThat(AirDensity.cipm2007(air)).isCloseTo(cipm, within(2e-7));
        assertThat(AirDensity.simplified(air)).isCloseTo(simple, within(2e-7));
    }

    /**
     * Z factors of a pipette maker's manual, the grid of ISO 8655-6, microlitres per milligram; air at 50 % humidity and the
     * water's temperature. Printed to four decimals, so half a digit and what the manual's own rounding adds.
     */
    @ParameterizedTest
    @CsvSource({
        "15, 80.0, 1.0018",
        "15, 101.3, 1.0020",
        "17.5, 90.7, 1.0023",
        "18, 80.0, 1.0022",
        "20, 80.0, 1.0026",
        "20.5, 101.3, 1.0030",
        "25, 80.0, 1.0038",
        "25, 101.3, 1.0040",
        "30, 90.7, 1.0053",
        "30, 101.3, 1.0054"
    })
    void zFactorsOfPipettes(double celsius, double kilopascals, double z) {
        double air = AirDensity.simplified(new Air(celsius, kilopascals * 1000, 50));
        double litresPerKg = 1000 * Buoyancy.m3PerShownKg(air, WaterDensity.airFree(celsius));
        assertThat(litresPerKg).isCloseTo(z, within(5.65e-5));
    }

    /** Closed form, apart from this program: 20 kg shown, air 1.2 kg/m3, water of 20 degrees. */
    @Test
    void twentyKilogramsOfWater() {
        double water = WaterDensity.airFree(20);
        assertThat(Buoyancy.factor(1.2, water)).isCloseTo(1.0010534221486902, within(1e-12));
        assertThat(20 * Buoyancy.m3PerShownKg(1.2, water)).isCloseTo(0.02005703581150371, within(1e-14));
    }

    /** 28-0-0 has 10.70 lb/gal at 50 F and 10.64 at 70 F: Virginia Tech SPES-199, table 1, printed to 0.01 lb/gal. */
    @Test
    void aProductGoesWithItsTemperature() {
        double perPound = 0.45359237 / 3.785411784e-3;
        Product measured = new Product("28-0-0", 1278.5, 15.6, -0.65, 1);
        assertThat(measured.kgPerM3((50 - 32) / 1.8)).isCloseTo(10.70 * perPound, within(0.01 * perPound));
        assertThat(measured.kgPerM3((70 - 32) / 1.8)).isCloseTo(10.64 * perPound, within(0.01 * perPound));
        assertThatThrownBy(() -> measured.kgPerM3(40)).hasMessageContaining("product temperature is 40.0 °C");
    }

    @Property(seed = "61")
    void airLiftsEverythingLighterThanSteel(
            @ForAll @DoubleRange(min = 0.9, max = 1.3) double air,
            @ForAll @DoubleRange(min = 700, max = 2000) double liquid) {
        assertThat(Buoyancy.factor(air, liquid)).isGreaterThan(1).isLessThan(1.002);
        assertThat(Buoyancy.factor(air, liquid)).isGreaterThan(Buoyancy.factor(air, liquid + 1));
    }

    @Property(seed = "62")
    void waterAboveFourDegreesGetsLighterWhenWarmer(@ForAll @DoubleRange(min = 4.1, max = 39) double celsius) {
        assertThat(WaterDensity.airFree(celsius + 0.5)).isLessThan(WaterDensity.airFree(celsius));
        assertThat(WaterDensity.perKelvin(celsius)).isNegative();
    }
}
