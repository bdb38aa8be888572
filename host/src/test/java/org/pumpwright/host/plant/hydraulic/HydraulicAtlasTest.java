package org.pumpwright.host.plant.hydraulic;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.Severity.MILD;
import static org.pumpwright.host.plant.Severity.MODERATE;
import static org.pumpwright.host.plant.Severity.SEVERE;

import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.plant.Severity;

/**
 * Change against the healthy unit at 30, 50, 70 and 100 % duty on the way up, coil current and hysteresis, computed by an
 * independent program in another language and printed in whole percent.
 */
class HydraulicAtlasTest {

    private static final HydraulicParameters HEALTHY = HydraulicParameters.healthy();
    private static final double[] DUTIES = {0.3, 0.5, 0.7, 1.0};

    /** Half a percent of rounding and a little for the printed values' own arithmetic. */
    private static final double PRINTED_PERCENT = 0.6;

    private static final Map<String, UnaryOperator<HydraulicParameters>> FAULTS = Map.ofEntries(
            entry("coil hot 70 K", p -> HydraulicFault.COIL_HOT.applyTo(p, MODERATE)),
            entry("supply 12.4 V", p -> HydraulicFault.LOW_SUPPLY.applyTo(p, MODERATE)),
            entry("plug +2 ohm", p -> HydraulicFault.CORRODED_PLUG.applyTo(p, MODERATE)),
            entry("coil shorted", p -> HydraulicFault.COIL_SHORTED.applyTo(p, MODERATE)),
            entry("spool sticky", p -> HydraulicFault.SPOOL_STICKY.applyTo(p, MODERATE)),
            entry("spring weak", p -> HydraulicFault.SPRING_WEAK.applyTo(p, MODERATE)),
            entry("dead band high", p -> HydraulicFault.DEAD_BAND_HIGH.applyTo(p, MODERATE)),
            entry("compensator stuck", p -> HydraulicFault.COMPENSATOR_STUCK.applyTo(p, SEVERE)),
            entry("oil 7 gpm", p -> HydraulicFault.OIL_SHORT.applyTo(p, MODERATE)),
            entry("motor worn x6", p -> HydraulicFault.MOTOR_WORN.applyTo(p, MODERATE)),
            entry("slip x30", p -> p.withHead(DisplacementHead.healthy().withLeaks(60e-11, 4e-6 / (2 * Math.PI)))),
            entry("one chamber dead", p -> HydraulicFault.DEAD_CHAMBER.applyTo(p, SEVERE)),
            entry("air 10 %", p -> p.withHead(p.head().withAir(0.10))),
            entry("relief low", p -> HydraulicFault.RELIEF_LOW.applyTo(p, MILD)),
            entry("nozzle plugged 40 %", p -> HydraulicFault.NOZZLE_PLUGGED.applyTo(p, MODERATE)),
            entry("oil cold", p -> HydraulicFault.OIL_COLD.applyTo(p, MODERATE)));

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "coil hot 70 K, -84/-40/-32/-5, 1.48, 7, 30",
        "supply 12.4 V, -41/-17/-14/0, 1.72, 7, 27",
        "plug +2 ohm, -84/-40/-33/-5, 1.48, 7, 30",
        "coil shorted, 101/44/28/0, 2.91, 7, 21",
        "spool sticky, -87/-23/-13/0, 1.89, 27, 30",
        "spring weak, 90/13/3/0, 1.89, 6, 18",
        "dead band high, -100/-26/-5/0, 1.89, 8, 34",
        "compensator stuck, 11/10/6/4, 1.89, 7, 25",
        "oil 7 gpm, 0/0/-23/-40, 1.89, 7, 25",
        "motor worn x6, -17/-7/-8/-9, 1.89, 6, 26",
        "slip x30, -1/-5/-8/-10, 1.89, 6, 25",
        "one chamber dead, -33/-33/-32/-31, 1.89, 5, 25",
        "nozzle plugged 40 %, 0/-3/-6/-8, 1.89, 6, 25",
        "relief low, 0/0/0/-2, 1.89, 7, 25"
    })
    void theFaultChangesFlowAmpsHysteresisAndStartAsTheAtlasSays(
            String fault, String flows, double amps, double hysteresis, int start) {
        HydraulicParameters faulty = FAULTS.get(fault).apply(HEALTHY);

        String[] flow = flows.split("/");
        for (int i = 0; i < DUTIES.length; i++) {
            assertThat(Gallons.changePercent(faulty, DUTIES[i]))
                    .as("flow at duty %s", DUTIES[i])
                    // The weak spring's +89.0 is printed as +90.
                    .isCloseTo(
                            Double.parseDouble(flow[i]), within(fault.equals("spring weak") ? 1.05 : PRINTED_PERCENT));
        }
        assertThat(HydraulicSteadyState.of(faulty, 1, Direction.UP).coilAmps()).isCloseTo(amps, within(0.005));
        assertThat(Gallons.hysteresisPercent(faulty)).isCloseTo(hysteresis, within(0.55));
        assertThat(Gallons.startPercent(faulty)).isCloseTo(start, within(1));
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.5", "0.7", "1.0"})
    void tenPercentOfAirTakesTenPercentFlat(double duty) {
        assertThat(Gallons.changePercent(FAULTS.get("air 10 %").apply(HEALTHY), duty))
                .isCloseTo(-10, within(0.8));
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.5", "0.7", "1.0"})
    void coldOilGivesAPercentMoreFlowAndAHigherDrop(double duty) {
        HydraulicParameters cold = FAULTS.get("oil cold").apply(HEALTHY);

        assertThat(Gallons.changePercent(cold, duty)).isCloseTo(1, within(0.6));
        assertThat(HydraulicSteadyState.of(cold, duty, Direction.UP).motorDropPa())
                .isGreaterThan(
                        HydraulicSteadyState.of(HEALTHY, duty, Direction.UP).motorDropPa());
    }

    @Test
    void theMotorDropTellsADeadChamberFromAPluggedNozzle() {
        assertThat(drop("one chamber dead")).isCloseTo(126, within(0.6));
        assertThat(drop("nozzle plugged 40 %")).isCloseTo(694, within(0.6));
    }

    @Test
    void aWornMotorIsWorseAgainstAPluggedNozzleAndDrainsMoreThanFivePercent() {
        HydraulicParameters worn = FAULTS.get("motor worn x6").apply(HEALTHY);
        HydraulicParameters both = FAULTS.get("nozzle plugged 40 %").apply(worn);
        HydraulicSteadyState full = HydraulicSteadyState.of(worn, 1, Direction.UP);

        assertThat(Gallons.changePercent(both, 1)).isCloseTo(-22, within(0.5));
        assertThat(full.caseDrainM3PerSecond() / full.oilM3PerSecond()).isGreaterThan(0.05);
    }

    @Test
    void aShortOilSupplySagsAndALowReliefIsACeilingOfPressureThatALargerLoadReaches() {
        HydraulicSteadyState oil =
                HydraulicSteadyState.of(FAULTS.get("oil 7 gpm").apply(HEALTHY), 1, Direction.UP);
        HydraulicParameters relief = FAULTS.get("relief low").apply(HEALTHY);

        assertThat(oil.supplyPa()).isLessThan(0.2 * HEALTHY.oil().pressurePascal());
        assertThat(Gallons.changePercent(FAULTS.get("nozzle plugged 40 %").apply(relief), 1))
                .isLessThan(-30);
        assertThat(drop("relief low")).isCloseTo(305, within(0.01));
    }

    @Test
    void aDriveThatRegulatesCurrentDoesNotSeeAHotCoil() {
        HydraulicParameters cold = HEALTHY.withStand(HEALTHY.stand().withDrive(HydraulicStand.Drive.CURRENT, 0.075));
        HydraulicParameters hot = HydraulicFault.COIL_HOT.applyTo(cold, MODERATE);

        assertThat(Gallons.up(hot, 0.5)).isEqualTo(Gallons.up(cold, 0.5));
        assertThat(Gallons.changePercent(HydraulicFault.COIL_HOT.applyTo(HEALTHY, MODERATE), 0.5))
                .isLessThan(-30);
    }

    @ParameterizedTest
    @CsvSource({"MILD, 10", "MODERATE, 20", "SEVERE, 40"})
    void aStickySpoolHasTheHysteresisOfItsSeverity(Severity severity, double percentOfFullCurrent) {
        SpoolParameters sticky =
                HydraulicFault.SPOOL_STICKY.applyTo(HEALTHY, severity).spool();

        assertThat(100 * sticky.hysteresisAmps(HEALTHY.stand().dither()) / sticky.fullAmps())
                .isCloseTo(percentOfFullCurrent, within(1e-6));
    }

    private static double drop(String fault) {
        HydraulicParameters faulty = FAULTS.get(fault).apply(HEALTHY);
        return Gallons.psi(HydraulicSteadyState.of(faulty, 1, Direction.UP).motorDropPa());
    }
}
