package org.pumpwright.host.plant.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.plant.Intervals;
import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.UsUnits;

/**
 * Pulse-train signatures, computed by an independent program over 3000 intervals of a six-bladed rotor: count error in
 * percent, share of long and short intervals, variation and lag-one correlation.
 */
class MeterSignatureTest {

    private static final double DUTY = 0.6;
    private static final MeterBench HEALTHY = MeterBench.small();

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "HEALTHY, 0, 0, 0, 2.2, 0.6",
        "MISSING_PULSES, -3.0, 3.0, 0, 18, 2.5",
        "DOUBLE_PULSES, 3, 0, 2.9, 16, 2.5",
        "LOST_BLADE, -16.7, 20, 0, 34, 1.0",
        "LOOP_AIR, 0, 0, 0, 10, 2.0",
        "LOOP_SURGE, 0, 0, 0, 6, 0.7"
    })
    void aModerateFaultLeavesItsMarkInTheIntervals(
            MeterFault fault,
            double countPercent,
            double longPercent,
            double shortPercent,
            double cv,
            double cvWithin) {
        Severity severity = fault == MeterFault.LOST_BLADE ? Severity.MILD : Severity.MODERATE;
        MeterTrain train = MeterTrain.of(fault.applyTo(HEALTHY, severity), DUTY, 60);
        Intervals intervals = train.intervals();

        assertThat(intervals.seconds().length).isGreaterThan(3000);
        assertThat(100 * train.errorAgainstMaster()).isCloseTo(countPercent, within(0.7));
        assertThat(intervals.percentAbove(1.6)).isCloseTo(longPercent, within(0.7));
        assertThat(intervals.percentBelow(0.5)).isCloseTo(shortPercent, within(0.7));
        assertThat(100 * intervals.variation()).isCloseTo(cv, within(cvWithin));
    }

    @Test
    void edgeJitterMakesNeighboursOppositeAndSlugsAndSurgeMakeThemAlike() {
        // Jitter alone gives -0.5; the blade pattern, whose own sign is the rotor's, adds to the variance.
        assertThat(lag(MeterFault.HEALTHY)).isBetween(-0.6, -0.1);
        assertThat(lag(MeterFault.MISSING_PULSES)).isBetween(-0.15, 0.1);
        assertThat(lag(MeterFault.LOOP_AIR)).isGreaterThan(0.7);
        assertThat(lag(MeterFault.LOOP_SURGE)).isGreaterThan(0.8);
    }

    /** Pattern 3.7 % against 1.4 % and a variation of 8 %: between the mild and the moderate bearing. */
    @Test
    void aWornBearingWobblesAndReadsLowAtLowFlow() {
        ReturnedMeter unit = HEALTHY.unit();
        MeterParameters m = ((FlowSensor.Rotor) unit.sensor()).parameters();
        MeterParameters worn = new MeterParameters(
                m.pulsesPerM3AtInfiniteFlow(),
                4 * m.lagM3PerSecond(),
                3 * m.startM3PerSecond(),
                6,
                0.037,
                0.05,
                m.slugVolumeM3());
        MeterTrain train = MeterTrain.of(HEALTHY.withUnit(unit.withSensor(new FlowSensor.Rotor(worn))), DUTY, 60);

        assertThat(100 * train.intervals().variation()).isCloseTo(8, within(0.6));
        assertThat(100 * train.intervals().bladePattern(6)).isCloseTo(3.7, within(0.5));
        double low = 0.3 * UsUnits.GALLON_PER_MINUTE;
        double before = unit.pulsesPerSecond(low);
        double after = unit.withSensor(new FlowSensor.Rotor(worn)).pulsesPerSecond(low);
        assertThat(after / before).isCloseTo((0.3 - 0.016) / (0.3 - 0.004), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"MILD, 1.02", "MODERATE, 1.10", "SEVERE, 3.785"})
    void aWrongKIsAnExactRatioWithCleanIntervals(Severity severity, double ratio) {
        MeterTrain train = MeterTrain.of(MeterFault.WRONG_K.applyTo(HEALTHY, severity), DUTY, 60);

        assertThat(train.errorAgainstMaster() + 1).isCloseTo(ratio, within(0.002 * ratio));
        assertThat(100 * train.intervals().variation()).isCloseTo(2.2, within(0.6));
    }

    @Test
    void installedBackwardsItReadsLowAndItsLagIsShifted() {
        MeterBench backwards = MeterFault.BACKWARDS.applyTo(HEALTHY, Severity.MODERATE);

        double high = error(backwards, 1);
        double low = error(backwards, 0.22);

        assertThat(high).isBetween(-0.10, -0.02);
        assertThat(low).isLessThan(high - 0.005);
    }

    @Test
    void cavitationRaisesKAtTheTopOnly() {
        MeterBench bench = MeterFault.CAVITATION.applyTo(HEALTHY, Severity.MODERATE);

        assertThat(error(bench, 0.6)).isCloseTo(0, within(0.003));
        assertThat(error(bench, 1)).isCloseTo(0.07, within(0.005));
    }

    @Test
    void aSlowRotorStartsLateAndLagsAtLowFlow() {
        MeterBench slow = MeterFault.SLOW_ROTOR.applyTo(HEALTHY, Severity.MODERATE);

        assertThat(slow.unit().pulsesPerSecond(0.19 * UsUnits.GALLON_PER_MINUTE))
                .isZero();
        assertThat(HEALTHY.unit().pulsesPerSecond(0.19 * UsUnits.GALLON_PER_MINUTE))
                .isPositive();
        assertThat(error(slow, 0.22)).isLessThan(-0.03);
    }

    private static double lag(MeterFault fault) {
        return MeterTrain.of(fault.applyTo(HEALTHY, Severity.MODERATE), DUTY, 60)
                .intervals()
                .lagOneCorrelation();
    }

    private static double error(MeterBench bench, double duty) {
        return MeterTrain.of(bench, duty, 60).errorAgainstMaster();
    }
}
