package org.pumpwright.host.plant;

/**
 * One pump on the stand, moving in time. Motor and pump are in balance at every moment (their own time constants of
 * about 1 and 10 ms are left out), the flow through the nozzle follows them with the line's first-order lag, the motor
 * warms with the current, and a standing shaft needs more torque to start than to keep turning. Drive 0 feeds the unit,
 * other drives go nowhere; the one meter is meter 0. Same parameters, errors, seed and steps: same output to the bit.
 * Confined to one thread.
 */
public final class PumpPlant implements Plant {

    private static final double LONGEST_PART_SECONDS = 0.005;
    private static final double LONGEST_STEP_SECONDS = 3600;

    private final PumpParameters parameters;
    private final WindingHeat heat;
    private final BrushContact contact;
    private final PulseMeter meter;
    private final SensorReadout sensors;
    private final EdgeTimes edges = new EdgeTimes();
    private boolean turning;
    /** The root of the pressure, to which the nozzle's flow is proportional: this is what lags. */
    private double rootPressure;

    /**
     * A unit at rest, everything at ambient temperature, hoses filled and without pressure.
     *
     * @param parameters the unit and its stand
     * @param errors the stand's sensors
     * @param seed decides pulse jitter, blade pattern, noise, air slugs and contact trouble
     */
    public PumpPlant(PumpParameters parameters, SensorErrors errors, long seed) {
        this.parameters = parameters;
        heat = new WindingHeat(parameters.thermal(), parameters.stand().ambientKelvin());
        contact = new BrushContact(parameters.motor(), Streams.stream(seed, Streams.CONTACT));
        MeterParameters m = parameters.meter();
        AirSlugs slugs =
                new AirSlugs(parameters.head().airFraction(), m.slugVolumeM3(), Streams.stream(seed, Streams.SLUGS));
        meter = new PulseMeter(m, errors.meterRelative(), slugs, Streams.stream(seed, Streams.PULSES));
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        Range.check("step", seconds, Double.MIN_VALUE, LONGEST_STEP_SECONDS, "s");
        if (duties.length == 0) {
            throw new IllegalArgumentException("no duty given: the pump hangs on drive 0");
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
        return sensors.take(new double[][] {edges.take()}, parameters.stand().waterKelvin());
    }

    private void advance(double begin, double seconds, double share, double duty, boolean fed) {
        double contactOhms = turning ? contact.turningOhms() : contact.standingOhms();
        OperatingCurve curve = new OperatingCurve(parameters, duty, heat.windingKelvin(), contactOhms);
        turning = turning || curve.breaksAway(rootPressure * rootPressure);
        double target = turning ? Math.sqrt(curve.balancePressure()) : 0;
        double lag = StrictMath.exp(-0.5 * seconds / parameters.stand().lineSettlingSeconds());
        double middle = target + (rootPressure - target) * lag;
        rootPressure = target + (middle - target) * lag;
        OperatingPoint point = pointAt(curve, middle * middle);
        double flow = parameters.stand().nozzleM3PerSecondRootPascal() * middle;
        meter.pass(flow, begin, seconds, edges);
        sensors.add(share, fed ? curve.terminalVolts(point) : 0, duty * point.motorAmps(), middle * middle);
        heat.advance(seconds, curve.windingWatts(point));
        contact.advance(seconds, point.speedRadPerSecond());
    }

    private OperatingPoint pointAt(OperatingCurve curve, double pressurePa) {
        if (turning) {
            OperatingPoint point = curve.turningAt(pressurePa);
            turning = point.speedRadPerSecond() > 0;
            if (turning) {
                return curve.withRipple(point, contact.ripple(curve.ohmsBesidesContact()));
            }
        }
        return new OperatingPoint(0, 0, curve.standstillAmps());
    }
}
