package org.pumpwright.host.calibration;

import java.util.Locale;
import java.util.OptionalDouble;
import org.pumpwright.host.quantity.Require;

/**
 * A current over a known shunt, read by a current and voltage monitor chip (Texas Instruments data sheet SBOS547, INA226):
 * from the shunt-voltage register, 2.5 uV a step, or from the current register, whose step the chip is told by its calibration
 * register, {@code trunc(0.00512 / (step * shunt))}. Because of the truncation the true step is
 * {@code 0.00512 / (register * shunt)}, and that is what is used here. Codes are signed registers; a board whose samples carry
 * no sign gives 0 for a reverse current. The gain's share is of the reading (shunt and chip). Thread-safe.
 *
 * @param shuntOhms the shunt, ohm
 * @param wantedStep the step asked of the current register, A; empty when the shunt-voltage register is read
 * @param parts standard uncertainties; {@code stepCodes} is not used, the register's steps are added to the parts given
 */
public record MonitorAmps(double shuntOhms, OptionalDouble wantedStep, UncertaintyParts parts) implements Calibration {
    /** Volts over the shunt a step of the shunt-voltage register. */
    public static final double SHUNT_VOLTS_PER_CODE = 2.5e-6;

    private static final double SCALING = 0.00512;
    private static final int HIGHEST = 0x7FFF;
    private static final double SHUNT_CODES_PER_CURRENT_CODE_TIMES_REGISTER = 2048;

    /** Keeps the truncation from taking a whole step away where the quotient is whole but for rounding. */
    private static final double ROUNDING = 1e-9;

    public MonitorAmps {
        Require.inRange("shunt", shuntOhms, 1e-6, 10, "ohm");
        if (wantedStep.isPresent()) {
            Require.inRange("step of the current register", wantedStep.getAsDouble(), 1e-9, 1, "A");
            double register = register(wantedStep.getAsDouble(), shuntOhms);
            if (register < 1 || register > HIGHEST) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "the calibration register would be %.0f for steps of %s A over %s ohm, allowed are 1 to %d",
                        register,
                        wantedStep.getAsDouble(),
                        shuntOhms,
                        HIGHEST));
            }
        }
    }

    /** What the chip's calibration register must hold; 0 when its current register is not used. */
    public int calibrationRegister() {
        return wantedStep.isPresent() ? (int) register(wantedStep.getAsDouble(), shuntOhms) : 0;
    }

    private static double register(double step, double shuntOhms) {
        return Math.floor(SCALING / (step * shuntOhms) * (1 + ROUNDING));
    }

    /** Amperes a code. */
    public double ampsPerCode() {
        return wantedStep.isPresent() ? SCALING / (calibrationRegister() * shuntOhms) : ampsPerShuntCode();
    }

    private double ampsPerShuntCode() {
        return SHUNT_VOLTS_PER_CODE / shuntOhms;
    }

    @Override
    public String kind() {
        return "shunt monitor";
    }

    @Override
    public double si(double code) {
        return code * ampsPerCode();
    }

    @Override
    public double code(double si) {
        return si / ampsPerCode();
    }

    @Override
    public double siPerCode(double code) {
        return ampsPerCode();
    }

    /** The current register is made of the shunt-voltage register, so that the steps of both count. */
    @Override
    public double standardUncertainty(double si) {
        double step = wantedStep.isPresent() ? Math.hypot(ampsPerCode(), ampsPerShuntCode()) : ampsPerShuntCode();
        return parts.combined(parts.gainShare() * si, step);
    }

    /** Up to one code before the end, where the shunt-voltage register or the register read stays when beyond it. */
    @Override
    public CodeRange sound() {
        double atShuntsEnd = wantedStep.isPresent()
                ? Math.floor(HIGHEST * (calibrationRegister() / SHUNT_CODES_PER_CURRENT_CODE_TIMES_REGISTER))
                : HIGHEST;
        double most = Math.min(HIGHEST, atShuntsEnd) - 1;
        return new CodeRange(-most, most);
    }

    @Override
    public String lowWords() {
        return "the reverse current is at the end of the monitor's range, or the shunt is open";
    }

    @Override
    public String highWords() {
        return "the current is at the end of the monitor's range, or the shunt is open";
    }
}
