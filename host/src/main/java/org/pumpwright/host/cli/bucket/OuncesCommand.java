package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.calibrate.field.OunceMethod;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.TypedNumber;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Planter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The 1/128-acre method. */
@Command(
        name = "ounces",
        description = {
            "The 1/128-acre method: how far to drive, for how long, and the rate.",
            "The ounces caught at one row over that time are the gallons an acre.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {"", "Example: pumpwright bucket ounces --spacing 30 --speed 5 --ounces 5"})
final class OuncesCommand implements Callable<Integer> {
    private static final double METRES_PER_FOOT = 0.3048;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--spacing", required = true, paramLabel = "IN", description = "From row to row, inches.")
    private String spacing = "";

    @Option(names = "--speed", paramLabel = "MPH", description = "Speed, mph: prints the time for the course.")
    private @Nullable String speed;

    @Option(names = "--ounces", paramLabel = "OZ", description = "What one row gave, US fluid ounces.")
    private @Nullable String ounces;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "How long was caught; the time of the course if not given. Needs --speed.")
    private @Nullable String seconds;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        double metres = number("--spacing", spacing) * Planter.METRES_PER_INCH;
        out.printf(
                Locale.ROOT,
                "Course         %.1f ft (%.1f m) is 1/128 acre under one row%n",
                OunceMethod.courseM(metres) / METRES_PER_FOOT,
                OunceMethod.courseM(metres));
        double course = Double.NaN;
        if (speed != null) {
            course = OunceMethod.seconds(
                    metres, GroundSpeed.ofMilesPerHour(number("--speed", speed)).metresPerSecond());
            out.printf(Locale.ROOT, "Time           %.1f s for it%n", course);
        }
        if (ounces != null) {
            rate(out, number("--ounces", ounces), course);
        }
        return ExitCode.PASS;
    }

    private void rate(PrintWriter out, double caught, double course) {
        if (seconds == null) {
            out.printf(Locale.ROOT, "Rate           %.2f gal/acre%n", OunceMethod.gallonsPerAcre(caught));
            return;
        }
        double over = number("--seconds", seconds);
        if (Double.isNaN(course)) {
            throw new ParameterException(
                    spec.commandLine(), "--seconds needs --speed: without it the time of the course is not known");
        }
        out.printf(Locale.ROOT, "Rate           %.2f gal/acre%n", OunceMethod.gallonsPerAcre(caught, over, course));
        out.printf(
                Locale.ROOT, "Flow           %.3f gal/min at that row%n", OunceMethod.gallonsPerMinute(caught, over));
    }

    private double number(String option, String text) {
        return TypedNumber.of(spec, option, text);
    }
}
