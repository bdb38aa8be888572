package org.pumpwright.host.grade.lump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.plant.FaultMix;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.quantity.Uncertain;

final class LumpFitTest {
    private static final PumpParameters HEALTHY = PumpParameters.healthy();

    @ParameterizedTest
    @EnumSource(Measured.class)
    void aHealthyPumpWithoutErrorsGivesItsLumps(Measured measured) {
        Lumps lumps = lumps(measured.exactly(HEALTHY));

        for (Lump lump : Layout.FITTED) {
            // What stays is the rounding of the nuisances known beforehand; slip is known to 4 times itself only.
            double tolerance = lump == Lump.SLIP ? 5e-3 : 1e-4;
            assertThat(estimate(lumps, lump) / SweptPump.truth(HEALTHY, lump))
                    .as(lump.words())
                    .isCloseTo(1, within(tolerance));
        }
        assertThat(lumps.chiSquare()).isLessThan(1e-5);
        assertThat(lumps.probability()).isCloseTo(1, within(1e-9));
        assertThat(lumps.degreesOfFreedom()).isEqualTo(measured.degreesOfFreedom());
    }

    /** Relative standard uncertainties in percent of a healthy pump, as docs/metrology/lumps.md states them. */
    @ParameterizedTest
    @CsvSource({
        "SWEEP, 2.7, 1.6, 6.4, 18",
        "WITH_PRESSURE, 2.6, 2.0, 2.0, 18",
        "AND_DEAD_HEAD, 2.6, 2.0, 1.4, 18",
        "AND_STANDSTILL, 1.3, 2.0, 1.4, 11"
    })
    void eachMeasurementMoreNarrowsTheLumps(
            Measured measured, double flowPerVolt, double noLoadAmps, double ampsPerPressure, double ohms) {
        Lumps lumps = lumps(measured.exactly(HEALTHY));

        assertThat(percent(lumps, Lump.FLOW_PER_VOLT)).isCloseTo(flowPerVolt, within(0.06));
        assertThat(percent(lumps, Lump.NO_LOAD_AMPS)).isCloseTo(noLoadAmps, within(0.06));
        assertThat(percent(lumps, Lump.AMPS_PER_PRESSURE)).isCloseTo(ampsPerPressure, within(0.06));
        assertThat(percent(lumps, Lump.OHMS)).isCloseTo(ohms, within(0.6));
    }

    /** Each fault moves its own lumps by what the plant says, and leaves the others where they are. */
    @ParameterizedTest
    @CsvSource({
        "DRAG, 1, 3, 1, 1",
        "BRUSH, 1, 1, 1, 2.316",
        "WEAK_MAGNETS, 1.176, 1.176, 1.176, 1",
        "DEAD_CHAMBER, 0.767, 1, 0.767, 1",
        "SUCTION_AIR, 0.845, 1, 1, 1",
        "RECIRCULATION_OPEN, 0.667, 1, 1, 1",
        "LOW_SUPPLY, 1, 1, 1, 1",
        "LEAD_RESISTANCE, 1, 1, 1, 1"
    })
    void aFaultMovesItsLumps(
            PumpFault fault, double flowPerVolt, double noLoadAmps, double ampsPerPressure, double ohms) {
        PumpParameters pump = FaultMix.of(fault, Severity.MODERATE).applyTo(HEALTHY);
        Lumps lumps = lumps(Measured.AND_STANDSTILL.exactly(pump));

        // Weaker magnets raise the viscous share beyond what is known beforehand: that costs 2 %.
        assertThat(ratio(lumps, Lump.FLOW_PER_VOLT)).isCloseTo(flowPerVolt, within(0.005));
        assertThat(ratio(lumps, Lump.NO_LOAD_AMPS)).isCloseTo(noLoadAmps, within(0.03));
        assertThat(ratio(lumps, Lump.AMPS_PER_PRESSURE)).isCloseTo(ampsPerPressure, within(0.02));
        assertThat(ratio(lumps, Lump.OHMS)).isCloseTo(ohms, within(0.005));
        assertThat(lumps.plausible()).isTrue();
    }

    @Test
    void slipOfGoodValvesIsWithheldAndThatOfWornOnesShown() {
        PumpParameters worn = FaultMix.of(PumpFault.SLIP, Severity.MODERATE).applyTo(HEALTHY);
        Lumps healthy = lumps(Measured.AND_STANDSTILL.exactly(HEALTHY));
        Lumps leaking = lumps(Measured.AND_STANDSTILL.exactly(worn));

        assertThat(healthy.withheld())
                .containsExactly(new Lumps.Withheld(Lump.SLIP, "known to 362 % only, at most 25 % is shown"));
        assertThat(healthy.shown())
                .containsOnlyKeys(Lump.FLOW_PER_VOLT, Lump.NO_LOAD_AMPS, Lump.AMPS_PER_PRESSURE, Lump.OHMS);
        assertThat(leaking.withheld()).isEmpty();
        assertThat(ratio(leaking, Lump.SLIP)).isCloseTo(20, within(0.5));
        // The fault raises the backflow by half too, 1.8 % of the net stroke.
        assertThat(ratio(leaking, Lump.FLOW_PER_VOLT)).isCloseTo(0.982, within(0.005));
    }

    @Test
    void aBypassThatOpensIsNoSuchPumpAndShowsNoLumps() {
        PumpParameters pump = FaultMix.of(PumpFault.BYPASS_LOW, Severity.SEVERE).applyTo(HEALTHY);
        Lumps lumps = lumps(Measured.AND_STANDSTILL
                .exactly(pump)
                .withFindings(Optional.of(Uncertain.of(0.155, 0.002)), Optional.empty()));

        assertThat(lumps.plausible()).isFalse();
        assertThat(lumps.shown()).containsOnlyKeys(Lump.START_DUTY);
        assertThat(lumps.withheld()).hasSize(Layout.LUMPS);
        assertThat(lumps.withheld().get(0).why())
                .isEqualTo("the readings do not belong to such a pump: chi-square 583 with 17 degrees of freedom");
    }

    @Test
    void findingsAreHandedThroughUnderTheSameRule() {
        Uncertain start = new Uncertain(0.155, 0.002, 3);
        Lumps lumps = lumps(Measured.SWEEP
                .exactly(HEALTHY)
                .withFindings(Optional.of(start), Optional.of(Uncertain.of(0.01, 0.005))));

        assertThat(lumps.shown()).containsEntry(Lump.START_DUTY, start);
        assertThat(lumps.withheld())
                .contains(new Lumps.Withheld(Lump.AMPS_DRIFT, "known to 50 % only, at most 25 % is shown"));
        assertThat(lumps.covariance(Lump.START_DUTY, Lump.START_DUTY)).isCloseTo(4e-6, within(1e-18));
        assertThat(lumps.covariance(Lump.START_DUTY, Lump.OHMS)).isZero();
        assertThat(lumps(Measured.SWEEP.exactly(HEALTHY)).estimate(Lump.START_DUTY))
                .isEmpty();
    }

    @Test
    void aSharedErrorIsNotAveragedOut() {
        SharedErrors meter = new SharedErrors(
                SharedErrors.Channel.NONE,
                SharedErrors.Channel.NONE,
                new SharedErrors.Channel(0.03, 0),
                SharedErrors.Channel.NONE);
        Lumps without =
                lumps(new SweptPump(HEALTHY, SharedErrors.NONE, 1).exact().sweep(true));
        Lumps with = lumps(new SweptPump(HEALTHY, meter, 1).exact().sweep(true));

        double u = without.estimate(Lump.FLOW_PER_VOLT).orElseThrow().relative();
        assertThat(with.estimate(Lump.FLOW_PER_VOLT).orElseThrow().relative())
                .isCloseTo(Math.hypot(u, 0.03), within(1e-4));
        assertThat(percent(with, Lump.NO_LOAD_AMPS)).isCloseTo(percent(without, Lump.NO_LOAD_AMPS), within(0.01));
    }

    @Test
    void aSharedZeroOfTheAmpsGoesIntoTheNoLoadAmps() {
        SharedErrors zero = new SharedErrors(
                SharedErrors.Channel.NONE,
                new SharedErrors.Channel(0, 0.2),
                SharedErrors.Channel.NONE,
                SharedErrors.Channel.NONE);
        Lumps without =
                lumps(new SweptPump(HEALTHY, SharedErrors.NONE, 1).exact().sweep(true));
        Lumps with = lumps(new SweptPump(HEALTHY, zero, 1).exact().sweep(true));

        double u = without.estimate(Lump.NO_LOAD_AMPS).orElseThrow().standardUncertainty();
        assertThat(with.estimate(Lump.NO_LOAD_AMPS).orElseThrow().standardUncertainty())
                .isCloseTo(Math.hypot(u, 0.2), within(2e-3));
    }

    @Test
    void tooFewPointsAreRefused() {
        assertThat(LumpFit.of(new SweptPump(HEALTHY, SharedErrors.NONE, 1).sweep(true, 0.3, 1)))
                .isEqualTo(new LumpFit.Refused(
                        "2 points with flow leave -1 degrees of freedom for 5 lumps, at least 1 is needed"));
        assertThat(LumpFit.of(new SweptPump(HEALTHY, SharedErrors.NONE, 1).sweep(true, 0.3, 0.6, 1)))
                .isInstanceOf(LumpFit.Fitted.class);
    }

    @Test
    void pointsAtOneDutyLeaveTheLumpsOpenOrVague() {
        LumpFit fit =
                LumpFit.of(new SweptPump(HEALTHY, SharedErrors.NONE, 1).sweep(true, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5));

        assertThat(fit instanceof LumpFit.Fitted fitted ? fitted.lumps().shown().keySet() : List.of())
                .isEmpty();
    }

    @Test
    void aStarvedPumpIsRefused() {
        PumpParameters starved =
                FaultMix.of(PumpFault.STRAINER, Severity.SEVERE).applyTo(HEALTHY);

        assertThat(LumpFit.of(Measured.AND_STANDSTILL.exactly(starved)))
                .isEqualTo(new LumpFit.Refused(
                        "the fit does not settle: the readings do not belong together or leave a lump open"));
    }

    @Test
    void pointsWithoutClearFlowDoNotCount() {
        LumpInput sweep = Measured.SWEEP.exactly(HEALTHY);
        List<LumpPoint> more = new ArrayList<>(sweep.points());
        more.add(new LumpPoint(
                Uncertain.of(1.5, 0.01), Uncertain.of(4, 0.1), Uncertain.of(1e-7, 1e-7), Optional.empty()));

        Lumps lumps = lumps(LumpInput.of(more, sweep.shared(), sweep.nozzle()));

        assertThat(lumps.degreesOfFreedom()).isEqualTo(15);
        assertThat(lumps.chiSquare()).isEqualTo(lumps(sweep).chiSquare());
    }

    @Test
    void aPointWithoutPressureNeedsANozzle() {
        LumpPoint point =
                new LumpPoint(Uncertain.of(6, 0.01), Uncertain.of(5, 0.1), Uncertain.of(1e-4, 1e-6), Optional.empty());

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LumpInput.of(List.of(point), SharedErrors.NONE, Optional.empty()))
                .withMessage("a point without pressure needs the coefficient of the nozzle");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LumpPoint(
                        Uncertain.of(6, 0), Uncertain.of(5, 0.1), Uncertain.of(1e-4, 1e-6), Optional.empty()))
                .withMessageContaining("standard uncertainty of the effective volts is 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SharedErrors.Channel(0.5, 0))
                .withMessageContaining("shared gain error is 0.5");
    }

    /** The same bits on every machine: readings typed in, results written down. */
    @Test
    void theSameReadingsGiveTheSameBits() {
        double[][] readings = {
            {3.60, 3.11, 6.64e-5, 21.3e3},
            {5.01, 4.08, 9.88e-5, 47.7e3},
            {6.39, 5.25, 1.301e-4, 81.2e3},
            {9.07, 8.14, 1.842e-4, 163.9e3},
            {11.72, 11.40, 2.317e-4, 258.8e3},
            {13.15, 13.05, 2.522e-4, 307.1e3}
        };
        List<LumpPoint> points = new ArrayList<>();
        for (double[] r : readings) {
            points.add(new LumpPoint(
                    Uncertain.of(r[0], 0.02),
                    Uncertain.of(r[1], 0.05),
                    Uncertain.of(r[2], 1e-6),
                    Optional.of(Uncertain.of(r[3], 1500))));
        }
        Lumps lumps = lumps(LumpInput.of(points, SweptPump.USUAL, Optional.empty()));

        List<String> bits = Layout.FITTED.stream()
                .map(lump -> Double.toHexString(estimate(lumps, lump)) + " "
                        + Double.toHexString(lumps.estimate(lump).orElseThrow().standardUncertainty()))
                .toList();
        assertThat(bits)
                .containsExactly(
                        "0x1.df57c7f9c942bp-16 0x1.0edc809a286f4p-19",
                        "0x1.168477b968637p1 0x1.07d6ebb3226b7p-4",
                        "0x1.0ade82013d12ep-15 0x1.58adc6faacb86p-21",
                        "0x1.15400cfbfad2dp-3 0x1.2ad54b6dc4629p-4",
                        "0x1.196b2bdc9b0adp-34 0x1.22ae65c430842p-35");
        assertThat(Double.toHexString(lumps.chiSquare())).isEqualTo("0x1.8cc6ed94d1e6fp2");
    }

    private static double estimate(Lumps lumps, Lump lump) {
        return lumps.estimate(lump).orElseThrow().value();
    }

    private static double percent(Lumps lumps, Lump lump) {
        return lumps.estimate(lump).orElseThrow().relative() * 100;
    }

    private static double ratio(Lumps lumps, Lump lump) {
        return estimate(lumps, lump) / SweptPump.truth(HEALTHY, lump);
    }

    private static Lumps lumps(LumpInput input) {
        LumpFit fit = LumpFit.of(input);
        assertThat(fit).isInstanceOf(LumpFit.Fitted.class);
        return ((LumpFit.Fitted) fit).lumps();
    }
}
