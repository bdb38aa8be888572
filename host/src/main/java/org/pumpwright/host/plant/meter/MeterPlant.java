package org.pumpwright.host.plant.meter;

import java.util.Random;
import org.pumpwright.host.plant.AirSlugs;
import org.pumpwright.host.plant.EdgeTimes;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.plant.PulseMeter;
import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.SensorReadout;
import org.pumpwright.host.plant.Streams;

/**
 * A returned meter in series with the stand's master meter: same water, two counts. Drive 0 feeds the stand's own pump.
 * The master is meter 0, the returned one meter 1. Same parameters, errors, seed, settings and steps: same output to the
 * bit. Confined to one thread.
 */
public final class MeterPlant implements Plant {

    private static final double LONGEST_PART_SECONDS = 0.005;
    private static final double LONGEST_STEP_SECONDS = 3600;
    private static final double FEED_OHMS = 0.05;

    /** Streams of the returned meter, apart from those of the master. */
    private static final long RETURNED_PULSES = -20;

    private static final long RETURNED_SIGNAL = -21;

    private static final double TURN = 2 * Math.PI;

    private final ReturnedMeter unit;
    private final MeterLoop loop;
    private final SensorReadout sensors;
    private final PulseMeter master;
    private final Source returned;
    private final SignalPath path;
    private final AirSlugs slugs;
    private final EdgeTimes masterEdges = new EdgeTimes();
    private final EdgeTimes unitEdges = new EdgeTimes();
    private double flow;
    private double now;
    private boolean outletShut;

    /** Rotor or electromagnetic pulses. */
    private interface Source {
        void pass(double flowM3PerSecond, double begin, double seconds, EdgeTimes edges);
    }

    /**
     * Both meters at rest.
     *
     * @param unit the returned meter
     * @param loop the stand's loop with its master meter
     * @param errors the stand's sensors, the master's K error among them
     * @param seed decides jitter, blade patterns, noise, slugs, lost and added pulses
     */
    public MeterPlant(ReturnedMeter unit, MeterLoop loop, SensorErrors errors, long seed) {
        this.unit = unit;
        this.loop = loop;
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
        slugs = new AirSlugs(loop.airFraction(), loop.master().slugVolumeM3(), Streams.stream(seed, Streams.SLUGS));
        master = new PulseMeter(loop.master(), errors.meterRelative(), steady(), Streams.stream(seed, Streams.PULSES));
        Random pulses = Streams.stream(seed, RETURNED_PULSES);
        int blades = 1;
        if (unit.sensor() instanceof FlowSensor.Rotor rotor) {
            returned = new PulseMeter(rotor.parameters(), unit.ratio() - 1, steady(), pulses)::pass;
            blades = rotor.parameters().blades();
        } else {
            EmParameters em = ((FlowSensor.Electromagnetic) unit.sensor()).parameters();
            returned = new EmPulses(em, unit.ratio(), pulses)::pass;
        }
        path = new SignalPath(unit.signal(), blades, Streams.stream(seed, RETURNED_SIGNAL));
    }

    /** Shuts or opens the valve behind the meters; with it shut nothing flows whatever the pump does. */
    public void shutOutlet(boolean shut) {
        outletShut = shut;
    }

    /** Liquid through both meters at the end of the last step, in m3/s, air left out: what a perfect catch would say. */
    public double liquidFlow() {
        return flow * (1 - loop.airFraction());
    }

    @Override
    public void adjust(String setting, double value) {
        switch (setting) {
            case "outlet" -> shutOutlet(value == 0);
            default -> Plant.super.adjust(setting, value);
        }
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        Range.check("step", seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "s");
        if (duties.length == 0) {
            throw new IllegalArgumentException("no duty given: the stand's pump hangs on drive 0");
        }
        for (double duty : duties) {
            Range.check("duty", duty, 0, 1, "");
        }
        double duty = contactorClosed ? duties[0] : 0;
        int parts = Math.max(1, (int) Math.ceil(seconds / LONGEST_PART_SECONDS - 1e-9));
        double part = seconds / parts;
        for (int i = 0; i < parts; i++) {
            advance(i * part, part, 1.0 / parts, duty, contactorClosed);
        }
        double[] seen = path.carry(unitEdges.take(), seconds);
        boolean silent = seen.length == 0 && unit.pulsesPerSecond(flow) == 0;
        if (silent && duty > 0 && duty < 1) {
            seen = path.interference(loop.driveHertz(), seconds);
        }
        return sensors.take(new double[][] {masterEdges.take(), seen}, loop.waterKelvin());
    }

    private void advance(double begin, double seconds, double share, double duty, boolean fed) {
        double target = outletShut ? 0 : loop.steadyFlow(duty);
        double kept = StrictMath.exp(-0.5 * seconds / loop.settlingSeconds());
        double middle = target + (flow - target) * kept;
        flow = target + (middle - target) * kept;
        now += seconds;
        double surge = 1 + loop.surgeShare() * StrictMath.sin(TURN * loop.surgeHertz() * now);
        double passing = middle * surge * slugs.factorAfter(middle * seconds);
        master.pass(passing, begin, seconds, masterEdges);
        double seen = passing * unit.cavitation(passing) + (duty > 0 ? unit.pumpOffsetM3PerSecond() : 0);
        returned.pass(Math.max(0, seen), begin, seconds, unitEdges);
        double amps = loop.fullAmps() * duty * duty;
        double root = middle / loop.nozzleM3PerSecondRootPascal();
        sensors.add(share, fed ? loop.supplyVolts() - amps * FEED_OHMS : 0, amps, root * root);
    }

    /** Slugs act on the water that both meters see, not on each meter for itself. */
    private AirSlugs steady() {
        return new AirSlugs(0, loop.master().slugVolumeM3(), new Random(0));
    }
}
