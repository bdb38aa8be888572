package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.Ratiometric;
import org.pumpwright.host.calibration.UncertaintyParts;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Trace;

final class SensorChecksTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final Certificate LATE = certificate("C-1", "2025-02-28", "2026-03-01");
    private static final Certificate GOOD = certificate("C-2", "2025-02-28", "2026-03-02");
    private static final int HALF = 32_768;

    private static Certificate certificate(String number, String calibrated, String due) {
        return new Certificate(number, Optional.of(LocalDate.parse(calibrated)), Optional.of(LocalDate.parse(due)));
    }

    private static Trace trace(Certificate meter, Certificate pressure, int... pressureCodes) {
        Ratiometric ratio =
                new Ratiometric(0.1, 0.9, 0, 1e6, UncertaintyParts.of(0, 500), Ratiometric.halfWayToTheRails(0.1, 0.9));
        Channels channels = new Channels(
                List.of(new MeterChannel(0, KCurve.constant(new KFactor(8e5)), 0.005, new FlowRate(1e-5), meter)),
                List.of(new AnalogChannel(ChannelRole.OUTLET_PRESSURE, 0, ratio, pressure)));
        List<Sample> samples = new ArrayList<>();
        for (int code : pressureCodes) {
            samples.add(new Sample(
                    20_000_000L * (samples.size() + 1),
                    List.of(new MeterCount(0, 0)),
                    List.of(new AnalogReading(code, code, code)),
                    List.of(Duty.ZERO),
                    true,
                    true,
                    true));
        }
        return new Trace(channels, samples, List.of());
    }

    private static StandCheck named(String name, List<StandCheck> checks) {
        return checks.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    private static List<StandCheck> today(Certificate meter, Certificate pressure) {
        return SensorChecks.of(trace(meter, pressure, HALF), Optional.of(TODAY));
    }

    @Test
    void aFlowMeterPastDueMakesARunInvalid() {
        StandCheck check = named("meter calibration", today(LATE, GOOD));
        assertThat(check.ok()).isFalse();
        assertThat(check.finding()).isEqualTo("flow meter: PAST DUE since 2026-03-01 (certificate C-1)");
        assertThat(check.remedy()).startsWith("calibrate the flow meter");
    }

    @Test
    void onItsLastDayAFlowMeterIsInDate() {
        StandCheck check = named("meter calibration", today(GOOD, LATE));
        assertThat(check.ok()).isTrue();
        assertThat(check.finding()).isEqualTo("flow meter: certificate C-2 of 2025-02-28, due 2026-03-02");
    }

    @Test
    void aSensorPastDueIsANoteOnly() {
        StandCheck check = named("calibration due", today(GOOD, LATE));
        assertThat(check.ok()).isTrue();
        assertThat(check.finding()).isEqualTo("note: outlet pressure: PAST DUE since 2026-03-01 (certificate C-1)");
        assertThat(named("calibration due", today(LATE, GOOD)).finding()).isEqualTo("nothing is past due");
    }

    @Test
    void aMeterThatWasNeverCalibratedIsToldAsSuch() {
        StandCheck check = named("meter calibration", today(Certificate.undated("none: simulated"), GOOD));
        assertThat(check.ok()).isTrue();
        assertThat(check.finding()).isEqualTo("flow meter: not calibrated (none: simulated)");
    }

    @Test
    void withoutADayNothingIsSaidOfDueDates() {
        assertThat(SensorChecks.of(trace(LATE, LATE, HALF), Optional.empty()))
                .extracting(StandCheck::name)
                .containsExactly("sensors");
    }

    @Test
    void aSensorAtItsRailIsNotFit() {
        StandCheck check = named("sensors", SensorChecks.of(trace(GOOD, GOOD, 0, 0, 0, 0), Optional.empty()));
        assertThat(check.ok()).isFalse();
        assertThat(check.finding())
                .isEqualTo("outlet pressure: the sensor's signal is at its minus: wire off, no supply, or shorted");
        assertThat(check.remedy()).isEqualTo("mend the sensor, its plug or its wire, then run again");
    }

    @Test
    void aSpikeIsNoBrokenSensor() {
        StandCheck check = named("sensors", SensorChecks.of(trace(GOOD, GOOD, HALF, 0, 0, HALF), Optional.empty()));
        assertThat(check.ok()).isTrue();
        assertThat(check.finding()).isEqualTo("every reading is one that a sound sensor gives");
    }
}
