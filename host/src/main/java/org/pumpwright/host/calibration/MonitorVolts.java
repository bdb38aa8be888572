package org.pumpwright.host.calibration;

/**
 * The bus-voltage register of a current and voltage monitor chip: 1.25 mV a step, 15 bits (Texas Instruments data sheet
 * SBOS547, INA226, register 02h). The step's own uncertainty is added to the parts given. The gain's share is of the reading.
 * Thread-safe.
 *
 * @param parts standard uncertainties; {@code stepCodes} is not used
 */
public record MonitorVolts(UncertaintyParts parts) implements Calibration {
    /** Volts a step. */
    public static final double VOLTS_PER_CODE = 1.25e-3;

    /** One step below the highest, at which the register stays when the voltage is beyond it. */
    private static final CodeRange SOUND = new CodeRange(0, 0x7FFE);

    @Override
    public String kind() {
        return "bus monitor";
    }

    @Override
    public double si(double code) {
        return code * VOLTS_PER_CODE;
    }

    @Override
    public double code(double si) {
        return si / VOLTS_PER_CODE;
    }

    @Override
    public double siPerCode(double code) {
        return VOLTS_PER_CODE;
    }

    @Override
    public double standardUncertainty(double si) {
        return parts.combined(parts.gainShare() * si, VOLTS_PER_CODE);
    }

    @Override
    public CodeRange sound() {
        return SOUND;
    }

    @Override
    public String lowWords() {
        return "the monitor tells a negative bus voltage, which its register cannot hold";
    }

    @Override
    public String highWords() {
        return "the voltage is at the end of the monitor's range, 40.96 V";
    }
}
