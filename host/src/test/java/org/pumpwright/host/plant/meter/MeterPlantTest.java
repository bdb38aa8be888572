package org.pumpwright.host.plant.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_M3;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;

class MeterPlantTest {

    private static final MeterBench SMALL = MeterBench.small();
    private static final MeterBench LARGE = MeterBench.large();
    private static final MeterBench SMALL_EM = SMALL.withUnit(ReturnedMeter.smallElectromagnetic());

    /** Hz = K gal/min / 60: 3000 a gallon are 5 Hz at 0.1 and 250 Hz at 5 gal/min, 600 are 10 at 1 and 300 at 30. */
    @ParameterizedTest
    @CsvSource({"3000, 0.1, 5, 0.05", "3000, 5, 250, 0.005", "600, 1, 10, 0.05", "600, 30, 300, 0.005"})
    void theFrequencyIsKTimesTheFlow(double k, double gpm, double hertz, double lagShare) {
        ReturnedMeter meter = k == 3000 ? ReturnedMeter.small() : ReturnedMeter.large();

        assertThat(meter.pulsesPerSecond(gpm * GALLON_PER_MINUTE)).isCloseTo(hertz, within(lagShare * hertz));
    }

    /**
     * A flow-meter manual's five-point calibration prints K 3078.59 at 15 and 3101.80 at 2.0 gal/min; the model's own
     * shape, K_inf (1 - b/Q), falls towards low flow instead and is held to its formula.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.4, 1, 5})
    void kFallsTowardsLowFlowByLagOverFlow(double gpm) {
        double flow = gpm * GALLON_PER_MINUTE;
        double k = ReturnedMeter.small().pulsesPerSecond(flow) / flow * GALLON_M3;
        double limit = 3000 / (1 - 0.004 / 2.5);

        assertThat(k).isCloseTo(limit * (1 - 0.004 / gpm), within(1e-6));
    }

    @Test
    void aHealthyLargeMeterAgreesWithTheLargeMaster() {
        assertThat(MeterTrain.of(LARGE, 0.6, 60).errorAgainstMaster()).isCloseTo(0, within(0.002));
    }

    @Test
    void anElectromagneticMeterGivesItsPulsesInBurstsAndCountsRight() {
        MeterTrain train = MeterTrain.of(SMALL_EM, 0.6, 120);

        // K (Q + q_0) with q_0 = 0.003 against the master's K (Q - b) about 2.6 gal/min.
        assertThat(train.errorAgainstMaster()).isCloseTo(0.001, within(0.004));
        assertThat(train.intervals().percentAbove(1.6)).isGreaterThan(5);
    }

    @Test
    void anElectromagneticMeterIsSilentBelowItsCutOffThoughWaterFlows() {
        MeterPlant plant =
                new MeterPlant(ReturnedMeter.largeElectromagnetic(), MeterLoop.large(), SensorErrors.none(), 5);
        double duty = 0.15 + 0.85 * 0.2 / 30;

        plant.step(20, new double[] {duty}, true);
        MeterTrain train = MeterTrain.collect(plant, duty, 60);

        assertThat(plant.liquidFlow() / GALLON_PER_MINUTE).isCloseTo(0.2, within(0.001));
        assertThat(train.edges()).isEmpty();
    }

    @Test
    void dirtyElectrodesTripleTheNoiseAndShiftTheZero() {
        MeterBench dirty = MeterFault.DIRTY_ELECTRODES.applyTo(SMALL_EM, Severity.MODERATE);
        EmParameters before = ((FlowSensor.Electromagnetic) SMALL_EM.unit().sensor()).parameters();
        EmParameters after = ((FlowSensor.Electromagnetic) dirty.unit().sensor()).parameters();

        assertThat(after.noiseM3PerSecond() / before.noiseM3PerSecond()).isCloseTo(3, within(1e-9));
        double error = MeterTrain.of(dirty, 0.4, 120).errorAgainstMaster();
        assertThat(error).isCloseTo(0.05 / 1.47, within(0.01));
    }

    @Test
    void aGroundLoopAddsFlowOnlyWhileThePumpIsDriven() {
        MeterBench loop = MeterFault.GROUND_LOOP.applyTo(SMALL_EM, Severity.SEVERE);
        MeterPlant plant = new MeterPlant(loop.unit(), loop.loop(), SensorErrors.none(), 5);
        plant.shutOutlet(true);

        plant.step(5, new double[] {0.5}, true);
        int driven = MeterTrain.collect(plant, 0.5, 30).edges().size();
        plant.step(10, new double[] {0}, true);
        int resting = MeterTrain.collect(plant, 0, 30).edges().size();

        assertThat(driven).isGreaterThan(500);
        assertThat(resting).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void interferenceAtZeroFlowIsLockedToTheDrivesPeriod(Severity severity) {
        MeterBench bench = MeterFault.INTERFERENCE.applyTo(SMALL, severity);
        MeterPlant plant = new MeterPlant(bench.unit(), bench.loop(), SensorErrors.none(), 5);
        plant.shutOutlet(true);

        List<Double> edges = MeterTrain.collect(plant, 0.5, 5).edges();
        MeterTrain off = MeterTrain.collect(plant, 0, 5);
        MeterTrain flowing = MeterTrain.of(bench, 0.6, 20);

        assertThat((double) edges.size())
                .isCloseTo(5 * 7812.5 * severity.pick(0.002, 0.02, 1), within(0.3 * edges.size() + 5));
        for (int i = 1; i < edges.size(); i++) {
            double periods = (edges.get(i) - edges.get(i - 1)) * 7812.5;
            assertThat(periods).isCloseTo(Math.rint(periods), within(1e-6)).isGreaterThan(0.5);
        }
        assertThat(off.edges()).isEmpty();
        assertThat(flowing.errorAgainstMaster()).isCloseTo(0, within(0.004));
    }

    @ParameterizedTest
    @EnumSource(names = {"HEALTHY", "DOUBLE_PULSES", "LOST_BLADE", "LOOP_AIR", "WORN_BEARING"})
    void edgesAreAscendingAndWithinTheirStep(MeterFault fault) {
        MeterBench bench = fault.applyTo(SMALL, Severity.SEVERE);
        MeterPlant plant = new MeterPlant(bench.unit(), bench.loop(), SensorErrors.none(), 7);
        for (int i = 0; i < 3000; i++) {
            double[] edges = plant.step(0.007, new double[] {0.7}, true).edgeOffsetsSeconds()[1];
            for (int j = 0; j < edges.length; j++) {
                assertThat(edges[j]).isBetween(j == 0 ? 0 : edges[j - 1], 0.007 + 1e-12);
            }
        }
    }

    @Test
    void withAirInTheLoopBothMetersCountMoreThanTheLiquid() {
        MeterBench airy = MeterFault.LOOP_AIR.applyTo(SMALL, Severity.MODERATE);
        MeterPlant plant = new MeterPlant(airy.unit(), airy.loop(), SensorErrors.none(), 5);
        plant.step(15, new double[] {0.6}, true);

        MeterTrain train = MeterTrain.collect(plant, 0.6, 120);

        double counted = train.masterCount() / 120.0 / (3000 / GALLON_M3);
        assertThat(counted / plant.liquidFlow()).isCloseTo(1 / 0.85, within(0.02));
    }

    @Test
    void aDeadMeterIsSilentWhileTheMasterCounts() {
        MeterTrain train = MeterTrain.of(MeterFault.NO_PULSES.applyTo(SMALL, Severity.MILD), 0.6, 10);

        assertThat(train.edges()).isEmpty();
        assertThat(train.masterCount()).isGreaterThan(1000);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "HEALTHY")
    void everyFaultChangesMeterOrLoopOrIsRefusedByKind(MeterFault fault) {
        MeterBench bench = fault.fits(SMALL.unit()) ? SMALL : SMALL_EM;
        for (Severity severity : Severity.values()) {
            assertThat(fault.applyTo(bench, severity)).isNotEqualTo(bench);
            assertThat(fault.applyTo(bench, severity).loop().equals(bench.loop()))
                    .isEqualTo(!fault.word().startsWith("loop"));
        }
    }

    @Test
    void aFaultOfTheOtherKindIsRefused() {
        assertThatThrownBy(() -> MeterFault.LOST_BLADE.applyTo(SMALL_EM, Severity.MILD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an electromagnetic meter has no rotor");
        assertThatThrownBy(() -> MeterFault.GROUND_LOOP.applyTo(SMALL, Severity.MILD))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a rotor meter has no electrodes");
    }

    @Test
    void aPopulationSpreadsInKAndRepeats() {
        List<ReturnedMeter> units = new MeterPopulation(ReturnedMeter.small(), 2026).units(400);
        double flow = 2.5 * GALLON_PER_MINUTE;
        double[] ratios = units.stream()
                .mapToDouble(unit -> unit.pulsesPerSecond(flow) / 125 - 1)
                .toArray();
        double square = Arrays.stream(ratios).map(x -> x * x).average().orElseThrow();

        assertThat(Math.sqrt(square)).isCloseTo(0.012, within(0.0015));
        assertThat(units.get(7)).isEqualTo(new MeterPopulation(ReturnedMeter.small(), 2026).unit(7));
        assertThat(new MeterPopulation(ReturnedMeter.largeElectromagnetic(), 1).units(20))
                .doesNotHaveDuplicates();
    }

    @Test
    void theWordsAreDistinct() {
        List<String> words =
                Arrays.stream(MeterFault.values()).map(MeterFault::word).toList();

        assertThat(new HashSet<>(words)).hasSameSizeAs(words);
        assertThat(words).allMatch(word -> word.matches("[a-z]+(-[a-z]+)*"));
    }

    @Test
    void theSameSeedGivesTheSameOutputToTheBit() {
        MeterBench bench =
                MeterFault.LOOP_AIR.applyTo(MeterFault.MISSING_PULSES.applyTo(SMALL, Severity.SEVERE), Severity.SEVERE);

        assertThat(MeterTrain.of(bench, 0.7, 10)).isEqualTo(MeterTrain.of(bench, 0.7, 10));
    }
}
