package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.driver.DriverFault;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.RunEvent;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/** Every plan that is shipped, on a healthy unit of its kind on the simulated stand. */
final class ShippedPlansTest {
    private static final Path FIXTURES = Firmware.root().resolve("fixtures");
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T09:15:00Z"), ZoneOffset.UTC);
    private static final Shelf SHELF = new Shelf(FIXTURES);
    private static final Map<UnitKind, String> MODELS = Map.of(
            UnitKind.PUMP_12V, "demo-pump",
            UnitKind.HYDRAULIC_PUMP, "demo-hydraulic-pump",
            UnitKind.DRIVER, "demo-driver",
            UnitKind.METER, "demo-meter",
            UnitKind.HARNESS, "demo-harness");

    @TempDir
    private Path folder;

    private static Stream<String> plans() throws IOException {
        try (Stream<Path> files = Files.list(FIXTURES.resolve("plans"))) {
            return files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aHealthyUnitIsTakenThroughTheWholePlan(String name) throws Exception {
        Plan plan = SHELF.plan(name);
        RunRecord record = run(name, plan.kind(), PracticeUnit.healthy(plan.kind(), 1));

        assertThat(plan.id()).isEqualTo(name);
        assertThat(record.ending().kind()).as(record.ending().reason()).isEqualTo(Ending.Kind.COMPLETED);
        assertThat(record.stand().samplesLost()).isZero();
        assertThat(record.trace().points()).hasSameSizeAs(plan.points());
        assertThat(record.trace().answers())
                .extracting(Answer::step)
                .containsExactlyElementsOf(plan.steps().stream()
                        .filter(Ask.class::isInstance)
                        .map(step -> step.name())
                        .toList());
        assertThat(benchSeconds(record)).isLessThan(plan.stop().runSecondsAbove());
    }

    @Test
    void theQuickScreenTakesLessThanThreeMinutes() throws Exception {
        RunRecord record = run("quick-12v-pump", UnitKind.PUMP_12V, PracticeUnit.healthy(UnitKind.PUMP_12V, 3));
        assertThat(benchSeconds(record)).isLessThan(180);
    }

    @Test
    void aDriverThatIsStuckOnIsFoundBeforeAnythingElse() throws Exception {
        Fault stuck = PracticeUnit.fault(UnitKind.DRIVER, DriverFault.STUCK_ON.word());
        RunRecord record =
                run("driver-loads", UnitKind.DRIVER, new PracticeUnit(UnitKind.DRIVER, stuck, Severity.MODERATE, 1));

        assertThat(record.ending().kind()).isEqualTo(Ending.Kind.UNIT_OUT_OF_BOUNDS);
        assertThat(record.ending().reason()).contains("step 'output-off' at 0 %", "allowed are 0.50 A");
        assertThat(record.trace().points()).isEmpty();
        assertThat(record.trace().samples()).allMatch(sample -> undriven(sample));
    }

    @Test
    void theDriverIsProvedOffBeforeAnyOtherStepDrivesIt() throws Exception {
        Plan plan = SHELF.plan("driver-loads");
        assertThat(plan.steps().get(0)).isInstanceOf(Ask.class);
        assertThat(plan.steps().get(1)).isInstanceOfSatisfying(Hold.class, hold -> {
            assertThat(hold.duty()).isEqualTo(Duty.ZERO);
            assertThat(hold.reads()).isEqualTo(Reading.ZERO_COMMAND);
            assertThat(hold.endsAboveAmps()).isEqualTo(0.5);
        });
    }

    @Test
    void onlyPlansWithAReliefCheckRunAgainstAClosedOutletAndNeverAHydraulicPump() throws Exception {
        for (String name : plans().toList()) {
            Plan plan = SHELF.plan(name);
            boolean deadHead = plan.steps().stream()
                    .anyMatch(step -> step instanceof Hold hold && hold.reads() == Reading.DEAD_HEAD);
            assertThat(!deadHead || plan.needsReliefCheck()).as(name).isTrue();
            assertThat(deadHead && plan.kind() == UnitKind.HYDRAULIC_PUMP)
                    .as(name)
                    .isFalse();
        }
    }

    @Test
    void theDeadHeadLastsFiveSecondsAtMostAndIsAskedForBefore() throws Exception {
        RunRecord record = run("dead-head-12v-pump", UnitKind.PUMP_12V, PracticeUnit.healthy(UnitKind.PUMP_12V, 1));
        double seconds = record.trace().stretches().stream()
                .filter(stretch -> stretch.step().equals("dead-head"))
                .mapToDouble(Stretch::seconds)
                .sum();
        assertThat(seconds).isBetween(4.0, 5.0);
        assertThat(record.trace().answers()).extracting(Answer::step).containsExactly("close-outlet", "open-outlet");
    }

    @Test
    void everyHydraulicPlanEndsItsDrivingWithTheProofThatNothingFlowsWithoutACommand() throws Exception {
        for (String name : plans().toList()) {
            Plan plan = SHELF.plan(name);
            if (plan.kind() == UnitKind.HYDRAULIC_PUMP) {
                List<Hold> holds = plan.steps().stream()
                        .filter(Hold.class::isInstance)
                        .map(Hold.class::cast)
                        .toList();
                assertThat(holds.get(holds.size() - 1).reads()).as(name).isEqualTo(Reading.ZERO_COMMAND);
            }
        }
    }

    @Test
    void theOverrideMovesAHealthyUnitThatGetsNoCommandAndTheProofFindsItReturned() throws Exception {
        Trace trace = run("override-split", UnitKind.HYDRAULIC_PUMP, PracticeUnit.healthy(UnitKind.HYDRAULIC_PUMP, 1))
                .trace();
        assertThat(pulsesPerSecond(trace, "zero-command-before")).isZero();
        // 20 gal/min at 60 % and 33.4 gal/min with the valve fully open, by 600 pulses a gallon; units differ by a
        // tenth.
        assertThat(pulsesPerSecond(trace, trace.points().get(0))).isBetween(150.0, 260.0);
        assertThat(pulsesPerSecond(trace, "by-override")).isBetween(300.0, 370.0);
        assertThat(pulsesPerSecond(trace, "zero-command-after")).isZero();
    }

    @Test
    void theDriversSwitchTakesAFifthOfAVoltAtFifteenAmps() throws Exception {
        Trace trace = run("driver-loads", UnitKind.DRIVER, PracticeUnit.healthy(UnitKind.DRIVER, 1))
                .trace();
        double drop = mean(trace, "supply-pins-15a", ChannelRole.VOLTS_AT_PINS)
                - mean(trace, "output-pins-15a", ChannelRole.VOLTS_AT_PINS);
        // 15 mohm of the switch at 14.4 A, 10 % from unit to unit; the limit in use is 0.3 V.
        assertThat(drop).isCloseTo(0.215, within(0.05));
        assertThat(mean(trace, "coil-50", ChannelRole.SUPPLY_AMPS)).isCloseTo(0.9, within(0.1));
    }

    @Test
    void theHarnessPlanFindsTheOhmsOfItsWireFromTheSlope() throws Exception {
        Trace trace = run("harness-drop", UnitKind.HARNESS, PracticeUnit.healthy(UnitKind.HARNESS, 1))
                .trace();
        double volts = mean(trace, "supply-wire-15a", ChannelRole.VOLTS_AT_PINS)
                - mean(trace, "supply-wire-5a", ChannelRole.VOLTS_AT_PINS);
        double amps = mean(trace, "supply-wire-15a", ChannelRole.SUPPLY_AMPS)
                - mean(trace, "supply-wire-5a", ChannelRole.SUPPLY_AMPS);
        // 24 ft of AWG 6 at 0.3951 ohm per 1000 ft (copper wire table), 2 % from unit to unit.
        assertThat(volts / amps).isCloseTo(24 * 0.3951e-3, within(0.6e-3));
    }

    /** Of the plan's meter, over the second half of a hold. */
    private static double pulsesPerSecond(Trace trace, String step) {
        return pulsesPerSecond(trace, secondHalf(trace, step));
    }

    private static double pulsesPerSecond(Trace trace, PointMark point) {
        return pulsesPerSecond(trace, trace.between(point.measureFromNanos(), point.endNanos()));
    }

    private static double pulsesPerSecond(Trace trace, List<Sample> late) {
        Sample first = late.get(0);
        Sample last = late.get(late.size() - 1);
        int meter = trace.channels().flowMeter().index();
        return (last.meters().get(meter).edges() - first.meters().get(meter).edges())
                / (last.boardSeconds() - first.boardSeconds());
    }

    private static double mean(Trace trace, String step, ChannelRole role) {
        return secondHalf(trace, step).stream()
                .mapToDouble(sample -> trace.channels().required(role).read(sample))
                .average()
                .orElseThrow();
    }

    private static List<Sample> secondHalf(Trace trace, String step) {
        List<Sample> held =
                trace.during(trace.stretches(step, Stretch.Kind.HOLD).get(0));
        return held.subList(held.size() / 2, held.size());
    }

    private RunRecord run(String plan, UnitKind kind, PracticeUnit unit) throws Exception {
        Stands stands = new Stands(WireTiming.STANDARD, (port, baud) -> {
            throw new AssertionError("no port is to be opened");
        });
        Acceptance acceptance = new Acceptance(
                SHELF, stands, new RecordFolder(folder.resolve("records"), folder.resolve("spare")), CLOCK);
        Acceptance.Order order = new Acceptance.Order(
                "simulated",
                new Stands.Reach(Optional.empty(), Optional.of(unit), OptionalDouble.empty(), Map.of()),
                Objects.requireNonNull(MODELS.get(kind)),
                Optional.of(plan),
                "no plate",
                "A. Tester",
                UnitSystem.US);
        return acceptance
                .carryOut(order, new Unheard(), new StopButton(), Operator.NOBODY)
                .record();
    }

    /** Time for which the stand was armed. */
    private static double benchSeconds(RunRecord record) {
        List<Sample> samples = record.trace().samples();
        double waited = record.trace().stretches().stream()
                .filter(stretch -> stretch.kind() == Stretch.Kind.WAIT)
                .mapToDouble(Stretch::seconds)
                .sum();
        return samples.get(samples.size() - 1).boardSeconds() - samples.get(0).boardSeconds() - waited;
    }

    private static boolean undriven(Sample sample) {
        return sample.applied().stream().allMatch(duty -> duty.equals(Duty.ZERO));
    }

    private static final class Unheard implements RunWatcher {
        @Override
        public void begins(Plan plan, Optional<HealthyCurve> curve, StandExpectations stand) {}

        @Override
        public void heard(RunEvent event) {}
    }
}
