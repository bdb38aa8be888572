package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.Pressure;

final class RatiometricTest {
    private static final CodeRange USUAL = Ratiometric.halfWayToTheRails(0.1, 0.9);
    private static final UncertaintyParts NONE = UncertaintyParts.of(0, 0);

    /** Data sheets of such sensors: 0.5 V, 2.5 V and 4.5 V of 5 V are no, half and full pressure; 10 bar and 100 psi. */
    @ParameterizedTest
    @CsvSource({"0.5, 0", "2.5, 0.5", "4.5, 1"})
    void theThreePointsOfEveryDataSheetAreMet(double volts, double ofFull) {
        Ratiometric tenBar = new Ratiometric(0.1, 0.9, 0, 1e6, NONE, USUAL);
        assertThat(tenBar.si(volts / 5 * 65_536)).isCloseTo(ofFull * 1e6, within(1e-6));
        double hundredPsi = Pressure.ofPsi(100).pascals();
        Ratiometric psi = new Ratiometric(0.1, 0.9, 0, hundredPsi, NONE, USUAL);
        assertThat(new Pressure(psi.si(volts / 5 * 65_536)).psi()).isCloseTo(ofFull * 100, within(1e-9));
    }

    /** At 4.9 V in place of 5 V and half pressure, a fixed 5 V reads 1.25 % of full range low; the share reads true. */
    @Test
    void theSuppliesErrorCancelsWhereTheReferenceIsTheSupply() {
        double signal = 4.9 * 0.5;
        assertThat(SampleCalibrations.PRESSURE.si(signal / 4.9 * 65_536)).isCloseTo(0.5e6, within(1e-6));
        double againstFixedReference = SampleCalibrations.PRESSURE.si(signal / 5 * 65_536);
        assertThat((againstFixedReference - 0.5e6) / 1e6).isCloseTo(-0.0125, within(1e-9));
    }

    @Test
    void aBrokenWireIsToldBeyondAQuarterVoltFromTheRails() {
        assertThat(USUAL.least() / 65_536 * 5).isCloseTo(0.25, within(1e-9));
        assertThat(USUAL.most() / 65_536 * 5).isCloseTo(4.75, within(1e-9));
        assertThat(SampleCalibrations.PRESSURE.trouble(0))
                .contains("the sensor's signal is at its minus: wire off, no supply, or shorted");
        assertThat(SampleCalibrations.PRESSURE.trouble(65_535))
                .contains("the sensor's signal is at its supply: minus wire off, or shorted");
    }

    @Test
    void endsThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new Ratiometric(0.9, 0.1, 0, 1, NONE, USUAL))
                .hasMessage("the sensor's low end is 0.9 of the supply, its high end 0.1, not above it");
        assertThatThrownBy(() -> new Ratiometric(0.1, 0.9, 7, 7, NONE, USUAL))
                .hasMessage("the sensor has the value 7.0 at both ends");
        assertThatThrownBy(() -> new Ratiometric(0, 1, 0, 1, NONE, CodeRange.ofShares(0.05, 0.95)))
                .hasMessage(
                        "the sensor works from 0.0 to 1.0 of the supply, but is taken for broken outside 0.05 to 0.95");
    }
}
