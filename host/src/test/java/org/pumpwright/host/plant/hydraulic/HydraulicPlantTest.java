package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.plant.UsUnits;

class HydraulicPlantTest {

    private static final HydraulicParameters HEALTHY = HydraulicParameters.healthy();
    private static final double NOZZLE = HEALTHY.stand().nozzleM3PerSecondRootPascal();

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7})
    void inTimeTheFlowComesToTheSteadyOneOnTheWayUpAndOnTheWayDown(double duty) {
        HydraulicPlant plant = plant(withoutWarming(HEALTHY));

        assertThat(gpm(hold(plant, duty, 15))).isCloseTo(Gallons.up(HEALTHY, duty), within(0.01));
        hold(plant, 1, 15);
        assertThat(gpm(hold(plant, duty, 15))).isCloseTo(Gallons.down(HEALTHY, duty), within(0.01));
    }

    @Test
    void theFlowFollowsTheValveWithTheLinesLag() {
        HydraulicPlant plant = plant(withoutWarming(HEALTHY));
        double end = Gallons.up(HEALTHY, 0.6);

        double after = gpm(hold(plant, 0.6, 1.3));

        // 1.2 s of the line after some 0.1 s of the spool: about 1 - 1/e.
        assertThat(after / end).isBetween(0.60, 0.70);
    }

    @Test
    void atFullDutyTheCoilWarmsBySixtyToEightyKelvinInAnHourAndTheCurrentFalls() {
        HydraulicPlant plant = plant(HEALTHY);
        double cold = hold(plant, 1, 1).amps();
        double warm = plant.step(3599, new double[] {0, 1}, true).amps();

        assertThat(plant.coilKelvin() - HEALTHY.stand().ambientKelvin()).isBetween(60.0, 80.0);
        assertThat(cold).isCloseTo(1.89, within(0.01));
        assertThat(hold(plant, 1, 1).amps()).isLessThan(1.55);
        assertThat(warm).isBetween(1.5, 1.7);
    }

    @Test
    void theLargeMeterCountsTheFlowAndTheSmallOneIsSilent() {
        HydraulicPlant plant = plant(withoutWarming(HEALTHY));
        hold(plant, 0.6, 15);
        int count = 0;
        for (int i = 0; i < 6000; i++) {
            double[][] edges = plant.step(0.01, new double[] {0, 0.6}, true).edgeOffsetsSeconds();
            assertThat(edges[0]).isEmpty();
            count += edges[1].length;
        }

        double expected = 60 * HEALTHY.meter().pulsesPerSecond(Gallons.up(HEALTHY, 0.6) * GALLON_PER_MINUTE);
        assertThat((double) count).isCloseTo(expected, within(0.002 * expected));
        assertThat(HEALTHY.meter().pulsesPerSecond(15 * GALLON_PER_MINUTE)).isCloseTo(150, within(1e-9));
    }

    @Test
    void theOverrideGivesFlowWithoutCurrentAndOilOffTakesIt() {
        HydraulicPlant plant = plant(HydraulicFault.COIL_OPEN.applyTo(HEALTHY, Severity.MODERATE));

        assertThat(gpm(hold(plant, 1, 10))).isCloseTo(0, within(1e-9));
        plant.setOverride(1);
        assertThat(gpm(hold(plant, 0, 15))).isCloseTo(33.4, within(0.1));
        plant.setOilOn(false);
        assertThat(gpm(hold(plant, 0, 20))).isCloseTo(0, within(0.01));
    }

    @Test
    void aSmallerNozzleRaisesThePressure() {
        HydraulicPlant plant = plant(withoutWarming(HEALTHY));
        double before = hold(plant, 0.5, 15).pressurePa();

        plant.fitNozzle(0.6 * NOZZLE);

        assertThat(hold(plant, 0.5, 15).pressurePa()).isGreaterThan(2 * before);
    }

    @Test
    void theSensorInTheSupplyLeadSeesDutyTimesTheCoilsCurrent() {
        HydraulicParameters supply =
                withoutWarming(HEALTHY.withStand(HEALTHY.stand().withAmpsInSupplyLead()));

        double coil = hold(plant(withoutWarming(HEALTHY)), 0.5, 2).amps();

        assertThat(hold(plant(supply), 0.5, 2).amps()).isCloseTo(0.5 * coil, within(1e-6));
    }

    @Test
    void aStickingSpoolMovesInStepsWhereAHealthyOneMovesSmoothly() {
        int healthy = standstills(HEALTHY);
        int sticking = standstills(HydraulicFault.SPOOL_STICKY.applyTo(HEALTHY, Severity.SEVERE));

        assertThat(healthy).isZero();
        assertThat(sticking).isGreaterThan(3);
    }

    @Test
    void theSameSeedGivesTheSameOutputToTheBitAndAnotherSeedAnother() {
        assertThat(trace(7)).isEqualTo(trace(7)).isNotEqualTo(trace(8));
    }

    @Test
    void withTheContactorOpenThereIsNoCurrentAndNoVoltage() {
        HydraulicPlant plant = plant(HEALTHY);
        PlantReading reading = plant.step(1, new double[] {0, 1}, false);

        assertThat(reading.amps()).isZero();
        assertThat(reading.voltsAtPins()).isZero();
    }

    @Test
    void aStandWithoutAValveDriveIsRefused() {
        HydraulicPlant plant = plant(HEALTHY);

        assertThatThrownBy(() -> plant.step(0.01, new double[] {1}, true))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("only 1 duties given: the valve hangs on drive 1");
    }

    @Test
    void thirtyHealthyUnitsDifferAndAreTheSameAgain() {
        List<HydraulicParameters> units = new HydraulicPopulation(2026).units(30);

        assertThat(units).doesNotHaveDuplicates().isEqualTo(new HydraulicPopulation(2026).units(30));
        assertThat(units).allSatisfy(unit -> {
            assertThat(Gallons.up(unit, 1)).isBetween(28.0, 39.0);
            assertThat(Gallons.startPercent(unit)).isBetween(19, 32);
        });
        assertThat(units.get(3)).isEqualTo(new HydraulicPopulation(2026).unit(3));
        assertThatThrownBy(() -> new HydraulicPopulation(1).unit(-1)).hasMessage("unit number -1 is below 0");
    }

    /** How often a slow ramp's opening rests for 0.2 s and moves again, once it has begun to move. */
    private static int standstills(HydraulicParameters p) {
        Spool spool = new Spool(p.spool(), p.stand().dither());
        int found = 0;
        double before = 0;
        boolean moving = false;
        for (int i = 0; i < 400; i++) {
            double opening = spool.advance(0.2, i * 0.005, 0);
            boolean moves = opening > before + 1e-4;
            if (moving && !moves && opening < 0.95 && opening > 0) {
                found++;
            }
            moving = moves;
            before = opening;
        }
        return found;
    }

    private static List<Object> trace(long seed) {
        HydraulicPlant plant = new HydraulicPlant(HEALTHY, SensorErrors.drawn(seed), seed);
        List<Object> trace = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            PlantReading r = plant.step(0.01, new double[] {0, 0.5}, true);
            for (double edge : r.edgeOffsetsSeconds()[1]) {
                trace.add(edge);
            }
            trace.add(List.of(r.amps(), r.voltsAtPins(), r.pressurePa(), r.waterTemperatureKelvin()));
        }
        return trace;
    }

    private static HydraulicParameters withoutWarming(HydraulicParameters p) {
        CoilParameters c = p.coil();
        return p.withCoil(new CoilParameters(
                c.ohmsAt20Celsius(),
                c.seriesOhms(),
                c.forceShare(),
                c.henry(),
                0,
                c.warmingSeconds(),
                c.startRiseKelvin()));
    }

    private static HydraulicPlant plant(HydraulicParameters p) {
        return new HydraulicPlant(p, SensorErrors.none(), 1);
    }

    private static PlantReading hold(HydraulicPlant plant, double duty, double seconds) {
        plant.step(seconds, new double[] {0, duty}, true);
        return plant.step(0.01, new double[] {0, duty}, true);
    }

    private static double gpm(PlantReading reading) {
        return UsUnits.nozzle(3.9) * Math.sqrt(Math.max(0, reading.pressurePa())) / GALLON_PER_MINUTE;
    }
}
