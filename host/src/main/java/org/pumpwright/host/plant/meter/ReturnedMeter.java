package org.pumpwright.host.plant.meter;

import static org.pumpwright.host.plant.UsUnits.GALLON_M3;
import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Range;

/**
 * A meter as it comes back from the field. Assumed values. Thread-safe.
 *
 * @param sensor how it makes pulses
 * @param fullM3PerSecond end of its range
 * @param ratio its K over the K it should have
 * @param cavitationGain by what share K has risen at the end of the range through cavitation or low back pressure; it
 *     begins at 70 % of the range
 * @param pumpOffsetM3PerSecond flow an electromagnetic meter sees in addition while the pump is driven
 * @param signal what is lost or added on the way
 */
public record ReturnedMeter(
        FlowSensor sensor,
        double fullM3PerSecond,
        double ratio,
        double cavitationGain,
        double pumpOffsetM3PerSecond,
        SignalDefects signal) {

    private static final double CAVITATION_BEGINS = 0.7;

    public ReturnedMeter {
        Range.check("meter range", fullM3PerSecond, 1e-9, 1, "m3/s");
        Range.check("K ratio", ratio, 1e-3, 1000, "");
        Range.check("cavitation", cavitationGain, 0, 1, "");
        Range.check("offset with the pump on", pumpOffsetM3PerSecond, -1, 1, "m3/s");
    }

    /** A rotor meter for 0.1 to 5 gal/min, 3000 pulses per US gallon at 2.5 gal/min. */
    public static ReturnedMeter small() {
        return rotor(3000, 5, 0.004, 0.05, 0.014, 0.012, 1e-5);
    }

    /** A rotor meter for 1 to 30 gal/min, 600 pulses per US gallon at 15 gal/min. */
    public static ReturnedMeter large() {
        return rotor(600, 30, 0.05, 0.4, 0.02, 0.015, 1e-4);
    }

    /** An electromagnetic meter for 0.1 to 5 gal/min, 3000 pulses per US gallon. */
    public static ReturnedMeter smallElectromagnetic() {
        return electromagnetic(3000, 5, 0.003, 0.05);
    }

    /** An electromagnetic meter for 1 to 30 gal/min, 600 pulses per US gallon. */
    public static ReturnedMeter largeElectromagnetic() {
        return electromagnetic(600, 30, 0.02, 0.3);
    }

    /** The same with another sensor. */
    public ReturnedMeter withSensor(FlowSensor other) {
        return new ReturnedMeter(other, fullM3PerSecond, ratio, cavitationGain, pumpOffsetM3PerSecond, signal);
    }

    /** The same with another ratio of K. */
    public ReturnedMeter withRatio(double other) {
        return new ReturnedMeter(sensor, fullM3PerSecond, other, cavitationGain, pumpOffsetM3PerSecond, signal);
    }

    ReturnedMeter withCavitation(double gain) {
        return new ReturnedMeter(sensor, fullM3PerSecond, ratio, gain, pumpOffsetM3PerSecond, signal);
    }

    ReturnedMeter withPumpOffset(double m3PerSecond) {
        return new ReturnedMeter(sensor, fullM3PerSecond, ratio, cavitationGain, m3PerSecond, signal);
    }

    /** The same with other defects of its signal. */
    public ReturnedMeter withSignal(SignalDefects other) {
        return new ReturnedMeter(sensor, fullM3PerSecond, ratio, cavitationGain, pumpOffsetM3PerSecond, other);
    }

    /** Pulses per second at a steady flow, before anything is lost or added on the way; 0 below start or cut-off. */
    public double pulsesPerSecond(double flowM3PerSecond) {
        double seen = flowM3PerSecond * cavitation(flowM3PerSecond);
        double rate = sensor instanceof FlowSensor.Rotor rotor
                ? rotor.parameters().pulsesPerSecond(seen)
                : electromagneticRate(((FlowSensor.Electromagnetic) sensor).parameters(), seen);
        return ratio * rate;
    }

    /** By what factor cavitation raises what the meter sees. */
    double cavitation(double flowM3PerSecond) {
        double share = (flowM3PerSecond / fullM3PerSecond - CAVITATION_BEGINS) / (1 - CAVITATION_BEGINS);
        return 1 + cavitationGain * Math.max(0, Math.min(1, share));
    }

    private static double electromagneticRate(EmParameters em, double flow) {
        double seen = flow + em.zeroM3PerSecond();
        return seen < em.cutOffM3PerSecond() ? 0 : em.pulsesPerM3() * seen;
    }

    private static ReturnedMeter rotor(
            double perGallon,
            double fullGpm,
            double lagGpm,
            double startGpm,
            double pattern,
            double jitter,
            double slugM3) {
        double limit = perGallon / GALLON_M3 / (1 - lagGpm / (0.5 * fullGpm));
        MeterParameters m = new MeterParameters(
                limit, lagGpm * GALLON_PER_MINUTE, startGpm * GALLON_PER_MINUTE, 6, pattern, jitter, slugM3);
        return of(new FlowSensor.Rotor(m), fullGpm);
    }

    private static ReturnedMeter electromagnetic(double perGallon, double fullGpm, double zeroGpm, double cutOffGpm) {
        double noise = 0.003 * fullGpm * GALLON_PER_MINUTE;
        EmParameters em = new EmParameters(
                perGallon / GALLON_M3, zeroGpm * GALLON_PER_MINUTE, cutOffGpm * GALLON_PER_MINUTE, 0.5, noise, 10);
        return of(new FlowSensor.Electromagnetic(em), fullGpm);
    }

    private static ReturnedMeter of(FlowSensor sensor, double fullGpm) {
        return new ReturnedMeter(sensor, fullGpm * GALLON_PER_MINUTE, 1, 0, 0, SignalDefects.NONE);
    }
}
