package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;

class ThermalTripTest {
    private static final double SAMPLE = 0.05;

    private static List<ThermalTrip> find(double end, DoubleUnaryOperator amps, DoubleUnaryOperator duty, double lead) {
        int n = (int) Math.round(end / SAMPLE);
        Random random = new Random(1);
        double[] seconds = new double[n];
        double[] a = new double[n];
        double[] v = new double[n];
        double[] d = new double[n];
        for (int i = 0; i < n; i++) {
            seconds[i] = i * SAMPLE;
            double now = amps.applyAsDouble(seconds[i]);
            a[i] = Math.max(0, now + 0.05 * random.nextGaussian());
            v[i] = 13.8 - lead * now + 0.01 * random.nextGaussian();
            d[i] = duty.applyAsDouble(seconds[i]);
        }
        return ThermalTrip.find(seconds, a, v, d);
    }

    @Test
    void aTripAndItsResetAreTimed() {
        List<ThermalTrip> trips = find(60, t -> t > 20.02 && t < 47.01 ? 0 : 14, t -> 1, 0.05);
        assertThat(trips).hasSize(1);
        ThermalTrip trip = trips.get(0);
        assertThat(trip.seconds().value()).isCloseTo(20.05, within(0.051));
        assertThat(trip.seconds().standardUncertainty()).isCloseTo(SAMPLE / Math.sqrt(12), within(1e-9));
        assertThat(trip.resetSeconds().orElseThrow()).isCloseTo(47.05, within(0.051));
        assertThat(trip.ampsBefore()).isCloseTo(14, within(0.1));
        assertThat(trip.voltsRise()).isCloseTo(0.7, within(0.02));
    }

    @Test
    void aSecondTripIsASecondTrip() {
        assertThat(find(60, t -> (t > 10 && t < 20) || (t > 40 && t < 50) ? 0.1 : 12, t -> 0.8, 0.05))
                .extracting(trip -> Math.rint(trip.seconds().value()))
                .containsExactly(10.0, 40.0);
    }

    @Test
    void aProtectorThatStaysOpenHasNoReset() {
        List<ThermalTrip> trips = find(30, t -> t > 10 ? 0 : 12, t -> 0.8, 0.05);
        assertThat(trips).hasSize(1);
        assertThat(trips.get(0).resetSeconds()).isEmpty();
    }

    @Test
    void aDriveTurnedOffIsNoTrip() {
        assertThat(find(30, t -> t > 10 ? 0 : 12, t -> t > 10 ? 0 : 0.8, 0.05)).isEmpty();
    }

    @Test
    void aLoadThatFallsByHalfOrSlowlyIsNoTrip() {
        assertThat(find(30, t -> t > 10 ? 5 : 12, t -> 0.8, 0.05)).isEmpty();
        assertThat(find(30, t -> Math.max(0, 12 - Math.max(0, t - 10) * 3), t -> 0.8, 0.05))
                .isEmpty();
    }

    @Test
    void aShortDropOutIsNoTrip() {
        assertThat(find(30, t -> t > 10 && t < 10.3 ? 0 : 12, t -> 0.8, 0.05)).isEmpty();
    }

    /** A current channel that died: the volts do not rise. */
    @Test
    void aCurrentThatVanishesWithoutRisingVoltsIsNoTrip() {
        assertThat(find(30, t -> t > 10 ? 0 : 12, t -> 0.8, 0)).isEmpty();
    }

    @Test
    void unequalArraysAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThermalTrip.find(new double[3], new double[3], new double[2], new double[3]))
                .withMessage("3 times, 3 amps, 2 volts and 3 duties: they must be as many");
    }

    /** Copper at 100 degrees has 1 + 0.00393 * 80 times its resistance at 20. */
    @Test
    void aWindingAtHundredDegrees() {
        Uncertain hot = Uncertain.of(0.19 * (1 + 0.00393 * 80), 0.004);
        Uncertain found = WindingTemperature.celsius(hot, Uncertain.of(0.19, 0), Uncertain.of(20, 0));
        assertThat(found.value()).isCloseTo(100, within(1e-9));
        assertThat(found.standardUncertainty()).isCloseTo(0.004 / 0.19 / 0.00393, within(1e-9));
    }

    @Property(seed = "20260207", tries = 100)
    void anUnchangedResistanceIsAnUnchangedTemperature(
            @ForAll @DoubleRange(min = -20, max = 60) double celsius,
            @ForAll @DoubleRange(min = 0.05, max = 50) double ohms) {
        Uncertain found =
                WindingTemperature.celsius(Uncertain.of(ohms, 0), Uncertain.of(ohms, 0), Uncertain.of(celsius, 0.5));
        assertThat(found.value()).isCloseTo(celsius, within(1e-9));
        assertThat(found.standardUncertainty()).isCloseTo(0.5, within(1e-9));
    }
}
