package org.pumpwright.host.plant.hydraulic;

import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.UsUnits;

/**
 * What the stand puts around the pump besides oil. Thread-safe.
 *
 * @param openCircuitVolts supply voltage without load
 * @param feedOhms supply and lead up to the coil's pins
 * @param freewheelVolts drop of the diode that carries the coil's current while the switch is off
 * @param drive how the valve drive turns duty into current
 * @param currentDriveAmps coil current at full duty of a drive that regulates current
 * @param dither amplitude of the drive's dither, as share of the valve's full current
 * @param nozzleM3PerSecondRootPascal metered flow per root of the pressure; 0 is a closed outlet
 * @param lineSettlingSeconds time constant with which the flow follows the oil
 * @param ampsInLoadLead whether the current sensor sits in the coil's own lead, where it sees the freewheeling current
 *     too, or in the supply lead, where it sees duty times that
 * @param ambientKelvin air, also the coil's temperature at the start
 * @param waterKelvin water
 */
public record HydraulicStand(
        double openCircuitVolts,
        double feedOhms,
        double freewheelVolts,
        Drive drive,
        double currentDriveAmps,
        double dither,
        double nozzleM3PerSecondRootPascal,
        double lineSettlingSeconds,
        boolean ampsInLoadLead,
        double ambientKelvin,
        double waterKelvin) {

    /** Temperature at which resistances are stated: 20 °C. */
    static final double REFERENCE_KELVIN = UsUnits.ZERO_CELSIUS_KELVIN + 20;

    /** How a valve drive works. */
    public enum Drive {
        /** Switches the supply with the duty: the current falls as the coil warms. */
        VOLTAGE,
        /** Regulates the current as far as the supply lets it. */
        CURRENT
    }

    public HydraulicStand {
        Range.check("open-circuit voltage", openCircuitVolts, 0.1, 1000, "V");
        Range.check("feed resistance", feedOhms, 0, 100, "ohm");
        Range.check("freewheel drop", freewheelVolts, 0, 5, "V");
        Range.check("current at full duty", currentDriveAmps, 0.01, 100, "A");
        Range.check("dither", dither, 0, 1, "");
        Range.check("nozzle", nozzleM3PerSecondRootPascal, 0, 1, "m3/s/rtPa");
        Range.check("line settling", lineSettlingSeconds, 0.01, 60, "s");
        Range.check("ambient temperature", ambientKelvin, 230, 450, "K");
        Range.check("water temperature", waterKelvin, 263, 373, "K");
    }

    /** 13.6 V held at the pins, dither on, the large nozzle, the current sensor in the coil's lead; assumed. */
    static HydraulicStand inOrder() {
        return new HydraulicStand(
                13.6,
                0,
                0.7,
                Drive.VOLTAGE,
                1.6,
                0.075,
                UsUnits.nozzle(3.9),
                1.2,
                true,
                REFERENCE_KELVIN,
                REFERENCE_KELVIN);
    }

    /** The same with another supply voltage and feed resistance. */
    public HydraulicStand withFeed(double volts, double ohms) {
        return new HydraulicStand(
                volts,
                ohms,
                freewheelVolts,
                drive,
                currentDriveAmps,
                dither,
                nozzleM3PerSecondRootPascal,
                lineSettlingSeconds,
                ampsInLoadLead,
                ambientKelvin,
                waterKelvin);
    }

    /** The same with another valve drive. */
    public HydraulicStand withDrive(Drive other, double newDither) {
        return new HydraulicStand(
                openCircuitVolts,
                feedOhms,
                freewheelVolts,
                other,
                currentDriveAmps,
                newDither,
                nozzleM3PerSecondRootPascal,
                lineSettlingSeconds,
                ampsInLoadLead,
                ambientKelvin,
                waterKelvin);
    }

    /** The same with another nozzle, in m3/s per root pascal. */
    public HydraulicStand withNozzle(double nozzle) {
        return new HydraulicStand(
                openCircuitVolts,
                feedOhms,
                freewheelVolts,
                drive,
                currentDriveAmps,
                dither,
                nozzle,
                lineSettlingSeconds,
                ampsInLoadLead,
                ambientKelvin,
                waterKelvin);
    }

    /** The same with the current sensor in the supply lead. */
    public HydraulicStand withAmpsInSupplyLead() {
        return new HydraulicStand(
                openCircuitVolts,
                feedOhms,
                freewheelVolts,
                drive,
                currentDriveAmps,
                dither,
                nozzleM3PerSecondRootPascal,
                lineSettlingSeconds,
                false,
                ambientKelvin,
                waterKelvin);
    }

    /** Mean coil current when the inductance has settled, {@code (d V - (1-d) V_f) / (R + d R_feed)}, not below 0. */
    double coilAmps(double duty, double coilOhms) {
        double loop = coilOhms + duty * feedOhms;
        double byVolts = Math.max(0, duty * openCircuitVolts - (1 - duty) * freewheelVolts) / loop;
        return switch (drive) {
            case VOLTAGE -> byVolts;
            case CURRENT -> Math.min(duty * currentDriveAmps, openCircuitVolts / (coilOhms + feedOhms));
        };
    }

    /** Share of the time that the switch conducts when it carries this current: the duty, or what the regulator needs. */
    double conductingShare(double duty, double coilAmps, double coilOhms) {
        return switch (drive) {
            case VOLTAGE -> duty;
            case CURRENT ->
                coilAmps == 0
                        ? 0
                        : Math.min(
                                1,
                                (coilAmps * coilOhms + freewheelVolts)
                                        / (openCircuitVolts + freewheelVolts - coilAmps * feedOhms));
        };
    }
}
