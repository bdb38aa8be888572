package org.pumpwright.host.plant.hydraulic;

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
 * A hydraulic pump on the stand, moving in time. The coil's current follows the drive with L/R, the spool the current,
 * the flow the oil, each with a first-order lag; the coil warms. Drive 1 is the valve's, other drives go nowhere; the
 * water passes meter 1, the large one, and meter 0 stays silent. Volts are those at the coil's pins on the supply side;
 * where the current sensor sits is the stand's matter. The same parameters, errors, seed, settings and steps give the
 * same output to the bit. Confined to one thread.
 */
public final class HydraulicPlant implements Plant {

    /** Drive of the stand that feeds the valve. */
    public static final int VALVE_DRIVE = 1;

    private static final double LONGEST_PART_SECONDS = 0.005;
    private static final double LONGEST_STEP_SECONDS = 3600;

    private final HydraulicParameters parameters;
    private final Spool spool;
    private final PulseMeter meter;
    private final SensorReadout sensors;
    private final EdgeTimes edges = new EdgeTimes();
    private double coilKelvin;
    private double coilAmps;
    private double rootPressure;
    private double override;
    private boolean oilOn = true;
    private double nozzle;

    /**
     * A unit at rest, oil on, override backed out, hoses filled.
     *
     * @param parameters the unit and its stand
     * @param errors the stand's sensors
     * @param seed decides pulse jitter, blade pattern, air slugs and noise
     */
    public HydraulicPlant(HydraulicParameters parameters, SensorErrors errors, long seed) {
        this.parameters = parameters;
        HydraulicStand stand = parameters.stand();
        spool = new Spool(parameters.spool(), stand.dither());
        nozzle = stand.nozzleM3PerSecondRootPascal();
        coilKelvin = stand.ambientKelvin() + parameters.coil().startRiseKelvin();
        AirSlugs slugs = new AirSlugs(
                parameters.head().airFraction(),
                parameters.meter().slugVolumeM3(),
                Streams.stream(seed, Streams.SLUGS));
        meter = new PulseMeter(parameters.meter(), errors.meterRelative(), slugs, Streams.stream(seed, Streams.PULSES));
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
    }

    /** Turns the mechanical override in, 0 backed out to 1 fully; it moves the spool without current. */
    public void setOverride(double turnedIn) {
        Range.check("override", turnedIn, 0, 1, "");
        override = turnedIn;
    }

    /** Turns the oil supply on or off. */
    public void setOilOn(boolean on) {
        oilOn = on;
    }

    /** Fits another nozzle, in m3/s per root pascal; 0 closes the outlet. */
    public void fitNozzle(double m3PerSecondRootPascal) {
        Range.check("nozzle", m3PerSecondRootPascal, 0, 1, "m3/s/rtPa");
        nozzle = m3PerSecondRootPascal;
    }

    /** Temperature of the coil, which no sensor of the stand sees. */
    public double coilKelvin() {
        return coilKelvin;
    }

    @Override
    public void adjust(String setting, double value) {
        switch (setting) {
            case "override" -> setOverride(value);
            case "oil" -> setOilOn(value > 0);
            case "nozzle-share" -> fitNozzle(value * parameters.stand().nozzleM3PerSecondRootPascal());
            default -> Plant.super.adjust(setting, value);
        }
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        Range.check("step", seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "s");
        if (duties.length <= VALVE_DRIVE) {
            throw new IllegalArgumentException("only " + duties.length + " duties given: the valve hangs on drive 1");
        }
        for (double duty : duties) {
            Range.check("duty", duty, 0, 1, "");
        }
        double duty = contactorClosed ? duties[VALVE_DRIVE] : 0;
        int parts = Math.max(1, (int) Math.ceil(seconds / LONGEST_PART_SECONDS - 1e-9));
        double part = seconds / parts;
        for (int i = 0; i < parts; i++) {
            advance(i * part, part, 1.0 / parts, duty, contactorClosed);
        }
        return sensors.take(
                new double[][] {new double[0], edges.take()}, parameters.stand().waterKelvin());
    }

    private void advance(double begin, double seconds, double share, double duty, boolean fed) {
        HydraulicStand stand = parameters.stand();
        CoilParameters coil = parameters.coil();
        double winding = coil.windingOhms(coilKelvin);
        double ohms = winding + coil.seriesOhms();
        double target = stand.coilAmps(duty, ohms);
        double middleAmps = target + (coilAmps - target) * StrictMath.exp(-0.5 * seconds * ohms / coil.henry());
        coilAmps = target + (coilAmps - target) * StrictMath.exp(-seconds * ohms / coil.henry());
        double opening = spool.advance(seconds, middleAmps * coil.forceShare(), override);
        double middle = follow(seconds, oilOn ? opening : 0);
        meter.pass(nozzle * middle, begin, seconds, edges);
        double supplyAmps = stand.conductingShare(duty, middleAmps, ohms) * middleAmps;
        double volts = fed ? stand.openCircuitVolts() - supplyAmps * stand.feedOhms() : 0;
        sensors.add(share, volts, stand.ampsInLoadLead() ? middleAmps : supplyAmps, middle * middle);
        warm(seconds, middleAmps * middleAmps * winding);
    }

    /** The root of the pressure, which lags behind the oil's balance, in the middle of the part. */
    private double follow(double seconds, double opening) {
        double target = Math.sqrt(
                new OilCircuit(parameters, nozzle, opening).balance().load().pressurePa());
        double kept = StrictMath.exp(-0.5 * seconds / parameters.stand().lineSettlingSeconds());
        double middle = target + (rootPressure - target) * kept;
        rootPressure = target + (middle - target) * kept;
        return middle;
    }

    private void warm(double seconds, double watts) {
        CoilParameters coil = parameters.coil();
        double target = parameters.stand().ambientKelvin() + coil.kelvinPerWatt() * watts;
        coilKelvin = target + (coilKelvin - target) * StrictMath.exp(-seconds / coil.warmingSeconds());
    }
}
