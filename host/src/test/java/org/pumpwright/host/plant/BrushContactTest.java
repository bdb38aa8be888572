package org.pumpwright.host.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BrushContactTest {

    private static final MotorParameters MOTOR = PumpParameters.healthy().motor();

    @Test
    void aHealthyContactAddsNothing() {
        BrushContact contact = new BrushContact(MOTOR, Streams.stream(1, 0));
        contact.advance(10, 100);

        assertThat(contact.standingOhms()).isZero();
        assertThat(contact.turningOhms()).isZero();
        assertThat(contact.ripple(0.24)).isEqualTo(1);
    }

    @Test
    void theStandingResistanceSwingsAboutItsMeanWithTheShaftsPosition() {
        BrushContact contact = new BrushContact(MOTOR.withContact(0.25, 0.4, 0), Streams.stream(1, 0));
        double[] ohms = overOneTurn(contact, contact::standingOhms);

        assertThat(Arrays.stream(ohms).min().orElseThrow()).isCloseTo(0.15, within(1e-4));
        assertThat(Arrays.stream(ohms).max().orElseThrow()).isCloseTo(0.35, within(1e-4));
        assertThat(Arrays.stream(ohms).average().orElseThrow()).isCloseTo(0.25, within(1e-6));
    }

    @Test
    void theTurningMotorsCurrentSwingsAndKeepsItsMean() {
        BrushContact contact = new BrushContact(MOTOR.withContact(0.25, 0.4, 0), Streams.stream(1, 0));
        double[] factors = overOneTurn(contact, () -> contact.ripple(0.24));

        assertThat(Arrays.stream(factors).average().orElseThrow()).isCloseTo(1, within(1e-6));
        double least = Arrays.stream(factors).min().orElseThrow();
        double most = Arrays.stream(factors).max().orElseThrow();
        assertThat(most / least).isCloseTo(0.59 / 0.39, within(1e-3));
    }

    @Test
    void aStandingShaftKeepsItsResistanceWhichDiffersFromSeedToSeed() {
        BrushContact one = new BrushContact(MOTOR.withContact(0.25, 0.4, 0), Streams.stream(1, 0));
        BrushContact other = new BrushContact(MOTOR.withContact(0.25, 0.4, 0), Streams.stream(2, 0));
        double before = one.standingOhms();
        one.advance(5, 0);

        assertThat(one.standingOhms()).isEqualTo(before).isNotEqualTo(other.standingOhms());
    }

    @Test
    void aLooseContactOpensAboutAsOftenAsStatedForATwentiethToTwoSeconds() {
        BrushContact contact = new BrushContact(MOTOR.withContact(0.8, 0.8, 4), Streams.stream(1, 0));
        int openings = 0;
        int openMilliseconds = 0;
        boolean wasOpen = false;
        int minutes = 200;
        for (int i = 0; i < minutes * 60_000; i++) {
            contact.advance(0.001, 100);
            boolean open = contact.turningOhms() > 1e6;
            openings += open && !wasOpen ? 1 : 0;
            openMilliseconds += open ? 1 : 0;
            wasOpen = open;
        }

        // Mean of a log-uniform time: (2 - 0.05) / ln(2 / 0.05) = 0.529 s; openings come after 15 s closed on average.
        double expected = minutes * 60 / (15 + 0.529);
        assertThat((double) openings).isCloseTo(expected, within(4 * Math.sqrt(expected)));
        assertThat(openMilliseconds / 1000.0 / openings).isCloseTo(0.529, within(0.1));
    }

    @Test
    void aBadBrushMakesTheAmpsRestless() {
        PumpParameters p = PumpFault.BRUSH.applyTo(PumpParameters.healthy(), Severity.MODERATE);

        assertThat(restlessness(p)).isGreaterThan(0.05);
        assertThat(restlessness(PumpParameters.healthy())).isLessThan(0.005);
    }

    @Test
    void overManyTurnsABadBrushRunsCloseToItsMeanResistance() {
        PumpParameters p = PumpFault.BRUSH.applyTo(PumpParameters.healthy(), Severity.MODERATE);
        Bench bench = Bench.of(p);
        bench.hold(0.75, 8);
        double flow = IntStream.range(0, 500)
                .mapToDouble(i -> {
                    bench.hold(0.75, 0.01);
                    return bench.gallonsPerMinute();
                })
                .average()
                .orElseThrow();

        assertThat(flow).isCloseTo(Bench.gpm(PumpSteadyState.of(p, 0.75)), within(0.05));
    }

    private static double[] overOneTurn(BrushContact contact, DoubleSupplier what) {
        return IntStream.range(0, 1000)
                .mapToDouble(i -> {
                    contact.advance(0.001, 2 * Math.PI);
                    return what.getAsDouble();
                })
                .toArray();
    }

    /** Standard deviation of the amps over their mean, once settled. */
    private static double restlessness(PumpParameters p) {
        Bench bench = Bench.of(p);
        bench.hold(0.75, 8);
        double[] amps = IntStream.range(0, 500)
                .mapToDouble(i -> bench.hold(0.75, 0.01).amps())
                .toArray();
        double mean = Arrays.stream(amps).average().orElseThrow();
        return Math.sqrt(Arrays.stream(amps)
                        .map(a -> (a - mean) * (a - mean))
                        .average()
                        .orElseThrow())
                / mean;
    }
}
