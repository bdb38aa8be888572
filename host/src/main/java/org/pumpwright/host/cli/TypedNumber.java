package org.pumpwright.host.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A number as a person types it, above 0. A decimal comma is told, never guessed: 1,5 could be 1.5 or 15. Thread-safe. */
public final class TypedNumber {
    private TypedNumber() {}

    /**
     * The number.
     *
     * @param option as it is called, for the message
     * @throws ParameterException when it is none above 0
     */
    public static double of(CommandSpec spec, String option, String text) {
        if (text.contains(",")) {
            throw new ParameterException(
                    spec.commandLine(),
                    "%s is '%s': write decimals with a point and no thousands sign, as in %s"
                            .formatted(option, text, text.replace(',', '.')));
        }
        try {
            double value = Double.parseDouble(text);
            if (value > 0 && value < Double.POSITIVE_INFINITY) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new ParameterException(spec.commandLine(), "%s is '%s', a number is needed".formatted(option, text));
        }
        throw new ParameterException(
                spec.commandLine(), "%s is '%s', it must be a number above 0".formatted(option, text));
    }
}
