package org.pumpwright.host.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.ToleranceFactor;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.trace.Channels;

/** Whole runs of simulated units with drawn sensor errors, graded by a curve from 20 other simulated units. */
class SimulatedUnitsTest {
    private static final int UNITS = 6;
    private static final Channels CHANNELS = Bench.channels();
    private static final double JOINT = ToleranceFactor.joint(20, 6, 0.95, 0.95);
    private static final HealthyCurve CURVE = SimulatedCurve.of(20, 1, JOINT, CHANNELS);
    private static final PumpPopulation POPULATION = new PumpPopulation(4711);

    private static PlantRun.Outcome run(PumpParameters unit, int number) {
        PumpPlant plant = new PumpPlant(unit, SensorErrors.drawn(50_000 + number), number);
        return PlantRun.of(plant, Bench.plan(), CHANNELS);
    }

    private static Grade grade(PlantRun.Outcome run, HealthyCurve curve) {
        return Grader.grade(
                Bench.input(run.trace(), run.ending(), Optional.of(curve)).by(ShippedRules.PUMP));
    }

    private static Grade grade(PumpFault fault, Severity severity, int number) {
        return grade(run(fault.applyTo(POPULATION.unit(number), severity), number), CURVE);
    }

    /**
     * Healthy units against six curves, whose limits hold all six features of 95 % of units with 95 % confidence: at most
     * 1 % of the verdicts is FAIL and at most 3 % INCONCLUSIVE, and no run is invalid.
     */
    @Test
    void fewerThanOneInAHundredHealthyUnitsFail() {
        List<HealthyCurve> curves = LongStream.rangeClosed(1, 6)
                .mapToObj(seed -> SimulatedCurve.of(20, seed, JOINT, CHANNELS))
                .toList();
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (int i = 0; i < 500; i++) {
            PlantRun.Outcome run = run(POPULATION.unit(i), i);
            for (HealthyCurve curve : curves) {
                Verdict verdict = grade(run, curve).verdict();
                counts.merge(verdict, 1, Integer::sum);
            }
        }
        assertThat(counts.getOrDefault(Verdict.FAIL, 0)).as(counts.toString()).isLessThanOrEqualTo(30);
        assertThat(counts.getOrDefault(Verdict.INCONCLUSIVE, 0))
                .as(counts.toString())
                .isLessThanOrEqualTo(90);
        assertThat(counts).as(counts.toString()).doesNotContainKeys(Verdict.INVALID, Verdict.NOT_TESTED);
    }

    static Stream<Arguments> faultsOfTheUnit() {
        return Stream.of(PumpFault.values())
                .filter(fault -> !fault.ofTheStand() && fault != PumpFault.SUCTION_AIR)
                .flatMap(fault -> Stream.of(Severity.values()).map(severity -> Arguments.of(fault, severity)));
    }

    @ParameterizedTest
    @MethodSource("faultsOfTheUnit")
    void aFaultOfTheUnitIsNeverHeldAgainstTheStand(PumpFault fault, Severity severity) {
        for (int i = 0; i < UNITS; i++) {
            Grade grade = grade(fault, severity, 2000 + i);
            assertThat(grade.verdict()).as(grade.reasons().toString()).isNotEqualTo(Verdict.INVALID);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = PumpFault.class,
            names = {
                "SLIP",
                "DEAD_CHAMBER",
                "BYPASS_LOW",
                "DRAG",
                "WEAK_MAGNETS",
                "BRUSH",
                "SHORTED_TURNS",
                "STRAINER",
                "SEIZED",
                "OPEN_CIRCUIT"
            })
    void aSevereFaultOfTheUnitFails(PumpFault fault) {
        for (int i = 0; i < UNITS; i++) {
            Grade grade = grade(fault, Severity.SEVERE, 3000 + i);
            assertThat(grade.verdict()).as(grade.reasons().toString()).isEqualTo(Verdict.FAIL);
        }
    }

    @ParameterizedTest
    @EnumSource(Severity.class)
    void airIsSuspectedAndNotBlamedOnTheUnit(Severity severity) {
        for (int i = 0; i < UNITS; i++) {
            Grade grade = grade(PumpFault.SUCTION_AIR, severity, 4000 + i);
            assertThat(grade.verdict()).isEqualTo(Verdict.INVALID);
            assertThat(grade.reasons().get(0)).startsWith("air: AIR SUSPECTED");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = PumpFault.class,
            names = {"LEAD_RESISTANCE", "LOW_SUPPLY", "NOZZLE_PLUGGED", "NOZZLE_WORN"})
    void aModerateFaultOfTheStandIsNotBlamedOnTheUnit(PumpFault fault) {
        for (int i = 0; i < UNITS; i++) {
            assertThat(grade(fault, Severity.MODERATE, 5000 + i).verdict()).isEqualTo(Verdict.INVALID);
        }
    }

    /** Nothing on the stand shows a recirculation valve: the cause list must, with the test that costs least. */
    @Test
    void anOpenRecirculationValveIsAmongTheCauses() {
        for (int i = 0; i < UNITS; i++) {
            Grade grade = grade(PumpFault.RECIRCULATION_OPEN, Severity.MODERATE, 6000 + i);
            assertThat(grade.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(grade.causes())
                    .extracting(Cause::name)
                    .contains("a recirculation valve of the stand is not fully closed");
        }
    }

    static Stream<Arguments> namedFaults() {
        return Stream.of(
                Arguments.of(PumpFault.SLIP, "valves or diaphragms let liquid slip back"),
                Arguments.of(
                        PumpFault.DEAD_CHAMBER,
                        "one chamber pumps little or nothing (debris under a valve, torn diaphragm)"),
                Arguments.of(PumpFault.BYPASS_LOW, "the internal bypass opens too early"),
                Arguments.of(PumpFault.DRAG, "bearing or eccentric drags"),
                Arguments.of(PumpFault.WEAK_MAGNETS, "motor magnets are weak"),
                Arguments.of(PumpFault.BRUSH, "brushes or commutator make poor contact"),
                Arguments.of(PumpFault.SHORTED_TURNS, "armature turns are shorted"),
                Arguments.of(PumpFault.STRAINER, "the inlet strainer is blocked"),
                Arguments.of(PumpFault.OPEN_CIRCUIT, "winding, brush or lead is open"));
    }

    @ParameterizedTest
    @MethodSource("namedFaults")
    void aSevereFaultIsMostlyAmongTheNamedCauses(PumpFault fault, String name) {
        long named = IntStream.range(0, 12)
                .mapToObj(i -> grade(fault, Severity.SEVERE, 7000 + i))
                .filter(g -> g.causes().stream().anyMatch(cause -> cause.name().equals(name)))
                .count();
        assertThat(named).isGreaterThanOrEqualTo(10);
    }

    /** A seized pump pumps nothing and is cut off: it must not be called one that only drags. */
    @Test
    void aSeizedPumpIsCalledStuckAndIsNotToBeDrivenAgain() {
        for (int i = 0; i < UNITS; i++) {
            Grade grade = grade(PumpFault.SEIZED, Severity.MODERATE, 8000 + i);
            assertThat(grade.causes().get(0).name()).isEqualTo("the pump is stuck: seized, or full of crystals");
            assertThat(grade.nextTest()).startsWith("do not drive it again");
        }
    }
}
