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
    private final Surroundings surroundings;
    private final SuctionHose suction;
    private final WindingHeat heat;
    private final BrushContact contact;
    private final UnitCircuit circuit;
    private final AirSlugs slugs;
    private final PulseMeter meter;
    private final SensorReadout sensors;
    private final ChamberRipple ripple;
    private final EdgeTimes edges = new EdgeTimes();
    private boolean turning;
    private boolean wiggled;
    /** What an outlet of constant 1 would let through (the root of the pressure, for a plain nozzle): this is what lags. */
    private double outflow;

    /**
     * A unit at rest, hoses without pressure and filled as the stand's parameters say.
     *
     * @param parameters the unit and its stand
     * @param errors the stand's sensors
     * @param seed decides pulse jitter, blade pattern, noise, air slugs, chambers and contact trouble
     */
    public PumpPlant(PumpParameters parameters, SensorErrors errors, long seed) {
        this.parameters = parameters;
        surroundings = new Surroundings(parameters);
        suction = new SuctionHose(parameters.stand().lines());
        double air = parameters.stand().ambientKelvin();
        heat = new WindingHeat(
                parameters.thermal(), air, air + parameters.arrival().warmerKelvin());
        contact = new BrushContact(parameters.motor(), Streams.stream(seed, Streams.CONTACT));
        circuit = new UnitCircuit(
                parameters.circuit(),
                Streams.stream(seed, PumpStreams.SWITCH),
                Streams.stream(seed, PumpStreams.LOOSE));
        MeterParameters m = parameters.meter();
        slugs = new AirSlugs(surroundings.airFraction(), m.slugVolumeM3(), Streams.stream(seed, Streams.SLUGS));
        meter = new PulseMeter(m, errors.meterRelative(), slugs, Streams.stream(seed, Streams.PULSES));
        sensors = new SensorReadout(errors, Streams.stream(seed, Streams.NOISE));
        ripple = new ChamberRipple(parameters, errors, seed);
    }

    @Override
    public void adjust(String setting, double value) {
        switch (setting) {
            case "outlet" -> turnOutletValve(value);
            case "wiggle" -> wiggle(value > 0);
            default -> Plant.super.adjust(setting, value);
        }
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

    /**
     * Turns the valve in front of the nozzle, from now on.
     *
     * @param opening 1 is open, 0 is closed (dead-head); in between it is a smaller nozzle
     */
    public void turnOutletValve(double opening) {
        Range.check("opening of the outlet valve", opening, 0, 1, "");
        surroundings.turnOutletValve(opening);
    }

    /** Moves the unit's wires by hand, or leaves them alone, from now on. */
    public void wiggle(boolean moving) {
        wiggled = moving;
    }

    /** Winding temperature now, for checks; no sensor of the stand sees it. */
    public double windingKelvin() {
        return heat.windingKelvin();
    }

    /**
     * A fast series of supply current and pressure, with the unit held at a duty in its present state and run in. The
     * plant itself does not move in time. The same call in the same state gives the same series.
     *
     * @param duty 0..1
     * @param seconds length of the series
     * @param samplesPerSecond at least 100
     */
    public RippleSeries ripple(double duty, double seconds, double samplesPerSecond) {
        double contactOhms = circuit.open() ? UnitCircuit.OPEN_OHMS : contact.turningOhms();
        return ripple.capture(
                surroundings.now(),
                heat.windingKelvin(),
                contactOhms,
                new RippleOrder(duty, seconds, samplesPerSecond));
    }

    private void advance(double begin, double seconds, double share, double duty, boolean fed) {
        PumpParameters p = surroundings.now();
        OperatingCurve curve = new OperatingCurve(p, duty, heat.windingKelvin(), contactOhms());
        turning = turning || curve.breaksAway(p.physics().pressurePa(outflow));
        double middle = moveLine(p, curve, seconds);
        double pressure = p.physics().pressurePa(middle);
        OperatingPoint point = pointAt(curve, pressure);
        double flow = p.stand().nozzleM3PerSecondRootPascal() * middle;
        slugs.become(surroundings.airFraction());
        meter.pass(flow, begin, seconds, edges);
        double amps = curve.leadAmps(point);
        sensors.add(share, fed ? curve.terminalVolts(point) : 0, amps, pressure);
        heat.advance(seconds, curve.windingWatts(point));
        contact.advance(seconds, point.speedRadPerSecond());
        circuit.advance(seconds, heat.windingKelvin(), pressure, wiggled);
        if (suction.dry()) {
            suction.draw(p.head(), point.speedRadPerSecond(), seconds);
        }
        surroundings.advance(
                seconds,
                flow + p.stand().recirculationM3PerSecondRootPascal() * middle,
                amps,
                point.speedRadPerSecond() > 0);
    }

    private double contactOhms() {
        if (circuit.open()) {
            return UnitCircuit.OPEN_OHMS;
        }
        return turning ? contact.turningOhms() : contact.standingOhms();
    }

    /** Lets the pressure follow the pump, or run out behind a standing one; the outflow in the middle of the time. */
    private double moveLine(PumpParameters p, OperatingCurve curve, double seconds) {
        boolean pumping = turning && !suction.dry();
        double target = pumping ? p.physics().outflow(curve.balancePressure()) : 0;
        double perSecond = turning ? 1 / p.stand().lineSettlingSeconds() : standingPerSecond(p);
        double lag = StrictMath.exp(-0.5 * seconds * perSecond);
        double middle = target + (outflow - target) * lag;
        outflow = target + (middle - target) * lag;
        return middle;
    }

    /** Share of the outflow that a standing pump's line loses: through the outlet, and back through the valves. */
    private double standingPerSecond(PumpParameters p) {
        double healthyOutlet = parameters.stand().nozzleM3PerSecondRootPascal();
        double outlet = p.stand().nozzleM3PerSecondRootPascal() + p.stand().recirculationM3PerSecondRootPascal();
        double opening = healthyOutlet > 0 ? Math.min(1, outlet / healthyOutlet) : 0;
        LineParameters lines = p.stand().lines();
        double leak = p.head().slipM3PerSecondPascal() * lines.standingLeakShare() / lines.trappedM3PerPascal();
        return opening / p.stand().lineSettlingSeconds() + leak / 2;
    }

    private OperatingPoint pointAt(OperatingCurve curve, double pressurePa) {
        if (turning) {
            OperatingPoint point = curve.turningAt(pressurePa);
            turning = point.speedRadPerSecond() > 0;
            if (turning) {
                return curve.withRipple(point, contact.ripple(curve.ohmsBesidesContact()));
            }
        }
        return new OperatingPoint(0, 0, curve.standstill());
    }
}
