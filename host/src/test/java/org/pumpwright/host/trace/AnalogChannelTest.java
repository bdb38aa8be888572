package org.pumpwright.host.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.calibration.MonitorVolts;
import org.pumpwright.host.calibration.UncertaintyParts;

final class AnalogChannelTest {
    private static final Certificate NONE = Certificate.undated("none");

    private final AnalogChannel amps = AnalogChannel.straight(ChannelRole.SUPPLY_AMPS, 1, 0, 40, 0.005, 0.03, "none");

    /** A ratiometric pressure sensor, 0.5 V to 4.5 V for 0 to 100 kPa on 5 V: the straight line through both ends. */
    private final AnalogChannel pressure =
            AnalogChannel.straight(ChannelRole.OUTLET_PRESSURE, 2, -12_500, 125_000, 0, 500, "none");

    @Property(seed = "4")
    void aCodeSurvivesItsPhysicalValue(@ForAll @IntRange(min = 0, max = 65535) int code) {
        assertThat(amps.code(amps.si(code))).isEqualTo(code);
        assertThat(pressure.code(pressure.si(code))).isEqualTo(code);
    }

    @Test
    void valuesBeyondTheConverterStayAtItsEnds() {
        assertThat(amps.code(-3)).isZero();
        assertThat(amps.code(55)).isEqualTo(65_535);
    }

    @Test
    void aReverseCurrentOfAMonitorIsNothingToASampleWithoutSign() {
        MonitorAmps shunt = new MonitorAmps(0.002, OptionalDouble.of(0.001), UncertaintyParts.of(0, 0));
        AnalogChannel channel = new AnalogChannel(ChannelRole.SUPPLY_AMPS, 1, shunt, NONE);
        assertThat(channel.code(-3)).isZero();
        assertThat(channel.code(3)).isEqualTo(3000);
    }

    @Test
    void gainAndZeroAddInQuadrature() {
        assertThat(amps.calibrationUncertainty(0)).isCloseTo(0.03, within(1e-12));
        assertThat(amps.calibrationUncertainty(8)).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void aChannelWithoutSpanIsRefused() {
        assertThatThrownBy(() -> AnalogChannel.straight(ChannelRole.SUPPLY_AMPS, 1, 0, 0, 0, 0, "none"))
                .hasMessage("the span of a straight line is 0, it must not be");
    }

    @Test
    void aCalibrationOfAnotherQuantityIsRefused() {
        MonitorVolts bus = new MonitorVolts(UncertaintyParts.of(0, 0));
        assertThatThrownBy(() -> new AnalogChannel(ChannelRole.SUPPLY_AMPS, 1, bus, NONE))
                .hasMessage("a monitor's bus voltage reads volts at the pins, not supply amps");
    }
}
