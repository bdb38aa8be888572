package org.pumpwright.host.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

final class AnalogChannelTest {
    private final AnalogChannel amps = new AnalogChannel(ChannelRole.SUPPLY_AMPS, 1, 0, 40, 0.005, 0.03, "none");

    /** A ratiometric pressure sensor, 0.5 V to 4.5 V for 0 to 100 kPa on 5 V: the straight line through both ends. */
    private final AnalogChannel pressure =
            new AnalogChannel(ChannelRole.OUTLET_PRESSURE, 2, -12_500, 125_000, 0, 500, "none");

    @Property(seed = "4")
    void aCodeSurvivesItsPhysicalValue(@ForAll @IntRange(min = 0, max = 65535) int code) {
        assertThat(amps.code(amps.si(code))).isEqualTo(code);
        assertThat(pressure.code(pressure.si(code))).isEqualTo(code);
    }

    @Test
    void aRatiometricSensorReadsItsEnds() {
        assertThat(pressure.si(65_536 * 0.1)).isCloseTo(0, within(1e-9));
        assertThat(pressure.si(65_536 * 0.9)).isCloseTo(100_000, within(1e-6));
    }

    @Test
    void valuesBeyondTheConverterStayAtItsEnds() {
        assertThat(amps.code(-3)).isZero();
        assertThat(amps.code(55)).isEqualTo(65_535);
    }

    @Test
    void gainAndZeroAddInQuadrature() {
        assertThat(amps.calibrationUncertainty(0)).isCloseTo(0.03, within(1e-12));
        assertThat(amps.calibrationUncertainty(8)).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void aChannelWithoutSpanIsRefused() {
        assertThatThrownBy(() -> new AnalogChannel(ChannelRole.SUPPLY_AMPS, 1, 0, 0, 0, 0, "none"))
                .hasMessage("span of channel 1 is 0, it must not be");
    }
}
