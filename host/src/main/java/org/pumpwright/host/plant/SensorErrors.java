package org.pumpwright.host.plant;

import java.util.Random;

/**
 * What the stand's sensors add to the truth: constant errors of each and noise per step. Thread-safe.
 *
 * @param meterRelative error of the meter's K, as a share
 * @param ampsRelative gain error of the current sensor, as a share
 * @param ampsOffset offset of the current sensor in ampere
 * @param voltsRelative gain error of the voltage sensor, as a share
 * @param voltsOffset offset of the voltage sensor in volt
 * @param pressureRelative gain error of the pressure sensor, as a share
 * @param pressureOffsetPascal offset of the pressure sensor
 * @param temperatureOffsetKelvin offset of the thermometer
 * @param ampsNoise standard deviation of the current reading of one step
 * @param voltsNoise standard deviation of the voltage reading of one step
 * @param pressureNoisePascal standard deviation of the pressure reading of one step
 * @param temperatureNoiseKelvin standard deviation of the temperature reading of one step
 */
public record SensorErrors(
        double meterRelative,
        double ampsRelative,
        double ampsOffset,
        double voltsRelative,
        double voltsOffset,
        double pressureRelative,
        double pressureOffsetPascal,
        double temperatureOffsetKelvin,
        double ampsNoise,
        double voltsNoise,
        double pressureNoisePascal,
        double temperatureNoiseKelvin) {

    /** Full scales of the stand assumed here: 40 A, 20 V and 0.7 MPa (about 100 psi). */
    static final double AMPS_FULL_SCALE = 40;

    static final double VOLTS_FULL_SCALE = 20;
    static final double PRESSURE_FULL_SCALE_PASCAL = 0.7e6;

    /** Noise of one count of a 10-bit converter, enough for its rounding to average out. */
    private static final double ONE_COUNT = 1.0 / 1024;

    private static final double DRIFT_PER_MONTH = 0.001;
    private static final double DRIFTING_KELVIN = 50;
    private static final long DRIFT_STREAM = -201;

    public SensorErrors {
        Range.check("meter error", meterRelative, -0.9, 9, "");
        Range.check("current gain error", ampsRelative, -0.9, 9, "");
        Range.check("current offset", ampsOffset, -100, 100, "A");
        Range.check("voltage gain error", voltsRelative, -0.9, 9, "");
        Range.check("voltage offset", voltsOffset, -100, 100, "V");
        Range.check("pressure gain error", pressureRelative, -0.9, 9, "");
        Range.check("pressure offset", pressureOffsetPascal, -1e7, 1e7, "Pa");
        Range.check("temperature offset", temperatureOffsetKelvin, -100, 100, "K");
        Range.check("current noise", ampsNoise, 0, 100, "A");
        Range.check("voltage noise", voltsNoise, 0, 100, "V");
        Range.check("pressure noise", pressureNoisePascal, 0, 1e7, "Pa");
        Range.check("temperature noise", temperatureNoiseKelvin, 0, 100, "K");
    }

    /** Perfect sensors without noise. */
    public static SensorErrors none() {
        return new SensorErrors(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    }

    /** Perfectly calibrated sensors with the usual noise. */
    public static SensorErrors noiseOnly() {
        return new SensorErrors(
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                AMPS_FULL_SCALE * ONE_COUNT,
                VOLTS_FULL_SCALE * ONE_COUNT,
                PRESSURE_FULL_SCALE_PASCAL * ONE_COUNT,
                0.1);
    }

    /**
     * Sensors drawn from assumed spreads (one standard deviation): meter K 0.5 %, current 0.5 % and 0.03 A, voltage
     * 0.1 % and 10 mV, pressure 0.5 % of full scale, temperature 0.5 K; with the usual noise.
     */
    public static SensorErrors drawn(long seed) {
        Random random = Streams.stream(seed, Streams.SENSORS);
        return noiseOnly()
                .plus(
                        0.005 * random.nextGaussian(),
                        0.005 * random.nextGaussian(),
                        0.03 * random.nextGaussian(),
                        0.001 * random.nextGaussian(),
                        0.010 * random.nextGaussian(),
                        0,
                        0.005 * PRESSURE_FULL_SCALE_PASCAL * random.nextGaussian(),
                        0.5 * random.nextGaussian());
    }

    /**
     * The same sensors some months later: each gain has drifted steadily by its own rate, drawn about 0 with a standard
     * deviation of 0.1 % a month (assumed), the thermometer by that share of 50 K. Within a run nothing drifts.
     *
     * @param months 0 and up
     * @param seed the sensors'; the same seed always drifts the same way
     */
    public SensorErrors after(double months, long seed) {
        Range.check("age", months, 0, 600, "months");
        Random random = Streams.stream(seed, DRIFT_STREAM);
        double share = DRIFT_PER_MONTH * months;
        return plus(
                share * random.nextGaussian(),
                share * random.nextGaussian(),
                0,
                share * random.nextGaussian(),
                0,
                share * random.nextGaussian(),
                0,
                share * DRIFTING_KELVIN * random.nextGaussian());
    }

    double ampsRead(double amps, Random random) {
        return amps * (1 + ampsRelative) + ampsOffset + noise(ampsNoise, random);
    }

    double voltsRead(double volts, Random random) {
        return volts * (1 + voltsRelative) + voltsOffset + noise(voltsNoise, random);
    }

    double pressureRead(double pascal, Random random) {
        return pascal * (1 + pressureRelative) + pressureOffsetPascal + noise(pressureNoisePascal, random);
    }

    double temperatureRead(double kelvin, Random random) {
        return kelvin + temperatureOffsetKelvin + noise(temperatureNoiseKelvin, random);
    }

    private static double noise(double standardDeviation, Random random) {
        return standardDeviation == 0 ? 0 : standardDeviation * random.nextGaussian();
    }

    private SensorErrors plus(
            double meter,
            double ampsGain,
            double amps,
            double voltsGain,
            double volts,
            double pressureGain,
            double pascal,
            double kelvin) {
        return new SensorErrors(
                meterRelative + meter,
                ampsRelative + ampsGain,
                ampsOffset + amps,
                voltsRelative + voltsGain,
                voltsOffset + volts,
                pressureRelative + pressureGain,
                pressureOffsetPascal + pascal,
                temperatureOffsetKelvin + kelvin,
                ampsNoise,
                voltsNoise,
                pressureNoisePascal,
                temperatureNoiseKelvin);
    }
}
