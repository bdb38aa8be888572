package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PulseHealthTest {

    /** White edge jitter: each late edge lengthens one interval and shortens the next, so the correlation is -1/2. */
    @Test
    void edgeJitterMakesNeighboursUnlike() {
        Random random = new Random(1);
        double[] seconds = PulseTrains.even(100, 3000, i -> 0.0001 * random.nextGaussian());
        PulseHealth health = PulseHealth.of(PulseTrains.whole(seconds));
        assertThat(health.lagOne()).isCloseTo(-0.5, within(0.04));
        assertThat(health.variation()).isCloseTo(0.01 * Math.sqrt(2), within(0.001));
        assertThat(health.unsteady()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(doubles = {25, 65, 120, 250})
    void aFlowThatWandersByTenPercentIsUnsteady(double hertz) {
        Random random = new Random(4);
        double[] seconds = new double[(int) (hertz * 6)];
        double time = 0;
        double state = 0;
        for (int i = 0; i < seconds.length; i++) {
            state = 0.88 * state + Math.sqrt(1 - 0.88 * 0.88) * random.nextGaussian();
            time += (1 + 0.1 * state) / hertz;
            seconds[i] = time;
        }
        PulseHealth health = PulseHealth.of(PulseTrains.sampled(seconds, 0.02, 5));
        assertThat(health.unsteady()).as(health.toString()).isTrue();
    }

    @Test
    void aSlowTrendIsNotUnsteadiness() {
        double[] seconds = PulseTrains.even(100, 500, i -> 1e-6 * i * i);
        PulseHealth health = PulseHealth.of(PulseTrains.whole(seconds));
        assertThat(health.variation()).isLessThan(0.005);
        assertThat(health.unsteady()).isFalse();
    }

    @Test
    void tooFewPulsesSayNothing() {
        PulseHealth health = PulseHealth.of(PulseTrains.whole(PulseTrains.even(5, 20, i -> 0)));
        assertThat(health).isEqualTo(new PulseHealth(0, 0, 19));
        assertThat(health.unsteady()).isFalse();
    }
}
