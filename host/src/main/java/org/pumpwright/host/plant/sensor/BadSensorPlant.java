package org.pumpwright.host.plant.sensor;

import java.util.Random;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.Streams;

/** A plant read with one broken sensor. Same plant, sensor and seed: same readings. Confined to one thread. */
public final class BadSensorPlant implements Plant {

    private static final long STREAM = -202;

    private final Plant plant;
    private final SensorChannel channel;
    private final BadReading reading;
    private final BadPulses pulses;

    /**
     * @param plant what the sensors see
     * @param bad which sensor is broken and how
     * @param seed decides what a noisy sensor adds
     */
    public BadSensorPlant(Plant plant, BadSensor bad, long seed) {
        Random random = Streams.stream(seed, STREAM);
        this.plant = plant;
        channel = bad.channel();
        reading = new BadReading(bad, random);
        pulses = new BadPulses(bad.trouble(), random);
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        PlantReading r = plant.step(seconds, duties, contactorClosed);
        double[][] edges = r.edgeOffsetsSeconds();
        if (channel == SensorChannel.METER && edges.length > 0) {
            edges[0] = pulses.of(edges[0], seconds);
        }
        return new PlantReading(
                edges,
                channel == SensorChannel.VOLTS ? reading.of(r.voltsAtPins()) : r.voltsAtPins(),
                channel == SensorChannel.AMPS ? reading.of(r.amps()) : r.amps(),
                channel == SensorChannel.PRESSURE ? reading.of(r.pressurePa()) : r.pressurePa(),
                channel == SensorChannel.TEMPERATURE
                        ? reading.of(r.waterTemperatureKelvin())
                        : r.waterTemperatureKelvin());
    }
}
