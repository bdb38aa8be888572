package org.pumpwright.host.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

final class TraceTest {
    private final Channels channels = new Channels(
            List.of(new MeterChannel(
                    0, KCurve.constant(new KFactor(1000)), 0.005, new FlowRate(0), Certificate.undated("none"))),
            List.of());

    private final Trace trace = new Trace(channels, samplesAt(0, 20, 40, 60, 80), List.of());

    private static List<Sample> samplesAt(long... nanos) {
        return LongStream.of(nanos)
                .mapToObj(at -> new Sample(at, List.of(), List.of(), List.of(), true, true, true))
                .toList();
    }

    @Test
    void aStretchHoldsBothItsEnds() {
        assertThat(trace.between(20, 60)).extracting(Sample::boardNanos).containsExactly(20L, 40L, 60L);
        assertThat(trace.between(21, 59)).extracting(Sample::boardNanos).containsExactly(40L);
        assertThat(trace.between(-5, 500)).hasSize(5);
        assertThat(trace.between(81, 90)).isEmpty();
        assertThat(new Trace(channels, List.of(), List.of()).between(0, 10)).isEmpty();
    }

    @Test
    void aPointInTheWrongOrderIsRefused() {
        assertThatThrownBy(() -> new PointMark(3, Leg.UP, Duty.ofPercent(50), 10, 5, 20, true, true))
                .hasMessage("point 3: set at 10, measured from 5 to 20 ns, not in this order");
    }

    @Test
    void aStandWithoutAMeterOrWithTwoChannelsOfOneRoleIsRefused() {
        AnalogChannel volts = AnalogChannel.straight(ChannelRole.VOLTS_AT_PINS, 0, 0, 20, 0, 0, "none");
        AnalogChannel again = AnalogChannel.straight(ChannelRole.VOLTS_AT_PINS, 1, 0, 20, 0, 0, "none");

        assertThatThrownBy(() -> new Channels(List.of(), List.of(volts)))
                .hasMessage("a stand needs a meter: none is described");
        assertThatThrownBy(() -> new Channels(channels.meters(), List.of(volts, again)))
                .hasMessage("two analogue channels have the same role");
    }
}
