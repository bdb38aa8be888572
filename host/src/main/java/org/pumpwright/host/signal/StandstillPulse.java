package org.pumpwright.host.signal;

import java.util.Arrays;
import java.util.Locale;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Resistance of a motor at rest from a short pulse of voltage too weak to turn it: mean volts over mean amps of the
 * pulse's second half, when the current no longer rises. Relative uncertainties in quadrature (JCGM 100, 5.1.6), Type A of
 * both means and Type B of both channels. Leads and brushes are in it. Thread-safe.
 */
public sealed interface StandstillPulse {

    /**
     * The pulse was good.
     *
     * @param ohms the resistance of the path between the pins
     */
    record Measured(Uncertain ohms) implements StandstillPulse {}

    /**
     * The pulse says nothing of the resistance.
     *
     * @param reason for people: what was seen against what is allowed
     */
    record Refused(String reason) implements StandstillPulse {}

    /** Fewest samples of the second half. */
    int LEAST_SAMPLES = 6;

    /** A current that changes by more over the second half has not settled, or the shaft turns. */
    double MOST_CHANGE = 0.01;

    /** Beyond this many of its uncertainties a trend is no scatter. */
    double SIGNIFICANT = 3;

    /** A current below this many of its uncertainties is none. */
    double CLEAR = 10;

    /**
     * Judges one pulse.
     *
     * @param seconds times of the samples within the pulse, growing, s
     * @param volts volts that drive the motor (with a switching drive the effective ones), V
     * @param amps motor current, A
     * @param edges pulses of the flow meter while it lasted
     * @param restAmps reading of the current channel with the drive off, A
     * @param voltsUncertainty Type B standard uncertainty of the volts, V
     * @param ampsUncertainty Type B standard uncertainty of the amps but for their zero, A
     * @throws IllegalArgumentException when the arrays differ in length
     */
    static StandstillPulse of(
            double[] seconds,
            double[] volts,
            double[] amps,
            long edges,
            Uncertain restAmps,
            double voltsUncertainty,
            double ampsUncertainty) {
        int n = seconds.length;
        if (volts.length != n || amps.length != n) {
            throw new IllegalArgumentException(
                    "%d times, %d volts and %d amps: they must be as many".formatted(n, volts.length, amps.length));
        }
        Require.inRange("uncertainty of the volts", voltsUncertainty, 0, 1e6, "V");
        Require.inRange("uncertainty of the amps", ampsUncertainty, 0, 1e6, "A");
        int from = n / 2;
        if (edges > 0) {
            return new Refused("the meter gave %d pulses: the shaft turned".formatted(edges));
        }
        if (n - from < LEAST_SAMPLES) {
            return new Refused("%d samples in the second half of the pulse, at least %d are needed"
                    .formatted(n - from, LEAST_SAMPLES));
        }
        double[] flat = Arrays.copyOfRange(amps, from, n);
        Uncertain current = Statistics.uncertainMean(flat)
                .with(ampsUncertainty, Double.POSITIVE_INFINITY)
                .with(restAmps.standardUncertainty(), restAmps.degreesOfFreedom());
        double net = current.value() - restAmps.value();
        if (!(net > CLEAR * current.standardUncertainty())) {
            return refused("%.3f A with an uncertainty of %.3f A is too little", net, current.standardUncertainty());
        }
        double change = change(Arrays.copyOfRange(seconds, from, n), flat) / net;
        if (Math.abs(change) > MOST_CHANGE) {
            return refused(
                    change > 0
                            ? "the current still rises, by %.1f %% over the second half (at most %.1f)"
                            : "the current falls, by %.1f %% over the second half (at most %.1f): the shaft may turn",
                    Math.abs(change) * 100,
                    MOST_CHANGE * 100);
        }
        Uncertain tension = Statistics.uncertainMean(Arrays.copyOfRange(volts, from, n))
                .with(voltsUncertainty, Double.POSITIVE_INFINITY);
        if (!(tension.value() > 0)) {
            return refused("%.3f V and %.3f A have no resistance", tension.value(), net);
        }
        double ohms = tension.value() / net;
        return new Measured(new Uncertain(ohms, ohms * tension.relative(), tension.degreesOfFreedom())
                .with(ohms * current.standardUncertainty() / net, current.degreesOfFreedom()));
    }

    /** Change over the whole, A; 0 where it cannot be told from scatter. */
    private static double change(double[] seconds, double[] amps) {
        LineFit line = LineFit.of(seconds, amps);
        double u = line.slopeUncertainty(line.scatter());
        boolean clear = Math.abs(line.slope()) > SIGNIFICANT * u;
        return clear ? line.slope() * (seconds[seconds.length - 1] - seconds[0]) : 0;
    }

    private static StandstillPulse refused(String words, Object... figures) {
        return new Refused(String.format(Locale.ROOT, words, figures));
    }
}
