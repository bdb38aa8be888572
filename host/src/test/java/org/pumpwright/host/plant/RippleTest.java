package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fast series of current and pressure: lines at multiples of the shaft's speed, found by their Fourier sums. */
class RippleTest {

    private static final PumpParameters HEALTHY = PumpParameters.healthy();
    private static final double RATE = 2000;
    private static final double LOW_DUTY = 0.25;

    /**
     * Flow ripple of equal chambers without losses, peak to peak over mean: {@code 1 - cos(90°/N)} for an odd number and
     * {@code 1 - cos(180°/N)} for an even one (published for piston pumps).
     */
    @ParameterizedTest(name = "{0} chambers")
    @CsvSource({"3, 13.4", "4, 29", "5, 4.9"})
    void equalChambersRippleAsThePistonPumpFormulaSays(int chambers, double percent) {
        double[] shares = new double[chambers];
        Arrays.fill(shares, 1.0 / chambers);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double mean = 0;
        int parts = 36_000;
        for (int i = 0; i < parts; i++) {
            double delivery = Chambers.delivery(shares, 2 * Math.PI * i / parts, 0);
            least = Math.min(least, delivery);
            most = Math.max(most, delivery);
            mean += delivery / parts;
        }

        assertThat(mean).isCloseTo(1, within(1e-6));
        double ofMaximum = 100 * (most - least) / most;
        assertThat(ofMaximum).isCloseTo(percent, within(chambers == 4 ? 0.35 : 0.05));
    }

    @Test
    void whatAChamberLosesAtTheBeginOfItsStrokeIsMissingFromTheMean() {
        double[] one = {1.0};
        double mean = 0;
        for (int i = 0; i < 36_000; i++) {
            mean += Chambers.delivery(one, 2 * Math.PI * i / 36_000, 0.2) / 36_000;
        }

        assertThat(mean).isCloseTo(0.8, within(1e-3));
    }

    @ParameterizedTest(name = "at {0} % duty")
    @CsvSource({"25", "50", "100"})
    void theMeansAreThoseOfTheSteadyState(double percent) {
        RippleSeries series = plant(HEALTHY).ripple(percent / 100, 2, RATE);
        PumpSteadyState s = PumpSteadyState.of(HEALTHY, percent / 100);

        assertThat(mean(series.amps())).isCloseTo(s.batteryAmps(), within(0.03 * s.batteryAmps()));
        assertThat(mean(series.pressurePa())).isCloseTo(s.pressurePa(), within(0.03 * s.pressurePa()));
    }

    @Test
    void aHealthyUnitShowsItsChambersAndHardlyTheTurn() {
        RippleSeries series = plant(HEALTHY).ripple(LOW_DUTY, 2, RATE);
        double turn = turnsPerSecond(HEALTHY);

        assertThat(line(series.pressurePa(), turn)).isLessThan(0.08);
        assertThat(line(series.pressurePa(), 3 * turn)).isGreaterThan(0.01);
        assertThat(line(series.pressurePa(), 6 * turn)).isGreaterThan(0.005);
        assertThat(line(series.pressurePa(), 2.5 * turn))
                .as("between the lines")
                .isLessThan(0.01);
    }

    @Test
    void aDeadChamberLopesOnceATurnInPressureAndCurrent() {
        PumpParameters dead = PumpFault.DEAD_CHAMBER.applyTo(HEALTHY, Severity.SEVERE);
        double turn = turnsPerSecond(dead);
        RippleSeries series = plant(dead).ripple(LOW_DUTY, 2, RATE);
        RippleSeries healthy = plant(HEALTHY).ripple(LOW_DUTY, 2, RATE);

        assertThat(line(series.pressurePa(), turn)).isGreaterThan(0.25);
        assertThat(peakToPeak(series.pressurePa())).isGreaterThan(0.5);
        assertThat(line(series.amps(), turn)).isGreaterThan(4 * line(healthy.amps(), turnsPerSecond(HEALTHY)));
    }

    @Test
    void theGraverTheDeadChamberTheStrongerTheLope() {
        double before = line(plant(HEALTHY).ripple(LOW_DUTY, 2, RATE).pressurePa(), turnsPerSecond(HEALTHY));
        for (Severity severity : Severity.values()) {
            PumpParameters dead = PumpFault.DEAD_CHAMBER.applyTo(HEALTHY, severity);
            double lope = line(plant(dead).ripple(LOW_DUTY, 2, RATE).pressurePa(), turnsPerSecond(dead));
            assertThat(lope).as(severity.toString()).isGreaterThan(before);
            before = lope;
        }
    }

    @Test
    void aBadBrushSwingsTheCurrentOnceATurnAndShortedTurnsTwice() {
        PumpParameters brush = PumpFault.BRUSH.applyTo(HEALTHY, Severity.MODERATE);
        PumpParameters shorted = PumpFault.SHORTED_TURNS.applyTo(HEALTHY, Severity.MODERATE);

        RippleSeries once = plant(brush).ripple(LOW_DUTY, 2, RATE);
        RippleSeries twice = plant(shorted).ripple(LOW_DUTY, 2, RATE);

        assertThat(line(once.amps(), turnsPerSecond(brush))).isGreaterThan(0.08);
        assertThat(line(twice.amps(), 2 * turnsPerSecond(shorted)))
                .isGreaterThan(0.05)
                .isGreaterThan(2 * line(twice.amps(), turnsPerSecond(shorted)));
    }

    @Test
    void theSeriesHasTheAskedLengthAndRepeatsAndMovesNothing() {
        PumpPlant plant = new PumpPlant(HEALTHY, SensorErrors.drawn(4), 4);
        PumpPlant untouched = new PumpPlant(HEALTHY, SensorErrors.drawn(4), 4);
        RippleSeries first = plant.ripple(0.3, 2, 2500);
        RippleSeries again = plant.ripple(0.3, 2, 2500);

        assertThat(first.amps()).hasSize(5000).isEqualTo(again.amps());
        assertThat(first.pressurePa()).hasSize(5000).isEqualTo(again.pressurePa());
        double[] duty = {0.3};
        assertThat(plant.step(1, duty, true).amps())
                .isEqualTo(untouched.step(1, duty, true).amps());
    }

    @Test
    void aUnitThatDoesNotTurnGivesAFlatSeries() {
        RippleSeries series =
                plant(PumpFault.SEIZED.applyTo(HEALTHY, Severity.MILD)).ripple(0.3, 0.1, RATE);

        assertThat(peakToPeak(series.amps())).isZero();
        assertThat(series.pressurePa()).containsOnly(0);
    }

    @Test
    void onASlowDriveTheLopeIsStillThere() {
        PumpParameters dead = Bench.withDriveAt(PumpFault.DEAD_CHAMBER.applyTo(HEALTHY, Severity.SEVERE), 250);

        assertThat(peakToPeak(plant(dead).ripple(0.15, 2, RATE).pressurePa())).isGreaterThan(0.4);
    }

    @Test
    void aSeriesTooSlowToSeeAChamberIsRefused() {
        assertThatThrownBy(() -> plant(HEALTHY).ripple(0.3, 2, 50))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("rate of the series 50.0000 Hz is outside 100.000 to 100000 Hz");
    }

    private static PumpPlant plant(PumpParameters p) {
        return new PumpPlant(p, SensorErrors.none(), 5);
    }

    private static double turnsPerSecond(PumpParameters p) {
        return PumpSteadyState.of(p, LOW_DUTY).speedRadPerSecond() / (2 * Math.PI);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double peakToPeak(double[] values) {
        return (Arrays.stream(values).max().orElseThrow()
                        - Arrays.stream(values).min().orElseThrow())
                / mean(values);
    }

    /** Amplitude near a frequency over the mean: the highest within 6 %, Hann window. */
    private static double line(double[] values, double hertz) {
        double highest = 0;
        for (double f = 0.94 * hertz; f <= 1.06 * hertz; f += 0.1) {
            highest = Math.max(highest, amplitude(values, f));
        }
        return highest / mean(values);
    }

    private static double amplitude(double[] values, double hertz) {
        double mean = mean(values);
        double cosine = 0;
        double sine = 0;
        double weight = 0;
        for (int i = 0; i < values.length; i++) {
            double window = 1 - Math.cos(2 * Math.PI * (i + 0.5) / values.length);
            double angle = 2 * Math.PI * hertz * i / RATE;
            cosine += window * (values[i] - mean) * Math.cos(angle);
            sine += window * (values[i] - mean) * Math.sin(angle);
            weight += window;
        }
        return 2 * Math.hypot(cosine, sine) / weight;
    }
}
