package org.pumpwright.host.plant.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import org.junit.jupiter.api.Test;
import org.pumpwright.host.plant.UsUnits;

/** Published worked examples of oil power, of copper's resistance and of flow through an orifice. */
class HydraulicTextbookTest {

    private static final double HORSEPOWER_WATT = 745.69987;

    /** A toolbox page on hydraulic pumps prints 17.5 hp for 20 gal/min at 1500 psi (its constant is 1714). */
    @Test
    void anIdealMotorTurnsTwentyGallonsAtFifteenHundredPsiIntoSeventeenAndAHalfHorsepower() {
        double oil = 20 * GALLON_PER_MINUTE;
        OilMotorParameters ideal = new OilMotorParameters(80e-6 / (2 * Math.PI), 0, 1, 0, 1e8, true);

        double speed = oil / ideal.displacementM3PerRadian();
        double torque = 1500 * PSI * ideal.displacementM3PerRadian();

        assertThat(ideal.dropPascal(torque)).isCloseTo(1500 * PSI, within(1e-3));
        assertThat(torque * speed / HORSEPOWER_WATT).isCloseTo(17.5, within(0.01));
    }

    /** A worked answer on a physics forum: 80 ohm at 20 °C, 100 ohm at 83.63 °C. */
    @Test
    void copperOfEightyOhmHasAHundredAtEightyThreeAndAHalfDegrees() {
        CoilParameters coil = CoilParameters.healthy().withWinding(80, 1);

        // The published answer uses 1/254.5 = 0.003929, this model the handbook's 0.00393: 0.01 ohm apart.
        assertThat(coil.windingOhms(83.63 + UsUnits.ZERO_CELSIUS_KELVIN)).isCloseTo(100, within(0.02));
    }

    /** Computed from the same rule: 7.0 ohm draws 1.7143 A from 12 V cold and 1.3655 A at 85 °C. */
    @Test
    void aWarmCoilDrawsLess() {
        CoilParameters coil = CoilParameters.healthy().withWinding(7, 1);
        HydraulicStand twelve = HydraulicStand.inOrder().withFeed(12, 0);

        assertThat(twelve.coilAmps(1, coil.windingOhms(HydraulicStand.REFERENCE_KELVIN)))
                .isCloseTo(1.7143, within(5e-5));
        assertThat(twelve.coilAmps(1, coil.windingOhms(85 + UsUnits.ZERO_CELSIUS_KELVIN)))
                .isCloseTo(1.3655, within(3e-4));
    }

    /** Several extension bulletins: flow goes as the root of the pressure. */
    @Test
    void theNozzlesFlowGoesAsTheRootOfThePressure() {
        double nozzle = UsUnits.nozzle(3.9);
        LoadPoint slow = DisplacementHead.healthy().against(20, nozzle);
        LoadPoint fast = DisplacementHead.healthy().against(50, nozzle);

        assertThat(fast.flowM3PerSecond() / slow.flowM3PerSecond())
                .isCloseTo(Math.sqrt(fast.pressurePa() / slow.pressurePa()), within(1e-12));
    }
}
