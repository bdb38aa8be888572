package org.pumpwright.host.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;

/**
 * A simulated stand without a board: the plant takes one step a sample in the place of one a millisecond, which makes
 * thousands of runs bearable. Its sensors must have the noise of a sample's mean. Confined to the run thread.
 */
final class CoarseStand implements Stand {
    static final double SAMPLE_SECONDS = 0.02;
    private static final long SAMPLE_NANOS = 20_000_000;
    private static final long TICK_NANOS = 500;
    private static final int DRIVES = 2;
    private static final int ANALOGS = 4;

    private final StandDescription description;
    private final Plant plant;
    private final MeterCount[] counts = {new MeterCount(0, 0), new MeterCount(0, 0)};
    private final double[] duties = new double[DRIVES];
    private final double[] set = new double[DRIVES];
    private final double[] swingSeconds = {1, 1};
    private boolean armed;
    private long nanos = 1_000_000_000;

    CoarseStand(StandDescription description, Plant plant) {
        this.description = description;
        this.plant = plant;
    }

    @Override
    public StandDescription description() {
        return description;
    }

    @Override
    public StandIdentity open() {
        return new StandIdentity("none", "0", "0", 1, "power", SimulatedBoard.PWM_HZ, 1000);
    }

    @Override
    public void arm() {
        armed = true;
    }

    @Override
    public void drive(int drive, Duty duty, double fullSwingSeconds) {
        set[drive] = duty.fraction();
        swingSeconds[drive] = fullSwingSeconds;
    }

    @Override
    public Optional<StandSignal> await(Duration atMost) {
        for (int drive = 0; drive < DRIVES; drive++) {
            double most = SAMPLE_SECONDS / swingSeconds[drive];
            duties[drive] += Math.max(-most, Math.min(most, set[drive] - duties[drive]));
        }
        PlantReading reading = plant.step(SAMPLE_SECONDS, duties.clone(), armed);
        for (int meter = 0; meter < Math.min(reading.edgeOffsetsSeconds().length, counts.length); meter++) {
            for (double offset : reading.edgeOffsetsSeconds()[meter]) {
                long at = nanos + Math.round(offset * 1e9 / TICK_NANOS) * TICK_NANOS;
                counts[meter] = new MeterCount(
                        counts[meter].edges() + 1, Math.max(at, counts[meter].lastEdgeNanos() + TICK_NANOS));
            }
        }
        nanos += SAMPLE_NANOS;
        return Optional.of(new StandSignal.Measured(sample(reading)));
    }

    private Sample sample(PlantReading reading) {
        List<AnalogReading> analogs = new ArrayList<>();
        for (int i = 0; i < ANALOGS; i++) {
            analogs.add(new AnalogReading(0, 0, 0));
        }
        for (AnalogChannel channel : description.channels().analogs()) {
            int code = channel.code(
                    switch (channel.role()) {
                        case VOLTS_AT_PINS -> reading.voltsAtPins();
                        case SUPPLY_AMPS -> reading.amps();
                        case OUTLET_PRESSURE -> reading.pressurePa();
                        case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
                    });
            analogs.set(channel.index(), new AnalogReading(code, code, code));
        }
        List<Duty> applied = new ArrayList<>();
        for (double duty : duties) {
            applied.add(new Duty((int) Math.round(duty * Duty.FULL_PARTS)));
        }
        return new Sample(nanos, List.of(counts[0], counts[1]), analogs, applied, armed, true, true);
    }

    @Override
    public void makeSafe() {
        armed = false;
        java.util.Arrays.fill(set, 0);
        java.util.Arrays.fill(duties, 0);
    }

    @Override
    public void close() {
        makeSafe();
    }
}
