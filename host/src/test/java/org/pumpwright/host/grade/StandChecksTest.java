package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Ending;

/** Each check of the stand, tripped alone: the run is then invalid, and never a failure. */
class StandChecksTest {

    /** The grade is INVALID for one reason, and the next test is that check's remedy. */
    private static void assertInvalid(Grade grade, String reason, String remedy) {
        assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
        assertThat(grade.reasons()).containsExactly(reason);
        assertThat(grade.nextTest()).isEqualTo(remedy);
        assertThat(grade.features()).isEmpty();
        assertThat(grade.causes()).isEmpty();
        assertThat(grade.standChecks()).filteredOn(check -> !check.ok()).hasSize(1);
    }

    @Test
    void aStandInOrderShowsItsFigures() {
        List<StandCheck> checks = SyntheticRun.healthy().grade().standChecks();
        assertThat(checks)
                .extracting(StandCheck::name)
                .containsExactly(
                        "end of the run",
                        "supply at rest",
                        "zero current",
                        "zero pulses",
                        "pressure sensor",
                        "drive",
                        "supply and lead",
                        "volts at the pins",
                        "current sensor",
                        "meter counts",
                        "nozzle",
                        "air",
                        "judged points",
                        "curve",
                        "curve range",
                        "meter range");
        assertThat(checks)
                .extracting(StandCheck::finding)
                .contains(
                        "13.80 V at rest, allowed are 13.39 to 14.21 V",
                        "0.050 ohm at 11.6 A, at most 0.100 ohm allowed (a healthy stand has about 0.050)",
                        "0.60 gal/min per root psi at 45.9 psi, the stand's nozzle has 0.60 gal/min per root psi (0 %, 10 %"
                                + " allowed)");
    }

    @ParameterizedTest
    @EnumSource(
            value = Ending.Kind.class,
            names = {"STAND_UNFIT", "STOPPED_BY_BOARD", "STOPPED_BY_PERSON", "STAND_LOST"})
    void aRunThatWasCutShortDoesNotCount(Ending.Kind kind) {
        Ending ending = new Ending(kind, "what happened");
        Grade grade = SyntheticRun.healthy().grade(t -> Bench.input(t, ending, Optional.of(SyntheticRun.curve())));
        assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
        assertThat(grade.reasons()).containsExactly("end of the run: what happened");
        assertThat(grade.nextTest()).endsWith(kind == Ending.Kind.STOPPED_BY_PERSON ? "to the end" : "then run again");
    }

    @Test
    void aSupplyThatIsLowAtRestDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().restVolts(13.2).grade(),
                "supply at rest: 13.20 V at rest, allowed are 13.39 to 14.21 V",
                "set the supply to 13.8 V or charge the battery, then run again");
    }

    @Test
    void aSupplyThatIsHighAtRestDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().restVolts(14.4).grade(),
                "supply at rest: 14.40 V at rest, allowed are 13.39 to 14.21 V",
                "set the supply to 13.8 V or charge the battery, then run again");
    }

    @Test
    void aCurrentSensorThatDoesNotReadZeroDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().restAmps(0.4).grade(),
                "zero current: 0.40 A at rest, at most 0.15 A allowed",
                "pull the unit's plug: if the current still does not read 0, zero or replace the current sensor");
    }

    @Test
    void pulsesAtRestDoNotCount() {
        assertInvalid(
                SyntheticRun.healthy().restPulses(3).grade(),
                "zero pulses: 3 pulses in 0.5 s at rest, none allowed",
                "wait until the water stands still; if pulses still come, check the meter's cable and shield");
    }

    @Test
    void aRunWithoutRestDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().neverArmed().grade(),
                "supply at rest: no sample was taken armed and at rest before the first set point",
                "let the stand rest for a second before the first set point, then run again");
    }

    @Test
    void aDriveThatIsHeldDownDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().dutyError(-0.03).grade(),
                "drive: the pin got 17.0 % at the set point 20 %, 1 % off allowed",
                "another drive or a limit of the board holds the set point down: check the board, then run again");
    }

    @Test
    void aBadLeadDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().supplyOhms(0.105).everywhere(1, 0.9).grade(),
                "supply and lead: 0.105 ohm at 10.1 A, at most 0.100 ohm allowed (a healthy stand has about 0.050)",
                "clean and tighten every joint of the supply lead, or swap the lead, then run again");
    }

    @Test
    void aLeadWithinItsLimitCounts() {
        assertThat(SyntheticRun.healthy().supplyOhms(0.095).grade().verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void aSupplyThatRisesDuringTheRunDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().voltsOffWhileDriven(-1.2).grade(),
                "volts at the pins: 14.97 V at 20 %, allowed are 12.70 to 14.90 V",
                "check charger and battery: the supply must hold its voltage through the whole run");
    }

    @Test
    void aMeterThatDoesNotCountWhileThePressureSaysThatTheUnitPumpsDoesNotCount() {
        assertInvalid(
                runWithDeadMeter(),
                "meter counts: no pulse at 100 %, yet 45.9 psi before the nozzle",
                "check the meter's plug and rotor, and that the nozzle is not plugged, then run again");
    }

    /** All edges taken out of a healthy run. */
    private static Grade runWithDeadMeter() {
        return SyntheticRun.healthy().grade(t -> Bench.input(DeadMeter.in(t), SyntheticRun.curve()));
    }

    @Test
    void aMeterThatDoesNotCountWhileTheCurrentSaysThatTheUnitPumpsDoesNotCount() {
        Grade grade = SyntheticRun.healthy()
                .without(ChannelRole.OUTLET_PRESSURE)
                .grade(t -> Bench.input(DeadMeter.in(t), SyntheticRun.curve()));
        assertInvalid(
                grade,
                "meter counts: no pulse at 100 %, yet the unit drew 11.6 A as if it pumped",
                "check the meter's plug and rotor, and that the nozzle is not plugged, then run again");
    }

    @Test
    void aPluggedNozzleDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().pressureFactor(1.5).grade(),
                "nozzle: 0.49 gal/min per root psi at 68.9 psi, the stand's nozzle has 0.60 gal/min per root psi (-18 %, 10 %"
                        + " allowed)",
                "clean the nozzle and the line behind the meter; if it stays, check the meter with the bucket");
    }

    @Test
    void aWornNozzleDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().pressureFactor(0.75).grade(),
                "nozzle: 0.69 gal/min per root psi at 34.4 psi, the stand's nozzle has 0.60 gal/min per root psi (+15 %, 10 %"
                        + " allowed)",
                "check that the right nozzle is fitted and not worn; if it stays, check the meter with the bucket");
    }

    @Test
    void theNozzleIsSaidInTheShopsUnits() {
        Grade grade = SyntheticRun.healthy()
                .pressureFactor(1.5)
                .grade(t -> new GradingInput(
                        t,
                        Bench.COMPLETED,
                        Bench.plan(),
                        Optional.of(SyntheticRun.curve()),
                        Bench.CONDITIONS,
                        Bench.STAND,
                        UnitSystem.METRIC));
        assertThat(grade.reasons())
                .containsExactly(
                        "nozzle: 0.71 L/min per root kPa at 475 kPa, the stand's nozzle has 0.86 L/min per root kPa"
                                + " (-18 %, 10 % allowed)");
    }

    @Test
    void airDoesNotCount() {
        Grade grade = SyntheticRun.healthy().wander(0.1).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
        assertThat(grade.reasons()).hasSize(1);
        assertThat(grade.reasons().get(0))
                .matches(
                        "air: AIR SUSPECTED: pulse intervals wander by \\d+\\.\\d % \\(at most 2\\.5\\) and alike \\(lag-one"
                                + " \\+0\\.\\d\\d\\) at \\d+ %, 9 of 9 points");
        assertThat(grade.nextTest())
                .isEqualTo("watch the sight tube, flood the suction joints with water, prime again, then run again");
    }

    @Test
    void aRunWithoutAJudgedPointDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().endsBefore(100).grade(),
                "judged points: not measured: 100 %",
                "run the whole plan again");
    }

    @Test
    void aCurveOfAnotherDriverDoesNotCount() {
        Conditions other = new Conditions("demo-pump", "shop-7k8", 100, "n-0.60", "water");
        Grade grade = SyntheticRun.healthy()
                .grade(t -> new GradingInput(
                        t,
                        Bench.COMPLETED,
                        Bench.plan(),
                        Optional.of(SyntheticRun.curve()),
                        other,
                        Bench.STAND,
                        UnitSystem.US));
        assertInvalid(
                grade,
                "curve: line v3 does not belong to this run: PWM frequency 100 Hz instead of 7812 Hz",
                "choose the curve of these conditions, or make one");
    }

    @Test
    void aCurveThatDoesNotReachTheJudgedPointsDoesNotCount() {
        assertInvalid(
                SyntheticRun.healthy().grade(t -> Bench.input(t, SyntheticRun.curve(20, 2.76, 1, 11))),
                "curve range: 13.22 effective volts at 100 %, line v3 reaches from 1.00 to 11.00 V",
                "choose a curve that reaches the judged set points");
    }

    @Test
    void aMeterTooLargeForAHealthyUnitDoesNotCount() {
        Grade grade = SyntheticRun.healthy().grade(t -> Bench.input(LargeMeter.in(t), SyntheticRun.curve()));
        assertInvalid(
                grade,
                "meter range: a healthy unit gives 1.23 gal/min at 30 %, the meter is good from 2.00 gal/min",
                "fit a smaller meter, or judge at higher set points");
    }

    @Test
    void severalFailedChecksAreAllSaid() {
        Grade grade = SyntheticRun.healthy().restAmps(0.4).restPulses(3).grade();
        assertThat(grade.reasons()).hasSize(2);
        assertThat(grade.nextTest()).startsWith("pull the unit's plug");
    }

    @Test
    void aUnitThatDrawsFarTooMuchPullsItsPinsDownWithoutTheStandBeingBlamed() {
        Grade grade = SyntheticRun.healthy().supplyOhms(0.06).everywhere(0.9, 2).grade();
        assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(grade.standChecks()).allMatch(StandCheck::ok);
    }
}
