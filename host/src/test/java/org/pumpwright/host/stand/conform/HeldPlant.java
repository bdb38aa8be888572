package org.pumpwright.host.stand.conform;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;

/** A plant whose readings and first meter can be held while it runs on. Any thread may hold them. */
final class HeldPlant implements Plant {
    private final Plant plant;
    private final Channels channels;
    private final Map<ChannelRole, Integer> codes = new ConcurrentHashMap<>();
    private volatile double meterHz = -1;
    private double toNextEdge;

    HeldPlant(Plant plant, Channels channels) {
        this.plant = plant;
        this.channels = channels;
    }

    void hold(ChannelRole role, int code) {
        codes.put(role, code);
    }

    void release(ChannelRole role) {
        codes.remove(role);
    }

    /** Pulses per second; below 0 they follow the plant. */
    void meter(double hz) {
        meterHz = hz;
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        PlantReading reading = plant.step(seconds, duties, contactorClosed);
        double[][] edges = reading.edgeOffsetsSeconds().clone();
        if (meterHz >= 0) {
            edges[0] = edges(seconds, meterHz);
        }
        return new PlantReading(
                edges,
                held(ChannelRole.VOLTS_AT_PINS).orElse(reading.voltsAtPins()),
                held(ChannelRole.SUPPLY_AMPS).orElse(reading.amps()),
                held(ChannelRole.OUTLET_PRESSURE).orElse(reading.pressurePa()),
                reading.waterTemperatureKelvin());
    }

    private Optional<Double> held(ChannelRole role) {
        return Optional.ofNullable(codes.get(role))
                .map(code -> channels.required(role).si(code));
    }

    private double[] edges(double seconds, double hz) {
        double[] offsets = new double[(int) Math.ceil(seconds * hz) + 1];
        int count = 0;
        while (hz > 0 && toNextEdge < seconds) {
            offsets[count++] = toNextEdge;
            toNextEdge += 1 / hz;
        }
        toNextEdge -= seconds;
        return Arrays.copyOf(offsets, count);
    }
}
