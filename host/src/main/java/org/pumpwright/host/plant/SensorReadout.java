package org.pumpwright.host.plant;

import java.util.Random;

/** Means of one step on their way through the stand's sensors. Confined to the plant's thread. */
final class SensorReadout {

    private final SensorErrors errors;
    private final Random random;
    private double volts;
    private double amps;
    private double pressure;

    SensorReadout(SensorErrors errors, Random random) {
        this.errors = errors;
        this.random = random;
    }

    /** Adds a part of the step, weighted by its share of it. */
    void add(double share, double partVolts, double partAmps, double partPressurePa) {
        volts += share * partVolts;
        amps += share * partAmps;
        pressure += share * partPressurePa;
    }

    /** What the sensors make of the parts so far, which are then forgotten. */
    PlantReading take(double[][] edges, double waterKelvin) {
        PlantReading reading = new PlantReading(
                edges,
                volts * (1 + errors.voltsRelative()) + errors.voltsOffset() + noise(errors.voltsNoise()),
                amps * (1 + errors.ampsRelative()) + errors.ampsOffset() + noise(errors.ampsNoise()),
                pressure + errors.pressureOffsetPascal() + noise(errors.pressureNoisePascal()),
                waterKelvin + errors.temperatureOffsetKelvin() + noise(errors.temperatureNoiseKelvin()));
        volts = 0;
        amps = 0;
        pressure = 0;
        return reading;
    }

    private double noise(double standardDeviation) {
        return standardDeviation == 0 ? 0 : standardDeviation * random.nextGaussian();
    }
}
