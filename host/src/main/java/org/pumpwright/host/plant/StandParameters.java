package org.pumpwright.host.plant;

import static org.pumpwright.host.plant.UsUnits.ZERO_CELSIUS_KELVIN;

/**
 * What the stand puts around the unit: supply, lead, driver's freewheel path, nozzle and hose. Thread-safe.
 *
 * @param openCircuitVolts supply voltage without load
 * @param supplyOhms internal resistance of the supply
 * @param leadOhms lead out and back up to the unit's pins
 * @param supplyLimitAmps current at which the supply lets its voltage sag instead of giving more
 * @param freewheelVolts drop of the diode that carries the motor current while the switch is off
 * @param driveHertz switching frequency of the drive; infinite for a drive averaged over its period
 * @param leadDoublesWatts heat in the lead at which its resistance ends up doubled; infinite for a lead that stays cold
 * @param nozzleM3PerSecondRootPascal metered flow per root of the pressure; 0 is a closed outlet
 * @param recirculationM3PerSecondRootPascal unmetered flow back to the tank per root of the pressure
 * @param lineSettlingSeconds time constant with which pressure follows the pump
 * @param ambientKelvin air temperature, also the unit's at the start
 * @param waterKelvin water temperature
 * @param lines the hoses
 */
public record StandParameters(
        double openCircuitVolts,
        double supplyOhms,
        double leadOhms,
        double supplyLimitAmps,
        double freewheelVolts,
        double driveHertz,
        double leadDoublesWatts,
        double nozzleM3PerSecondRootPascal,
        double recirculationM3PerSecondRootPascal,
        double lineSettlingSeconds,
        double ambientKelvin,
        double waterKelvin,
        LineParameters lines) {

    public StandParameters {
        Range.check("open-circuit voltage", openCircuitVolts, 0.1, 1000, "V");
        Range.check("supply resistance", supplyOhms, 0, 10, "ohm");
        Range.check("lead resistance", leadOhms, 0, 100, "ohm");
        Range.check("supply limit", supplyLimitAmps, 0.1, 10_000, "A");
        Range.check("freewheel drop", freewheelVolts, 0, 5, "V");
        Range.check("drive frequency", driveHertz, 20, Double.POSITIVE_INFINITY, "Hz");
        Range.check("heat that doubles the lead", leadDoublesWatts, 0.1, Double.POSITIVE_INFINITY, "W");
        Range.check("nozzle", nozzleM3PerSecondRootPascal, 0, 1, "m3/s/rtPa");
        Range.check("recirculation", recirculationM3PerSecondRootPascal, 0, 1, "m3/s/rtPa");
        Range.check("line settling", lineSettlingSeconds, 0.01, 60, "s");
        Range.check("ambient temperature", ambientKelvin, 230, 450, "K");
        Range.check("water temperature", waterKelvin, 263, 373, "K");
    }

    /** A stand in good order at 20 °C; assumed values. */
    static StandParameters inOrder() {
        double room = ZERO_CELSIUS_KELVIN + 20;
        return new StandParameters(
                13.8,
                0.03,
                0.02,
                35,
                0.5,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                UsUnits.nozzle(0.60),
                0,
                0.5,
                room,
                room,
                LineParameters.filled());
    }

    /** The same stand with another supply voltage and lead resistance. */
    public StandParameters withFeed(double volts, double ohmsOfLead) {
        return new StandParameters(
                volts,
                supplyOhms,
                ohmsOfLead,
                supplyLimitAmps,
                freewheelVolts,
                driveHertz,
                leadDoublesWatts,
                nozzleM3PerSecondRootPascal,
                recirculationM3PerSecondRootPascal,
                lineSettlingSeconds,
                ambientKelvin,
                waterKelvin,
                lines);
    }

    /** The same stand with a lead whose resistance ends up doubled at this heat in watt. */
    public StandParameters withLeadDoublingAt(double watts) {
        return new StandParameters(
                openCircuitVolts,
                supplyOhms,
                leadOhms,
                supplyLimitAmps,
                freewheelVolts,
                driveHertz,
                watts,
                nozzleM3PerSecondRootPascal,
                recirculationM3PerSecondRootPascal,
                lineSettlingSeconds,
                ambientKelvin,
                waterKelvin,
                lines);
    }

    /** The same stand with a drive that switches at this frequency; infinite averages it over its period. */
    public StandParameters withDriveAt(double hertz) {
        return new StandParameters(
                openCircuitVolts,
                supplyOhms,
                leadOhms,
                supplyLimitAmps,
                freewheelVolts,
                hertz,
                leadDoublesWatts,
                nozzleM3PerSecondRootPascal,
                recirculationM3PerSecondRootPascal,
                lineSettlingSeconds,
                ambientKelvin,
                waterKelvin,
                lines);
    }

    /** The same stand with another nozzle and recirculation valve, in m3/s per root pascal. */
    public StandParameters withOutlet(double nozzle, double recirculation) {
        return new StandParameters(
                openCircuitVolts,
                supplyOhms,
                leadOhms,
                supplyLimitAmps,
                freewheelVolts,
                driveHertz,
                leadDoublesWatts,
                nozzle,
                recirculation,
                lineSettlingSeconds,
                ambientKelvin,
                waterKelvin,
                lines);
    }

    /** The same stand with other temperatures of air (and unit at the start) and water. */
    public StandParameters withTemperatures(double airKelvin, double liquidKelvin) {
        return new StandParameters(
                openCircuitVolts,
                supplyOhms,
                leadOhms,
                supplyLimitAmps,
                freewheelVolts,
                driveHertz,
                leadDoublesWatts,
                nozzleM3PerSecondRootPascal,
                recirculationM3PerSecondRootPascal,
                lineSettlingSeconds,
                airKelvin,
                liquidKelvin,
                lines);
    }

    /** The same stand with other hoses. */
    public StandParameters withLines(LineParameters other) {
        return new StandParameters(
                openCircuitVolts,
                supplyOhms,
                leadOhms,
                supplyLimitAmps,
                freewheelVolts,
                driveHertz,
                leadDoublesWatts,
                nozzleM3PerSecondRootPascal,
                recirculationM3PerSecondRootPascal,
                lineSettlingSeconds,
                ambientKelvin,
                waterKelvin,
                other);
    }
}
