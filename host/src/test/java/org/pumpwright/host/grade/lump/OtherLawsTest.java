package org.pumpwright.host.grade.lump;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPhysics;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.quantity.Uncertain;

/** What becomes of the fit when units do not obey the laws that it knows. */
final class OtherLawsTest {
    private static final int PUMPS = 100;

    /** The mean of a hundred errors scatters by 0.1 of their uncertainty. */
    private static final double CHANCE = 0.4;

    private static final double[] FAST = {0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};

    private final double[] sum = new double[Layout.LUMPS];
    private int plausible;

    @Test
    void withoutSlowPointsFrictionThatFallsWithSpeedDoesNoHarm() {
        readAll(PumpPhysics.PLAIN.withStribeckAt(40), FAST);

        assertThat(plausible).isGreaterThanOrEqualTo(PUMPS - 2);
        for (int i = 0; i < Layout.LUMPS; i++) {
            assertThat(sum[i] / PUMPS).as(Layout.FITTED.get(i).words()).isBetween(-CHANCE, CHANCE);
        }
    }

    @Test
    void withSlowPointsItShowsAsReadingsThatDoNotBelongToSuchAPump() {
        readAll(PumpPhysics.PLAIN.withStribeckAt(40), SweptPump.DUTIES);

        assertThat(plausible).isLessThan(PUMPS / 10);
    }

    @Test
    void withPressureReadTheNozzlesExponentDoesNotMatter() {
        readAll(PumpPhysics.PLAIN.withNozzleExponent(0.54), SweptPump.DUTIES);

        assertThat(plausible).isGreaterThanOrEqualTo(PUMPS - 2);
        for (int i = 0; i < Layout.LUMPS; i++) {
            assertThat(sum[i] / PUMPS).as(Layout.FITTED.get(i).words()).isBetween(-CHANCE, CHANCE);
        }
    }

    private void readAll(PumpPhysics laws, double... duties) {
        PumpPopulation population = new PumpPopulation(7);
        for (int number = 0; number < PUMPS; number++) {
            PumpParameters pump = population.unit(number).withPhysics(laws);
            SweptPump swept = new SweptPump(pump, SweptPump.USUAL, 1000 + number);
            LumpInput input = swept.sweep(true, duties).with(swept.deadHead()).with(swept.standstill());
            Lumps lumps = ((LumpFit.Fitted) LumpFit.of(input)).lumps();
            plausible += lumps.plausible() ? 1 : 0;
            for (int i = 0; i < Layout.LUMPS; i++) {
                Lump lump = Layout.FITTED.get(i);
                Uncertain estimate = lumps.estimate(lump).orElseThrow();
                sum[i] += (estimate.value() - SweptPump.truth(pump, lump)) / estimate.standardUncertainty();
            }
        }
    }
}
