package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.StandstillPulse.Measured;
import org.pumpwright.host.signal.StandstillPulse.Refused;

class StandstillPulseTest {
    private static final double OHMS = 0.19;
    private static final double VOLTS = 1.36;
    private static final Uncertain REST = Uncertain.of(0.03, 0.002);

    /** A pulse of 0.3 s in samples of 5 ms; the amps follow the share of their end value. */
    private static StandstillPulse pulse(DoubleUnaryOperator share, long edges, Random random) {
        int n = 60;
        double[] seconds = new double[n];
        double[] volts = new double[n];
        double[] amps = new double[n];
        for (int i = 0; i < n; i++) {
            seconds[i] = i * 0.005;
            volts[i] = VOLTS + 0.005 * random.nextGaussian();
            amps[i] = VOLTS / OHMS * share.applyAsDouble(seconds[i]) + 0.03 + 0.05 * random.nextGaussian();
        }
        return StandstillPulse.of(seconds, volts, amps, edges, REST, 0.010, 0.035);
    }

    @Test
    void theResistanceComesOutWithinItsUncertainty() {
        Random random = new Random(1);
        double squares = 0;
        int good = 0;
        for (int i = 0; i < 300; i++) {
            StandstillPulse found = pulse(t -> 1 - Math.exp(-t / 0.0013), 0, random);
            if (found instanceof Measured measured) {
                good++;
                squares += Math.pow(measured.ohms().value() - OHMS, 2) / 300;
                assertThat(measured.ohms().relative()).isBetween(0.008, 0.011);
            }
        }
        // Scatter alone looks like a trend of three uncertainties in 3 of 1000 pulses.
        assertThat(good).isGreaterThanOrEqualTo(296);
        assertThat(Math.sqrt(squares)).isLessThan(0.003 * OHMS);
    }

    @Test
    void aShaftThatTurnedIsRefused() {
        assertThat(pulse(t -> 1, 3, new Random(2))).isEqualTo(new Refused("the meter gave 3 pulses: the shaft turned"));
    }

    @Test
    void aCurrentThatStillRisesIsRefused() {
        assertThat(pulse(t -> 1 - Math.exp(-t / 0.08), 0, new Random(3)))
                .asInstanceOf(type(Refused.class))
                .extracting(Refused::reason)
                .asString()
                .startsWith("the current still rises, by ");
    }

    @Test
    void aCurrentThatFallsIsRefused() {
        assertThat(pulse(t -> t < 0.2 ? 1 : 1 - (t - 0.2), 0, new Random(4)))
                .asInstanceOf(type(Refused.class))
                .extracting(Refused::reason)
                .asString()
                .contains("the shaft may turn");
    }

    @Test
    void anOpenCircuitHasNoResistance() {
        assertThat(pulse(t -> 0, 0, new Random(5)))
                .asInstanceOf(type(Refused.class))
                .extracting(Refused::reason)
                .asString()
                .endsWith("is too little");
    }

    @Test
    void tooFewSamplesAreRefused() {
        double[] ten = new double[10];
        assertThat(StandstillPulse.of(ten, ten, ten, 0, REST, 0, 0))
                .isEqualTo(new Refused("5 samples in the second half of the pulse, at least 6 are needed"));
    }

    @Test
    void unequalArraysAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandstillPulse.of(new double[3], new double[3], new double[2], 0, REST, 0, 0))
                .withMessage("3 times, 3 volts and 2 amps: they must be as many");
    }
}
