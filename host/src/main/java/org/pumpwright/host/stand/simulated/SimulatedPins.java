package org.pumpwright.host.stand.simulated;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.Sample;

/**
 * The board's side of the wires: counts the unit's pulses with time stamps and converts its readings with ten bits, as a
 * small microcontroller does. Confined to the run thread.
 */
final class SimulatedPins {
    private static final int STEP_MILLIS = 5;
    private static final int MILLI_NANOS = 1_000_000;

    private final Plant plant;
    private final Channels channels;
    private final List<SimulatedMeter> meters = new ArrayList<>();
    private final List<AnalogInput> analogs = new ArrayList<>();

    private PlantReading reading;
    private int conversions;
    private boolean converterStopped;
    private int millisSinceReading;
    private List<AnalogWindow> lastWindows;

    SimulatedPins(Plant plant, Channels channels, BoardTime time) {
        this.plant = plant;
        this.channels = channels;
        for (int i = 0; i < Math.min(Sample.METERS, channels.meters().size()); i++) {
            meters.add(new SimulatedMeter(i, time));
        }
        for (int i = 0; i < Sample.ANALOGS; i++) {
            analogs.add(new AnalogInput());
        }
        reading = plant.step(STEP_MILLIS / 1000.0, new double[Sample.DRIVES], false);
        lastWindows = analogs.stream().map(any -> AnalogWindow.NONE).toList();
    }

    /** One millisecond that begins at the given time, with the drives and the contactor as they are. */
    void millisecond(long nowNanos, double[] duties, boolean contactorClosed) {
        if (nowNanos / MILLI_NANOS % STEP_MILLIS == 0) {
            reading = plant.step(STEP_MILLIS / 1000.0, duties, contactorClosed);
            double[][] edges = reading.edgeOffsetsSeconds();
            for (int i = 0; i < Math.min(meters.size(), edges.length); i++) {
                meters.get(i).expect(nowNanos, edges[i]);
            }
        }
        meters.forEach(meter -> meter.countBefore(nowNanos + MILLI_NANOS));
        if (converterStopped) {
            millisSinceReading++;
            return;
        }
        channels.analogs().forEach(channel -> analogs.get(channel.index()).convert(channel.code(si(channel.role()))));
        conversions++;
        millisSinceReading = 0;
    }

    /** Stops the converter, or lets it run again. */
    void stopConverter(boolean stopped) {
        converterStopped = stopped;
    }

    /** For how long the converter has given no new reading; 0 when it runs. */
    int millisSinceReading() {
        return millisSinceReading;
    }

    private double si(ChannelRole role) {
        return switch (role) {
            case VOLTS_AT_PINS -> reading.voltsAtPins();
            case SUPPLY_AMPS -> reading.amps();
            case OUTLET_PRESSURE -> reading.pressurePa();
            case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
        };
    }

    /** The latest conversion of the channel with this role, left-justified. */
    OptionalInt now(ChannelRole role) {
        return channels.analog(role)
                .map((AnalogChannel channel) ->
                        OptionalInt.of(analogs.get(channel.index()).last()))
                .orElse(OptionalInt.empty());
    }

    /** Holds the channel with this role at a code, or lets it follow the plant again when empty. */
    void hold(ChannelRole role, OptionalInt code) {
        channels.analog(role).ifPresent(channel -> analogs.get(channel.index()).hold(code));
    }

    List<SimulatedMeter> meters() {
        return meters;
    }

    /** The places of a sample; where the board has no meter, the one that never counts. */
    List<MeterCount> counts() {
        List<MeterCount> counts = new ArrayList<>();
        for (int i = 0; i < Sample.METERS; i++) {
            counts.add(i < meters.size() ? meters.get(i).count() : MeterCount.START);
        }
        return counts;
    }

    int conversions() {
        return conversions;
    }

    /** Ends the window; one without a conversion repeats the window before, as the protocol asks. */
    List<AnalogWindow> takeWindows() {
        if (conversions > 0) {
            lastWindows = analogs.stream().map(AnalogInput::takeWindow).toList();
        }
        conversions = 0;
        return lastWindows;
    }

    /** After a reset the board counts from the start again. */
    void reset() {
        meters.forEach(SimulatedMeter::reset);
        takeWindows();
    }
}
