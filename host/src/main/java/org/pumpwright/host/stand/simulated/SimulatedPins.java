package org.pumpwright.host.stand.simulated;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.Sample;

/**
 * The board's side of the wires: counts the unit's pulses with time stamps and converts its readings with ten bits, as a
 * small microcontroller does. Confined to the run thread.
 */
final class SimulatedPins {
    static final long TICK_NANOS = 500;

    private static final long MASK_U32 = 0xFFFF_FFFFL;
    private static final int STEP_MILLIS = 5;
    private static final int CONVERTER_STEP = 64;
    private static final int HIGHEST_READING = 1023;

    private final Plant plant;
    private final Channels channels;
    private final Deque<Long> edgesToCome = new ArrayDeque<>();
    private final Window[] windows = new Window[Sample.ANALOGS];

    private PlantReading reading;
    private long count;
    private long lastEdgeTicks;
    private int conversions;
    private List<AnalogWindow> lastWindows = List.of();

    SimulatedPins(Plant plant, Channels channels) {
        this.plant = plant;
        this.channels = channels;
        for (int i = 0; i < windows.length; i++) {
            windows[i] = new Window();
        }
        reading = plant.step(STEP_MILLIS / 1000.0, new double[] {0}, false);
    }

    /** One millisecond that begins at the given time, with the pump's drive and the contactor as they are. */
    void millisecond(long nowNanos, Duty pump, boolean contactorClosed) {
        long millis = nowNanos / 1_000_000;
        if (millis % STEP_MILLIS == 0) {
            reading = plant.step(STEP_MILLIS / 1000.0, new double[] {pump.fraction()}, contactorClosed);
            for (double offsetSeconds : reading.edgeOffsetsSeconds()[0]) {
                edgesToCome.add(nowNanos + Math.round(offsetSeconds * 1e9));
            }
        }
        countEdgesBefore(nowNanos + 1_000_000);
        convert();
    }

    private void countEdgesBefore(long endNanos) {
        while (!edgesToCome.isEmpty() && edgesToCome.peek() < endNanos) {
            count++;
            lastEdgeTicks = edgesToCome.remove() / TICK_NANOS;
        }
    }

    private void convert() {
        for (AnalogChannel channel : channels.analogs()) {
            windows[channel.index()].add(raw(channel));
        }
        conversions++;
    }

    private int raw(AnalogChannel channel) {
        double si = switch (channel.role()) {
            case VOLTS_AT_PINS -> reading.voltsAtPins();
            case SUPPLY_AMPS -> reading.amps();
            case OUTLET_PRESSURE -> reading.pressurePa();
            case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
        };
        int nearest = (channel.code(si) + CONVERTER_STEP / 2) / CONVERTER_STEP;
        return Math.min(HIGHEST_READING, nearest) * CONVERTER_STEP;
    }

    /** The latest conversion of a channel, left-justified. */
    int now(int channel) {
        return windows[channel].last;
    }

    List<MeterCount> meters() {
        return List.of(new MeterCount(count & MASK_U32, lastEdgeTicks & MASK_U32), MeterCount.NONE);
    }

    int conversions() {
        return conversions;
    }

    /** Ends the window; one without a conversion repeats the window before, as the protocol asks. */
    List<AnalogWindow> takeWindows() {
        if (conversions > 0) {
            List<AnalogWindow> taken = new ArrayList<>();
            for (Window window : windows) {
                taken.add(window.take());
            }
            lastWindows = List.copyOf(taken);
        }
        conversions = 0;
        return lastWindows;
    }

    /** After a reset the board counts from 0 again. */
    void reset() {
        count = 0;
        lastEdgeTicks = 0;
        takeWindows();
    }

    private static final class Window {
        private long sum;
        private int readings;
        private int min = Integer.MAX_VALUE;
        private int max;
        private int last;

        void add(int value) {
            sum += value;
            readings++;
            min = Math.min(min, value);
            max = Math.max(max, value);
            last = value;
        }

        AnalogWindow take() {
            AnalogWindow window = readings == 0
                    ? AnalogWindow.NONE
                    : new AnalogWindow((int) Math.round((double) sum / readings), min, max);
            sum = 0;
            readings = 0;
            min = Integer.MAX_VALUE;
            max = 0;
            return window;
        }
    }
}
