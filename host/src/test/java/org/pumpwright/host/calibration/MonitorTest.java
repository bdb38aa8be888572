package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The example of Texas Instruments' data sheet SBOS547 (INA226): 10 A through 2 mohm at 12 V, 1 mA a step. */
final class MonitorTest {
    private static final UncertaintyParts NONE = UncertaintyParts.of(0, 0);

    private final MonitorAmps current = new MonitorAmps(0.002, OptionalDouble.of(0.001), NONE);
    private final MonitorAmps shuntRegister = new MonitorAmps(0.002, OptionalDouble.empty(), NONE);
    private final MonitorVolts bus = new MonitorVolts(NONE);

    @Test
    void theDataSheetsExampleIsMet() {
        assertThat(current.calibrationRegister()).isEqualTo(2560);
        assertThat(current.si(10_000)).isCloseTo(10, within(1e-9));
        assertThat(shuntRegister.si(8000)).isCloseTo(10, within(1e-9));
        assertThat(bus.si(9584)).isCloseTo(11.98, within(1e-9));
        assertThat(shuntRegister.calibrationRegister()).isZero();
    }

    /** The finest step of the same example, 15 A over 2^15 = 457.8 uA: 0.00512 / (457.8 uA * 2 mohm) = 5592.4, cut to 5592. */
    @Test
    void theTruncatedRegisterMakesTheStepALittleLarger() {
        MonitorAmps finest = new MonitorAmps(0.002, OptionalDouble.of(15 / 32_768.0), NONE);
        assertThat(finest.calibrationRegister()).isEqualTo(5592);
        assertThat(finest.ampsPerCode()).isCloseTo(0.00512 / (5592 * 0.002), within(1e-15));
        assertThat(finest.ampsPerCode()).isGreaterThan(15 / 32_768.0);
    }

    /** The chip computes its current register as shunt register times calibration register over 2048 (same data sheet). */
    @Property(seed = "7")
    void bothRegistersTellTheSameCurrent(
            @ForAll @IntRange(min = -32_000, max = 32_000) int shuntCode,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double milliohmsOverTen) {
        double ohms = milliohmsOverTen / 100;
        MonitorAmps registered = new MonitorAmps(ohms, OptionalDouble.of(0.002), NONE);
        MonitorAmps plain = new MonitorAmps(ohms, OptionalDouble.empty(), NONE);
        double currentCode = shuntCode * (double) registered.calibrationRegister() / 2048;
        assertThat(registered.si(currentCode)).isCloseTo(plain.si(shuntCode), within(1e-9));
    }

    @Test
    void aReverseCurrentIsNegative() {
        assertThat(current.si(-500)).isCloseTo(-0.5, within(1e-12));
        assertThat(current.code(current.si(-500))).isCloseTo(-500, within(1e-9));
    }

    @Test
    void theStepsOfTheRegistersAreInTheUncertainty() {
        assertThat(bus.standardUncertainty(12)).isCloseTo(1.25e-3 / Math.sqrt(12), within(1e-12));
        double shuntStep = 2.5e-6 / 0.002;
        assertThat(shuntRegister.standardUncertainty(5)).isCloseTo(shuntStep / Math.sqrt(12), within(1e-12));
        assertThat(current.standardUncertainty(5))
                .isCloseTo(Math.hypot(0.001, shuntStep) / Math.sqrt(12), within(1e-12));
    }

    @Test
    void aShuntAtTheEndOfItsRangeIsTold() {
        assertThat(shuntRegister.trouble(32_767))
                .contains("the current is at the end of the monitor's range, or the shunt is open");
        assertThat(shuntRegister.trouble(-32_768)).isPresent();
        assertThat(bus.trouble(0x7FFF)).contains("the voltage is at the end of the monitor's range, 40.96 V");
        MonitorAmps coarse = new MonitorAmps(0.002, OptionalDouble.of(0.01), NONE);
        assertThat(coarse.calibrationRegister()).isEqualTo(256);
        assertThat(coarse.trouble(32_767 * 256 / 2048))
                .as("the shunt register is full at 40.96 A")
                .isPresent();
        assertThat(coarse.trouble(4000)).isEmpty();
    }

    @Test
    void aRegisterThatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> new MonitorAmps(0.0001, OptionalDouble.of(0.0005), NONE))
                .hasMessage(
                        "the calibration register would be 102400 for steps of 5.0E-4 A over 1.0E-4 ohm, allowed are 1 to 32767");
        assertThatThrownBy(() -> new MonitorAmps(0, OptionalDouble.empty(), NONE))
                .hasMessage("shunt is 0.0 ohm, allowed are 1.0E-6 to 10.0 ohm");
    }
}
