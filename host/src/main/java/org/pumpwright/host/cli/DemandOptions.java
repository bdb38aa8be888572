package org.pumpwright.host.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.demand.ApplicationRate;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.quantity.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The planter in its work, in the units of the shop. */
final class DemandOptions {
    private static final double METRES_PER_CENTIMETRE = 0.01;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--rows", required = true, paramLabel = "N", description = "Rows (outlets) that are fed.")
    private int rows;

    @Option(
            names = "--spacing",
            required = true,
            paramLabel = "X",
            description = "Distance from row to row: inches; centimetres with --units metric.")
    private String spacing = "";

    @Option(
            names = "--rate",
            required = true,
            paramLabel = "X",
            description = "Rate: US gallons an acre; litres a hectare with --units metric.")
    private String rate = "";

    @Option(names = "--speed", required = true, paramLabel = "X", description = "Speed: mph; km/h with --units metric.")
    private String speed = "";

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of what is typed and printed; us if not given.",
            defaultValue = "US")
    UnitSystem units = UnitSystem.US;

    @Option(
            names = "--k",
            paramLabel = "K",
            description =
                    "K-factor of the planter's meter, pulses per US gallon: prints the pulses per second it gives.")
    private @Nullable String pulsesPerUsGallon;

    @Option(
            names = "--meter-rows",
            paramLabel = "N",
            description = "How many of the rows that meter feeds; all if not given.")
    private @Nullable Integer meterRows;

    Planter planter() {
        try {
            return units == UnitSystem.US
                    ? new Planter(
                            rows,
                            number("--spacing", spacing) * Planter.METRES_PER_INCH,
                            ApplicationRate.ofGallonsPerAcre(number("--rate", rate)),
                            GroundSpeed.ofMilesPerHour(number("--speed", speed)))
                    : new Planter(
                            rows,
                            number("--spacing", spacing) * METRES_PER_CENTIMETRE,
                            ApplicationRate.ofLitresPerHectare(number("--rate", rate)),
                            GroundSpeed.ofKilometresPerHour(number("--speed", speed)));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
    }

    Optional<Double> pulsesPerUsGallon() {
        return Optional.ofNullable(pulsesPerUsGallon).map(text -> number("--k", text));
    }

    int meterRows() {
        int fed = meterRows == null ? rows : meterRows;
        if (fed < 1 || fed > rows) {
            throw new ParameterException(
                    spec.commandLine(), "--meter-rows is %d, allowed are 1 to %d (--rows)".formatted(fed, rows));
        }
        return fed;
    }

    private double number(String option, String text) {
        return TypedNumber.of(spec, option, text);
    }
}
