package org.pumpwright.host.plant.driver;

import java.util.List;
import org.pumpwright.host.plant.EdgeTimes;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.SensorReadout;
import org.pumpwright.host.plant.Streams;
import org.pumpwright.host.plant.Telegraph;

/**
 * A returned driver module on the stand, moving in time: soft start, inrush of the load, brown-out and restart, trip on
 * a short, current limit and its foldback, warming of the case, cracks. Duty 0 is the command to the module. The output's
 * rising edges arrive on meter 1, so that the stand can measure its frequency; meter 0 stays silent. The pressure
 * reading is that of a loop at rest, and the thermometer lies on the module's case. Where voltmeter and current sensor
 * sit is a setting. Same parameters, settings, seed and steps: same output to the bit. Confined to one thread.
 */
public final class DriverPlant implements Plant {

    private static final double LONGEST_PART_SECONDS = 0.005;
    private static final double LONGEST_STEP_SECONDS = 3600;

    /** Current while on, as a multiple of the limit, that is a short; and how soon the module acts on it (assumed). */
    private static final double SHORT_OF_LIMIT = 3;

    private static final double TRIP_SECONDS = 0.02;

    /** A crack opens twice as often for every so many kelvin of the case (assumed). */
    private static final double CRACK_DOUBLES_KELVIN = 20;

    private static final double AT_LIMIT = 0.98;

    private final DriverParameters parameters;
    /** By the number of the setting {@code load}. */
    private static final List<DummyLoad> LOADS = List.of(
            DummyLoad.resistor(),
            DummyLoad.coil(),
            DummyLoad.fifteenAmps(),
            DummyLoad.masterPump(),
            DummyLoad.shortCircuit());

    /** By the number of the setting {@code probe}. */
    private static final List<DriverProbe> PROBES = List.of(DriverProbe.values());

    private DriverStand stand;
    private final SensorReadout sensors;
    private final Telegraph crack;
    private final EdgeTimes edges = new EdgeTimes();
    private DriverProbe probe = DriverProbe.SUPPLY_PINS;
    private boolean ampsInLoadLead = true;
    private double rampDuty;
    private double onSeconds;
    private double restSeconds;
    private double shortSeconds;
    private boolean tripped;
    private double limitSeconds;
    private double caseRise;
    private double phase;
    private double lastLoadAmps;

    /**
     * A module at rest.
     *
     * @param parameters the module
     * @param stand supply and dummy load
     * @param errors the stand's sensors
     * @param seed decides noise and cracks
     */
    public DriverPlant(DriverParameters parameters, DriverStand stand, SensorErrors errors, long seed) {
        this.parameters = parameters;
        this.stand = stand;
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
        crack = new Telegraph(parameters.openingsPerMinute(), Streams.stream(seed, Streams.CONTACT));
    }

    /** Moves the voltmeter. */
    public void probe(DriverProbe where) {
        probe = where;
    }

    /** Puts another load at the output. */
    public void fitLoad(DummyLoad load) {
        stand = new DriverStand(stand.openCircuitVolts(), stand.feedOhms(), load, stand.ambientKelvin());
    }

    /** Moves the current sensor into the load's lead or into the module's supply lead. */
    public void measureAmpsInLoadLead(boolean inLoadLead) {
        ampsInLoadLead = inLoadLead;
    }

    /** Load current as the module itself reports it, mean of the last part of a step. */
    public double reportedAmps() {
        return lastLoadAmps + parameters.senseOffsetAmps();
    }

    @Override
    public void adjust(String setting, double value) {
        switch (setting) {
            case "probe" -> probe(PROBES.get((int) value));
            case "load" -> fitLoad(LOADS.get((int) value));
            case "amps-in-load-lead" -> measureAmpsInLoadLead(value > 0);
            default -> Plant.super.adjust(setting, value);
        }
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        Range.check("step", seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "s");
        if (duties.length == 0) {
            throw new IllegalArgumentException("no duty given: drive 0 is the module's command");
        }
        for (double duty : duties) {
            Range.check("duty", duty, 0, 1, "");
        }
        int parts = Math.max(1, (int) Math.ceil(seconds / LONGEST_PART_SECONDS - 1e-9));
        double part = seconds / parts;
        for (int i = 0; i < parts; i++) {
            advance(i * part, part, 1.0 / parts, duties[0], contactorClosed);
        }
        return sensors.take(new double[][] {new double[0], edges.take()}, stand.ambientKelvin() + caseRise);
    }

    private void advance(double begin, double seconds, double share, double command, boolean fed) {
        crack.advance(seconds, StrictMath.pow(2, caseRise / CRACK_DOUBLES_KELVIN));
        if (!fed) {
            restAndCool(seconds);
            sensors.add(share, 0, 0, 0);
            return;
        }
        aim(seconds, command);
        DriverParameters now =
                crack.open() ? parameters.withOutput(parameters.output().withSwitch(false, true)) : parameters;
        double ohms = stand.load().ohmsAfter(onSeconds);
        DriverState state = DriverState.at(now, stand, rampDuty, limitAmps(), ohms);
        onSeconds = state.duty() > 0 ? onSeconds + seconds : 0;
        guard(seconds, state);
        countEdges(begin, seconds, state.duty());
        lastLoadAmps = state.loadAmps();
        sensors.add(share, probe.volts(state), ampsInLoadLead ? state.loadAmps() : state.supplyAmps(), 0);
        warm(seconds, state);
    }

    /** Lets the output duty follow the command as soft start, restart and trip allow. */
    private void aim(double seconds, double command) {
        double target = parameters.logic().duty(command);
        tripped = tripped && target > 0;
        if (tripped || restSeconds > 0) {
            restSeconds = Math.max(0, restSeconds - seconds);
            rampDuty = 0;
            return;
        }
        rampDuty = Math.min(target, rampDuty + seconds / parameters.logic().softStartSeconds());
    }

    /** The module's own supply outlasts the time a short needs to trip it; a sag without a short resets it at once. */
    private void guard(double seconds, DriverState state) {
        boolean shorted = state.onAmps() > SHORT_OF_LIMIT * parameters.limitAmps();
        shortSeconds = shorted ? shortSeconds + seconds : 0;
        if (!shorted && state.lowestSupplyVolts() < parameters.logic().brownOutVolts()) {
            restSeconds = parameters.logic().restartSeconds();
        }
        tripped = tripped || shortSeconds >= TRIP_SECONDS;
        limitSeconds = state.loadAmps() >= AT_LIMIT * limitAmps() ? limitSeconds + seconds : limitSeconds;
        if (state.duty() == 0) {
            limitSeconds = 0;
        }
    }

    private double limitAmps() {
        boolean hot = limitSeconds >= parameters.foldbackSeconds();
        return hot ? parameters.limitAmps() * parameters.foldbackShare() : parameters.limitAmps();
    }

    private void countEdges(double begin, double seconds, double duty) {
        if (duty <= 0 || duty >= 1) {
            return;
        }
        double hertz = parameters.logic().frequencyHertz();
        double to = phase + seconds * hertz;
        for (double next = Math.floor(phase) + 1; next <= to; next++) {
            edges.add(begin + (next - phase) / hertz);
        }
        phase = to - Math.floor(to);
    }

    private void restAndCool(double seconds) {
        rampDuty = 0;
        onSeconds = 0;
        restSeconds = 0;
        tripped = false;
        shortSeconds = 0;
        limitSeconds = 0;
        lastLoadAmps = 0;
        cool(seconds, 0);
    }

    private void warm(double seconds, DriverState state) {
        double inSwitch = state.duty() * state.onAmps() * state.dropVolts();
        double own = stand.openCircuitVolts() * parameters.quiescentAmps();
        cool(seconds, inSwitch + own);
    }

    private void cool(double seconds, double watts) {
        double target = parameters.kelvinPerWatt() * watts;
        caseRise = target + (caseRise - target) * StrictMath.exp(-seconds / parameters.warmingSeconds());
    }
}
