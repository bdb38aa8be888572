package org.pumpwright.host.plant.driver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.plant.driver.SwitchedCurrent.Circuit;

class SwitchedCurrentTest {

    /** The valve's coil at 13.6 V, once with a freewheel diode and once clamped at 40 V. */
    private static final Circuit FREEWHEEL = new Circuit(13.6, 7.2, 0.7, 7.2, 0.030);

    private static final Circuit CLAMPED = new Circuit(13.6, 7.2, 40, 7.2, 0.030);

    /** Computed by an independent program that steps through time: 150 Hz, printed to 0.01 A. */
    @ParameterizedTest(name = "duty {0}")
    @CsvSource({"0.3, 0.14, 0.50", "0.5, 0.35, 0.90", "0.8, 0.75, 1.49"})
    void withoutItsFreewheelPathACoilsCurrentCollapses(double duty, double without, double with) {
        assertThat(SwitchedCurrent.of(CLAMPED, duty, 150).meanAmps()).isCloseTo(without, within(0.005));
        assertThat(SwitchedCurrent.of(FREEWHEEL, duty, 150).meanAmps()).isCloseTo(with, within(0.005));
    }

    /** The averaged formula of continuous conduction, (D V - (1-D) V_f) / R, a textbook identity. */
    @Property(seed = "20260401", tries = 200)
    void whileTheCurrentNeverStopsItsMeanIsTheAveragedFormula(@ForAll @DoubleRange(min = 0.2, max = 0.99) double duty) {
        double mean = SwitchedCurrent.of(FREEWHEEL, duty, 2000).meanAmps();

        assertThat(mean).isCloseTo((duty * 13.6 - (1 - duty) * 0.7) / 7.2, within(1e-9));
    }

    @Property(seed = "20260402", tries = 40)
    void itIsWhatSteppingThroughTimeGives(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double duty,
            @ForAll @DoubleRange(min = 50, max = 1000) double hertz) {
        for (Circuit c : new Circuit[] {FREEWHEEL, CLAMPED, new Circuit(12, 9, 30, 6, 0.01)}) {
            SwitchedCurrent exact = SwitchedCurrent.of(c, duty, hertz);

            assertThat(exact.meanAmps()).isCloseTo(stepped(c, duty, hertz), within(0.003));
        }
    }

    @Test
    void aResistorTakesTheDutysShareAndNothingIsNothing() {
        Circuit resistor = new Circuit(13.8, 2, 0.7, 2, 0);

        assertThat(SwitchedCurrent.of(resistor, 0.25, 150)).isEqualTo(new SwitchedCurrent(0.25 * 6.9, 0.25 * 6.9, 6.9));
        assertThat(SwitchedCurrent.of(resistor, 0, 150)).isEqualTo(SwitchedCurrent.NONE);
        assertThat(SwitchedCurrent.of(FREEWHEEL, 1, 150).meanAmps()).isCloseTo(13.6 / 7.2, within(1e-12));
    }

    @Test
    void theSupplySeesOnlyTheSwitchedPartOfTheCurrent() {
        SwitchedCurrent current = SwitchedCurrent.of(FREEWHEEL, 0.5, 5000);

        assertThat(current.suppliedAmps()).isCloseTo(0.5 * current.meanAmps(), within(0.002));
        assertThat(current.peakAmps()).isGreaterThan(current.meanAmps());
    }

    private static double stepped(Circuit c, double duty, double hertz) {
        int perPeriod = 4000;
        double step = 1 / hertz / perPeriod;
        int periods = (int) Math.ceil(hertz * 0.05) + 5;
        double amps = 0;
        double sum = 0;
        for (int period = 0; period < periods; period++) {
            sum = 0;
            for (int i = 0; i < perPeriod; i++) {
                boolean on = i + 0.5 < duty * perPeriod;
                double slope = on ? c.onVolts() - c.onOhms() * amps : -c.backVolts() - c.offOhms() * amps;
                amps = Math.max(0, amps + step * slope / c.henry());
                sum += amps;
            }
        }
        return sum / perPeriod;
    }
}
