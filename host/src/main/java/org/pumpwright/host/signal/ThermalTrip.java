package org.pumpwright.host.signal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * A thermal protector that opened: the current falls by more than 80 % within 0.5 s and stays there, the volts at the pins
 * rise for want of load, and the drive was not told to change. It has reset when more than half of the current is back
 * under the same drive. Thread-safe.
 *
 * @param seconds when the current had fallen below half, on the clock of the samples; known to one sample
 * @param resetSeconds when it was back, if that was seen
 * @param ampsBefore current before, A
 * @param voltsRise rise of the volts at the pins, V
 */
public record ThermalTrip(Uncertain seconds, OptionalDouble resetSeconds, double ampsBefore, double voltsRise) {
    private static final double LEFT_SHARE = 0.2;
    private static final double STILL_SHARE = 0.9;
    private static final double BACK_SHARE = 0.5;
    private static final double FALL_SECONDS = 0.5;
    private static final double STAY_SECONDS = 0.5;
    private static final double LEAST_AMPS = 0.5;
    private static final double MOST_DUTY_CHANGE = 0.005;
    private static final double CLEAR = 2;
    private static final int LEAST_SAMPLES = 3;

    /**
     * All trips of a run, in order.
     *
     * @param seconds times of the samples, growing, s
     * @param amps supply or motor current, A
     * @param volts at the unit's pins, V
     * @param duty commanded duty, 0 to 1
     * @throws IllegalArgumentException when the arrays differ in length
     */
    public static List<ThermalTrip> find(double[] seconds, double[] amps, double[] volts, double[] duty) {
        int n = seconds.length;
        if (amps.length != n || volts.length != n || duty.length != n) {
            throw new IllegalArgumentException("%d times, %d amps, %d volts and %d duties: they must be as many"
                    .formatted(n, amps.length, volts.length, duty.length));
        }
        Search search = new Search(seconds, amps, volts, duty);
        List<ThermalTrip> trips = new ArrayList<>();
        int i = 0;
        while (i < n) {
            ThermalTrip trip = search.at(i).orElse(null);
            if (trip == null) {
                i++;
            } else {
                trips.add(trip);
                i = search.after(trip.resetSeconds.orElse(trip.seconds.value() + STAY_SECONDS));
            }
        }
        return List.copyOf(trips);
    }

    /** The samples and how to look at them. */
    private static final class Search {
        private final double[] seconds;
        private final double[] amps;
        private final double[] volts;
        private final double[] duty;

        Search(double[] seconds, double[] amps, double[] volts, double[] duty) {
            this.seconds = seconds;
            this.amps = amps;
            this.volts = volts;
            this.duty = duty;
        }

        int after(double time) {
            int at = 0;
            while (at < seconds.length && seconds[at] <= time) {
                at++;
            }
            return at;
        }

        /** The trip whose first sample below half of the current is this one. */
        Optional<ThermalTrip> at(int i) {
            int from = after(seconds[i] - FALL_SECONDS - STAY_SECONDS);
            int begin = after(seconds[i] - FALL_SECONDS);
            int down = i;
            int end = after(seconds[i] + FALL_SECONDS + STAY_SECONDS);
            if (begin - from < LEAST_SAMPLES || seconds[seconds.length - 1] < seconds[i] + STAY_SECONDS) {
                return Optional.empty();
            }
            double before = median(amps, from, begin);
            boolean fallsHere =
                    before >= LEAST_AMPS && amps[i] < BACK_SHARE * before && amps[i - 1] >= BACK_SHARE * before;
            if (!fallsHere || !steady(from, end)) {
                return Optional.empty();
            }
            while (down < end && amps[down] >= LEFT_SHARE * before) {
                down++;
            }
            int high = i - 1;
            while (high > begin && amps[high] < STILL_SHARE * before) {
                high--;
            }
            boolean quick = down < end && seconds[down] - seconds[high] < FALL_SECONDS;
            double rise = rise(from, begin, down, end);
            if (!quick || !staysDown(down, end, before) || !(rise > 0)) {
                return Optional.empty();
            }
            Uncertain when = Uncertain.of(seconds[i], (seconds[i] - seconds[i - 1]) / Math.sqrt(12));
            return Optional.of(new ThermalTrip(when, reset(end, before), before, rise));
        }

        private boolean steady(int from, int end) {
            return Arrays.stream(duty, from, end).allMatch(d -> Math.abs(d - duty[from]) <= MOST_DUTY_CHANGE);
        }

        private boolean staysDown(int down, int end, double before) {
            return end - down >= LEAST_SAMPLES && Arrays.stream(amps, down, end).allMatch(a -> a < LEFT_SHARE * before);
        }

        /** Rise of the volts where it is clear of their scatter, otherwise 0. */
        private double rise(int from, int begin, int down, int end) {
            if (end - down < LEAST_SAMPLES) {
                return 0;
            }
            Uncertain before = Statistics.uncertainMean(Arrays.copyOfRange(volts, from, begin));
            Uncertain after = Statistics.uncertainMean(Arrays.copyOfRange(volts, down, end));
            double rise = after.value() - before.value();
            double u = Math.hypot(before.standardUncertainty(), after.standardUncertainty());
            return rise > CLEAR * u ? rise : 0;
        }

        private OptionalDouble reset(int from, double before) {
            double driven = duty[from - 1];
            for (int i = from; i < seconds.length; i++) {
                if (Math.abs(duty[i] - driven) > MOST_DUTY_CHANGE) {
                    return OptionalDouble.empty();
                }
                int end = after(seconds[i] + STAY_SECONDS);
                boolean whole = end < seconds.length;
                if (whole && Arrays.stream(amps, i, end).allMatch(a -> a > BACK_SHARE * before)) {
                    return OptionalDouble.of(seconds[i]);
                }
            }
            return OptionalDouble.empty();
        }

        private static double median(double[] values, int from, int end) {
            double[] some = Arrays.copyOfRange(values, from, end);
            Arrays.sort(some);
            return some[some.length / 2];
        }
    }

    public ThermalTrip {
        Require.inRange("current before a trip", ampsBefore, LEAST_AMPS, 1e4, "A");
    }
}
