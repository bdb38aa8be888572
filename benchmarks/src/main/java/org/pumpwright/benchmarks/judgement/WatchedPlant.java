package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Trace;

/** A pump whose winding temperature is written down, which no sensor of the stand sees. Confined to the run thread. */
final class WatchedPlant implements Plant {
    private final PumpPlant pump;
    private double[] seconds = new double[1 << 14];
    private double[] kelvins = new double[1 << 14];
    private int steps;
    private double now;

    WatchedPlant(PumpPlant pump) {
        this.pump = pump;
    }

    double seconds() {
        return now;
    }

    @Override
    public PlantReading step(double stepSeconds, double[] duties, boolean contactorClosed) {
        PlantReading reading = pump.step(stepSeconds, duties, contactorClosed);
        now += stepSeconds;
        if (steps == seconds.length) {
            seconds = Arrays.copyOf(seconds, 2 * steps);
            kelvins = Arrays.copyOf(kelvins, 2 * steps);
        }
        seconds[steps] = now;
        kelvins[steps] = pump.windingKelvin();
        steps++;
        return reading;
    }

    @Override
    public void adjust(String setting, double value) {
        pump.adjust(setting, value);
    }

    /** Winding temperature in the middle of each measured point of a run. */
    List<Double> kelvins(Trace trace, List<Double> pointsDone) {
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < trace.points().size(); i++) {
            PointMark point = trace.points().get(i);
            double measured = (point.endNanos() - point.measureFromNanos()) / 1e9;
            middles.add(kelvinAt(pointsDone.get(i) - measured / 2));
        }
        return middles;
    }

    private double kelvinAt(double second) {
        int found = Arrays.binarySearch(seconds, 0, steps, second);
        return kelvins[Math.max(0, Math.min(steps - 1, found < 0 ? -found - 1 : found))];
    }
}
