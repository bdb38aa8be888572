package org.pumpwright.host.plant;

import java.util.Random;

/** Makes the fast series of one unit with the stand's sensors on it. Confined to the plant's thread. */
final class ChamberRipple {

    private static final double RUN_IN_SECONDS = 1;
    private static final double LONGEST_PART_SECONDS = 5e-5;

    private final Chambers chambers;
    private final SensorErrors errors;
    private final long seed;

    ChamberRipple(PumpParameters p, SensorErrors errors, long seed) {
        chambers = new Chambers(
                p.head().chambers(), p.dynamics().chamberInequality(), Streams.stream(seed, PumpStreams.CHAMBERS));
        this.errors = errors;
        this.seed = seed;
    }

    RippleSeries capture(PumpParameters p, double windingKelvin, double contactOhms, RippleOrder order) {
        OperatingCurve curve = new OperatingCurve(p, order.duty(), windingKelvin, contactOhms);
        TurningShaft shaft = new TurningShaft(p, curve, chambers.shares(p.head().deadChambers()));
        int parts = (int) Math.ceil(1 / (order.samplesPerSecond() * LONGEST_PART_SECONDS));
        double part = 1 / (order.samplesPerSecond() * parts);
        for (double t = 0; t < RUN_IN_SECONDS; t += part) {
            shaft.advance(part);
        }
        double[] amps = new double[order.samples()];
        double[] pressure = new double[order.samples()];
        Random noise = Streams.stream(seed, PumpStreams.RIPPLE_NOISE);
        for (int i = 0; i < amps.length; i++) {
            for (int j = 0; j < parts; j++) {
                shaft.advance(part);
            }
            amps[i] = errors.ampsRead(shaft.leadAmps(), noise);
            pressure[i] = errors.pressureRead(shaft.pressurePa(), noise);
        }
        return new RippleSeries(order.samplesPerSecond(), amps, pressure);
    }
}
