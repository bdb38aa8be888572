package org.pumpwright.host.plant.meter;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plant.Intervals;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.SensorErrors;

/**
 * What both meters gave while a duty was held.
 *
 * @param masterCount edges of the master
 * @param edges times of the returned meter's edges
 */
record MeterTrain(int masterCount, List<Double> edges) {

    private static final double STEP_SECONDS = 0.01;

    /** Waits for the flow to settle, then collects for a time. */
    static MeterTrain of(MeterBench bench, double duty, double seconds) {
        MeterPlant plant = new MeterPlant(bench.unit(), bench.loop(), SensorErrors.none(), 5);
        plant.step(15 * bench.loop().settlingSeconds(), new double[] {duty}, true);
        return collect(plant, duty, seconds);
    }

    static MeterTrain collect(MeterPlant plant, double duty, double seconds) {
        int master = 0;
        List<Double> edges = new ArrayList<>();
        long steps = Math.round(seconds / STEP_SECONDS);
        for (long i = 0; i < steps; i++) {
            PlantReading reading = plant.step(STEP_SECONDS, new double[] {duty}, true);
            master += reading.edgeOffsetsSeconds()[0].length;
            for (double offset : reading.edgeOffsetsSeconds()[1]) {
                edges.add(i * STEP_SECONDS + offset);
            }
        }
        return new MeterTrain(master, edges);
    }

    double errorAgainstMaster() {
        return (double) edges.size() / masterCount - 1;
    }

    Intervals intervals() {
        return Intervals.between(edges.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
