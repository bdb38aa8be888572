package org.pumpwright.host.plant.driver;

import org.pumpwright.host.plant.Range;

/**
 * How the module makes its output duty of the command. Assumed values. Thread-safe.
 *
 * @param frequencyHertz switching frequency
 * @param dutyOffset duty added to every command but zero
 * @param dutyBend duty added in the middle of the range, going to zero at its ends
 * @param deadSeconds on-time lost in every period
 * @param softStartSeconds time from nothing to full duty
 * @param brownOutVolts supply voltage below which the module resets
 * @param restartSeconds time it needs after that
 * @param commandHeard whether it hears the command at all
 */
public record DriverLogic(
        double frequencyHertz,
        double dutyOffset,
        double dutyBend,
        double deadSeconds,
        double softStartSeconds,
        double brownOutVolts,
        double restartSeconds,
        boolean commandHeard) {

    /** Commands below this are zero. */
    private static final double LEAST_COMMAND = 0.005;

    public DriverLogic {
        Range.check("switching frequency", frequencyHertz, 1, 1e6, "Hz");
        Range.check("duty offset", dutyOffset, -1, 1, "");
        Range.check("duty bend", dutyBend, -1, 1, "");
        Range.check("dead time", deadSeconds, 0, 0.1, "s");
        Range.check("soft start", softStartSeconds, 1e-3, 60, "s");
        Range.check("brown-out", brownOutVolts, 0, 100, "V");
        Range.check("restart", restartSeconds, 1e-3, 600, "s");
    }

    /** A valve driver of 150 Hz. */
    static DriverLogic healthy() {
        return new DriverLogic(150, 0, 0, 2e-6, 0.5, 7.5, 0.6, true);
    }

    DriverLogic withFrequency(double hertz) {
        return new DriverLogic(
                hertz,
                dutyOffset,
                dutyBend,
                deadSeconds,
                softStartSeconds,
                brownOutVolts,
                restartSeconds,
                commandHeard);
    }

    DriverLogic withDuty(double offset, double bend) {
        return new DriverLogic(
                frequencyHertz,
                offset,
                bend,
                deadSeconds,
                softStartSeconds,
                brownOutVolts,
                restartSeconds,
                commandHeard);
    }

    DriverLogic withBrownOut(double volts, double newSoftStartSeconds) {
        return new DriverLogic(
                frequencyHertz,
                dutyOffset,
                dutyBend,
                deadSeconds,
                newSoftStartSeconds,
                volts,
                restartSeconds,
                commandHeard);
    }

    DriverLogic deaf() {
        return new DriverLogic(
                frequencyHertz,
                dutyOffset,
                dutyBend,
                deadSeconds,
                softStartSeconds,
                brownOutVolts,
                restartSeconds,
                false);
    }

    /** The duty the module aims at. */
    public double duty(double command) {
        if (!commandHeard || command < LEAST_COMMAND) {
            return 0;
        }
        double bent = command + dutyOffset + 4 * dutyBend * command * (1 - command);
        double lost = bent < 1 ? deadSeconds * frequencyHertz : 0;
        return Math.max(0, Math.min(1, bent - lost));
    }
}
