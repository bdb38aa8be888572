package org.pumpwright.host.plant.meter;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;

import org.pumpwright.host.plant.MeterParameters;
import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.UsUnits;

/**
 * The stand's own pump and loop. The pump's flow is a straight line above its start duty: a meter is judged against the
 * master meter, so the curve of the stand's pump does not matter. Assumed values. Thread-safe.
 *
 * @param master the stand's own meter, in series
 * @param fullM3PerSecond flow at full duty
 * @param startDuty duty below which nothing flows
 * @param settlingSeconds time constant of the flow
 * @param nozzleM3PerSecondRootPascal nozzle at the loop's end
 * @param supplyVolts supply at the pump's pins without current
 * @param fullAmps supply current at full duty; it goes as the square of the duty
 * @param driveHertz switching frequency of the pump's drive
 * @param airFraction share of the flow that is air, in slugs
 * @param surgeShare half the swing of a surging flow, as share of it
 * @param surgeHertz how often it surges
 * @param waterKelvin water
 */
public record MeterLoop(
        MeterParameters master,
        double fullM3PerSecond,
        double startDuty,
        double settlingSeconds,
        double nozzleM3PerSecondRootPascal,
        double supplyVolts,
        double fullAmps,
        double driveHertz,
        double airFraction,
        double surgeShare,
        double surgeHertz,
        double waterKelvin) {

    public MeterLoop {
        Range.check("loop flow", fullM3PerSecond, 1e-9, 1, "m3/s");
        Range.check("start duty", startDuty, 0, 0.99, "");
        Range.check("settling", settlingSeconds, 0.01, 60, "s");
        Range.check("nozzle", nozzleM3PerSecondRootPascal, 1e-12, 1, "m3/s/rtPa");
        Range.check("supply", supplyVolts, 0, 1000, "V");
        Range.check("pump current", fullAmps, 0, 1000, "A");
        Range.check("drive frequency", driveHertz, 1, 1e6, "Hz");
        Range.check("air", airFraction, 0, 0.9, "");
        Range.check("surge", surgeShare, 0, 0.9, "");
        Range.check("surge frequency", surgeHertz, 0.01, 1000, "Hz");
        Range.check("water temperature", waterKelvin, 263, 373, "K");
    }

    /** The 5 gal/min loop with a small master meter. */
    public static MeterLoop small() {
        return of(ReturnedMeter.small(), 5, 0.60, 0.5, 13);
    }

    /** The 30 gal/min loop with a large master meter. */
    public static MeterLoop large() {
        return of(ReturnedMeter.large(), 30, 3.9, 1.2, 25);
    }

    /** The same with this share of air. */
    public MeterLoop withAir(double fraction) {
        return new MeterLoop(
                master,
                fullM3PerSecond,
                startDuty,
                settlingSeconds,
                nozzleM3PerSecondRootPascal,
                supplyVolts,
                fullAmps,
                driveHertz,
                fraction,
                surgeShare,
                surgeHertz,
                waterKelvin);
    }

    /** The same with a surging flow. */
    public MeterLoop withSurge(double share, double hertz) {
        return new MeterLoop(
                master,
                fullM3PerSecond,
                startDuty,
                settlingSeconds,
                nozzleM3PerSecondRootPascal,
                supplyVolts,
                fullAmps,
                driveHertz,
                airFraction,
                share,
                hertz,
                waterKelvin);
    }

    /** Flow at a duty held for long. */
    public double steadyFlow(double duty) {
        return fullM3PerSecond * Math.max(0, (duty - startDuty) / (1 - startDuty));
    }

    private static MeterLoop of(ReturnedMeter master, double fullGpm, double nozzle, double settling, double amps) {
        MeterParameters m = ((FlowSensor.Rotor) master.sensor()).parameters();
        return new MeterLoop(
                m,
                fullGpm * GALLON_PER_MINUTE,
                0.15,
                settling,
                UsUnits.nozzle(nozzle),
                13.8,
                amps,
                7812.5,
                0,
                0,
                1,
                UsUnits.ZERO_CELSIUS_KELVIN + 20);
    }
}
