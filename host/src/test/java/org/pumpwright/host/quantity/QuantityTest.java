package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantityTest {
    @Test
    void aUsGallonIs231CubicInches() {
        // NIST Handbook 44, appendix C: 1 gal = 231 in3; 1 in = 25.4 mm exactly.
        assertThat(Volume.ofUsGallons(1).m3()).isCloseTo(231 * Math.pow(0.0254, 3), within(1e-18));
        assertThat(Volume.ofUsGallons(1).litres()).isCloseTo(3.785411784, within(1e-12));
    }

    @Test
    void aPsiIsAPoundForceOnASquareInch() {
        // NIST SP 811, appendix B.8: 1 psi = 6.894 757 E+03 Pa; from 0.45359237 kg, 9.80665 m/s2 and 0.0254 m.
        assertThat(Pressure.ofPsi(1).pascals()).isCloseTo(0.45359237 * 9.80665 / (0.0254 * 0.0254), within(1e-6));
        assertThat(Pressure.ofPsi(1).pascals()).isCloseTo(6.894757e3, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({"0, 32", "100, 212", "-40, -40", "20, 68"})
    void celsiusAndFahrenheitMeetAtTheirFixedPoints(double celsius, double fahrenheit) {
        // Definition of the scales.
        assertThat(Temperature.ofCelsius(celsius).fahrenheit()).isCloseTo(fahrenheit, within(1e-9));
    }

    @Test
    void pulsesAndFlowBelongTogether() {
        // Hz = K * gal/min / 60: 3000 pulses a gallon at 2 gal/min are 100 Hz.
        assertThat(KFactor.ofPulsesPerUsGallon(3000).flowAt(100).gallonsPerMinute())
                .isCloseTo(2, within(1e-12));
        assertThat(KFactor.ofPulsesPerUsGallon(3000).pulsesPerLitre()).isCloseTo(3000 / 3.785411784, within(1e-9));
    }

    @Property(seed = "1")
    void unitsThereAndBackChangeNothing(@ForAll @DoubleRange(min = 0.01, max = 1000) double value) {
        assertThat(FlowRate.ofGallonsPerMinute(value).gallonsPerMinute()).isCloseTo(value, within(value * 1e-12));
        assertThat(Pressure.ofPsi(value).psi()).isCloseTo(value, within(value * 1e-12));
        assertThat(KFactor.ofPulsesPerUsGallon(value).pulsesPerUsGallon()).isCloseTo(value, within(value * 1e-12));
    }

    @Property(seed = "2")
    void everyStepOfDutySurvivesItsPercentage(@ForAll @IntRange(min = 0, max = 65536) int parts) {
        assertThat(Duty.ofPercent(new Duty(parts).percent()).parts()).isEqualTo(parts);
    }

    @Test
    void printingUsesAPointInEveryLanguage() {
        assertThat(FlowRate.ofGallonsPerMinute(2.0612).print(UnitSystem.US)).isEqualTo("2.06 gal/min");
        assertThat(FlowRate.ofGallonsPerMinute(2.0612).print(UnitSystem.METRIC)).isEqualTo("7.80 L/min");
        assertThat(Pressure.ofPsi(11.84).print(UnitSystem.US)).isEqualTo("11.8 psi");
        assertThat(Pressure.ofPsi(11.84).print(UnitSystem.METRIC)).isEqualTo("82 kPa");
        assertThat(Temperature.ofCelsius(18.4).print(UnitSystem.US)).isEqualTo("65 °F");
        assertThat(Duty.ofPercent(30).print()).isEqualTo("30 %");
        assertThat(new Duty(77 * 256).print()).isEqualTo("30.1 %");
    }

    @Test
    void whatIsOutOfRangeIsRefusedWithValueAndLimit() {
        assertThatThrownBy(() -> Duty.ofPercent(101)).hasMessage("duty is 101.0 %, allowed are 0.0 to 100.0 %");
        assertThatThrownBy(() -> new Duty(65537)).hasMessage("duty is 65537 parts, allowed are 0 to 65536");
        assertThatThrownBy(() -> new FlowRate(Double.NaN)).hasMessage("flow is NaN, it must be a finite number");
        assertThatThrownBy(() -> new KFactor(0)).hasMessageStartingWith("K-factor is 0.0 pulses/m3");
        assertThatThrownBy(() -> new Uncertain(1, -0.1, 5)).hasMessageStartingWith("standard uncertainty is -0.1");
        assertThatThrownBy(() -> new Uncertain(1, 0.1, 0))
                .hasMessage("degrees of freedom are 0.0, they must be above 0");
    }
}
