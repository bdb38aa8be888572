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

    public SensorErrors {
        Range.check("meter error", meterRelative, -0.9, 9, "");
        Range.check("current gain error", ampsRelative, -0.9, 9, "");
        Range.check("current offset", ampsOffset, -100, 100, "A");
        Range.check("voltage gain error", voltsRelative, -0.9, 9, "");
        Range.check("voltage offset", voltsOffset, -100, 100, "V");
        Range.check("pressure offset", pressureOffsetPascal, -1e7, 1e7, "Pa");
        Range.check("temperature offset", temperatureOffsetKelvin, -100, 100, "K");
        Range.check("current noise", ampsNoise, 0, 100, "A");
        Range.check("voltage noise", voltsNoise, 0, 100, "V");
        Range.check("pressure noise", pressureNoisePascal, 0, 1e7, "Pa");
        Range.check("temperature noise", temperatureNoiseKelvin, 0, 100, "K");
    }

    /** Perfect sensors without noise. */
    public static SensorErrors none() {
        return new SensorErrors(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
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
        SensorErrors noise = noiseOnly();
        return new SensorErrors(
                0.005 * random.nextGaussian(),
                0.005 * random.nextGaussian(),
                0.03 * random.nextGaussian(),
                0.001 * random.nextGaussian(),
                0.010 * random.nextGaussian(),
                0.005 * PRESSURE_FULL_SCALE_PASCAL * random.nextGaussian(),
                0.5 * random.nextGaussian(),
                noise.ampsNoise,
                noise.voltsNoise,
                noise.pressureNoisePascal,
                noise.temperatureNoiseKelvin);
    }
}
