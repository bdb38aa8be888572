package org.pumpwright.host.plant.driver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.plant.Severity;

/** Limits of a healthy module and signatures of the faults (common practice, no source; sizes assumed). */
class DriverStateTest {

    private static final DriverParameters HEALTHY = DriverParameters.healthy();
    private static final DriverStand RESISTOR = DriverStand.with(DummyLoad.resistor());
    private static final DriverStand FIFTEEN = DriverStand.with(DummyLoad.fifteenAmps());
    private static final DriverStand COIL = DriverStand.with(DummyLoad.coil());

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.25, 0.5, 0.75, 0.95})
    void thirtyHealthyModulesGiveTheCommandWithinOnePercentAtTheirFrequency(double command) {
        assertThat(new DriverPopulation(2026).units(30)).allSatisfy(unit -> {
            assertThat(DriverState.of(unit, RESISTOR, command).duty()).isCloseTo(command, within(0.01));
            assertThat(unit.logic().frequencyHertz()).isCloseTo(150, within(0.05 * 150));
        });
    }

    @Test
    void aHealthyModuleDropsLittleAndLeaksLittle() {
        DriverState full = DriverState.of(HEALTHY, FIFTEEN, 1);
        DriverState off = DriverState.of(HEALTHY, FIFTEEN, 0);

        assertThat(full.loadAmps()).isBetween(14.0, 15.0);
        assertThat(full.dropVolts() + full.groundLiftVolts()).isBetween(0.1, 0.3);
        assertThat(off.loadAmps()).isLessThan(0.005);
        assertThat(off.supplyAmps()).isBetween(0.02, 0.08);
    }

    @ParameterizedTest
    @CsvSource({"MILD, 0.030", "MODERATE, 0.060", "SEVERE, 0.150"})
    void highResistanceShowsAtTheOutputPins(Severity severity, double ohms) {
        DriverState state = DriverState.of(DriverFault.HIGH_RESISTANCE.applyTo(HEALTHY, severity), FIFTEEN, 1);

        assertThat(state.dropVolts()).isCloseTo(ohms * state.loadAmps(), within(1e-9));
        assertThat(state.outputVolts())
                .isLessThan(DriverState.of(HEALTHY, FIFTEEN, 1).outputVolts());
    }

    @ParameterizedTest
    @CsvSource({"MILD, 16", "MODERATE, 12", "SEVERE, 8"})
    void aLowLimitIsACeiling(Severity severity, double limit) {
        DriverParameters faulty = DriverFault.LIMIT_LOW.applyTo(HEALTHY, severity);
        DriverStand heavy = DriverStand.with(new DummyLoad(0.6, 0, 1, 1));

        assertThat(DriverState.of(faulty, heavy, 1).loadAmps()).isCloseTo(limit, within(0.001));
        assertThat(DriverState.of(faulty, heavy, 0.2).loadAmps())
                .isEqualTo(DriverState.of(HEALTHY, heavy, 0.2).loadAmps());
    }

    @Test
    void anOpenFreewheelPathShowsOnTheCoilOnlyAndSpikes() {
        DriverParameters faulty = DriverFault.FREEWHEEL_OPEN.applyTo(HEALTHY, Severity.MODERATE);

        assertThat(DriverState.of(faulty, COIL, 0.5).loadAmps())
                .isLessThan(0.5 * DriverState.of(HEALTHY, COIL, 0.5).loadAmps());
        assertThat(DriverState.of(faulty, COIL, 0.5).peakVolts()).isGreaterThan(40);
        assertThat(DriverState.of(HEALTHY, COIL, 0.5).peakVolts()).isLessThan(16);
        assertThat(DriverState.of(faulty, RESISTOR, 0.5)).isEqualTo(DriverState.of(HEALTHY, RESISTOR, 0.5));
    }

    @Test
    void aShortedSwitchGivesFullCurrentAtZeroCommandAndAnOpenOneNoneAtFull() {
        DriverParameters stuck = DriverFault.STUCK_ON.applyTo(HEALTHY, Severity.MILD);
        DriverParameters open = DriverFault.OUTPUT_OPEN.applyTo(HEALTHY, Severity.MILD);

        assertThat(DriverState.of(stuck, RESISTOR, 0).loadAmps())
                .isEqualTo(DriverState.of(HEALTHY, RESISTOR, 1).loadAmps());
        assertThat(DriverState.of(open, RESISTOR, 1).loadAmps()).isZero();
    }

    @Test
    void aCorrodedGroundLiftsTheCaseAndLowersEverything() {
        DriverState state =
                DriverState.of(DriverFault.GROUND_CORRODED.applyTo(HEALTHY, Severity.MODERATE), RESISTOR, 1);

        assertThat(state.groundLiftVolts()).isCloseTo(0.15 * state.loadAmps(), within(1e-9));
        assertThat(state.outputVolts())
                .isCloseTo(
                        13.8 - state.supplyAmps() * 0.05 - state.dropVolts() - state.groundLiftVolts(), within(1e-9));
    }

    @Test
    void offsetAndBendShowInTheDutyOfADummySweep() {
        DriverParameters faulty = DriverFault.DUTY_OFF.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(DriverState.of(faulty, RESISTOR, 0.5).duty() - 0.5).isCloseTo(0.18, within(0.001));
        assertThat(DriverState.of(faulty, RESISTOR, 0.05).duty() - 0.05).isCloseTo(0.115, within(0.001));
        assertThat(DriverState.of(faulty, RESISTOR, 0).duty()).isZero();
    }

    @Test
    void aDeafModuleGivesNothingAndAReversedOneIsOpenOrShortsItsSupply() {
        DriverParameters deaf = DriverFault.COMMAND_DEAD.applyTo(HEALTHY, Severity.MILD);
        DriverParameters blown = DriverFault.REVERSED_SUPPLY.applyTo(HEALTHY, Severity.MODERATE);
        DriverParameters shorted = DriverFault.REVERSED_SUPPLY.applyTo(HEALTHY, Severity.SEVERE);

        assertThat(DriverState.of(deaf, RESISTOR, 1).loadAmps()).isLessThan(0.005);
        assertThat(DriverState.of(blown, RESISTOR, 1).supplyAmps()).isZero();
        assertThat(DriverState.of(shorted, RESISTOR, 0).supplyAmps()).isCloseTo(15, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource
    void waterDrawsAndLeaksMoreThanAHealthyModuleMay(Severity severity) {
        DriverState off = DriverState.of(DriverFault.WATER_INGRESS.applyTo(HEALTHY, severity), RESISTOR, 0);

        assertThat(off.supplyAmps()).isGreaterThan(0.08);
        assertThat(off.loadAmps()).isGreaterThan(0.005);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "HEALTHY")
    void everyFaultChangesTheModule(DriverFault fault) {
        for (Severity severity : Severity.values()) {
            assertThat(fault.applyTo(HEALTHY, severity)).isNotEqualTo(HEALTHY);
        }
        assertThat(DriverFault.HEALTHY.applyTo(HEALTHY, Severity.SEVERE)).isEqualTo(HEALTHY);
    }

    @Test
    void theWordsAreDistinctAndAUnitIsTheSameAgain() {
        List<String> words =
                Arrays.stream(DriverFault.values()).map(DriverFault::word).toList();

        assertThat(new HashSet<>(words)).hasSameSizeAs(words);
        assertThat(words).allMatch(word -> word.matches("[a-z]+(-[a-z]+)*"));
        assertThat(new DriverPopulation(5).unit(3))
                .isEqualTo(new DriverPopulation(5).units(9).get(3));
        assertThatThrownBy(() -> new DriverPopulation(5).unit(-1)).hasMessage("unit number -1 is below 0");
    }
}
