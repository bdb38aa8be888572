package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.calibrate.DiverterTrial;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.TypedNumber;
import org.pumpwright.host.quantity.Uncertain;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Timing of a diverter from long and short runs. */
@Command(
        name = "diverter",
        description = {
            "The timing of a diverter, from long and short runs at one flow.",
            "How much longer its switch counts than the bucket catches. Adjust the switch",
            "until the excess is no more than its uncertainty; write what is left into the",
            "sheet.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Example: pumpwright bucket diverter --long 3010,3012,3011 --long-seconds 120",
            "                                    --short 3024,3026,3022 --short-seconds 20"
        })
final class DiverterCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--long",
            required = true,
            split = ",",
            paramLabel = "K",
            description = "K of the long runs, pulses over volume, at least 3, commas between.")
    private List<String> longRuns = List.of();

    @Option(names = "--long-seconds", required = true, paramLabel = "S", description = "Their mean length.")
    private String longSeconds = "";

    @Option(
            names = "--short",
            required = true,
            split = ",",
            paramLabel = "K",
            description = "K of the short runs at the same flow, at least 3.")
    private List<String> shortRuns = List.of();

    @Option(
            names = "--short-seconds",
            required = true,
            paramLabel = "S",
            description = "Their mean length, less than half of the long ones.")
    private String shortSeconds = "";

    @Override
    public Integer call() throws OrderException {
        PrintWriter out = spec.commandLine().getOut();
        Uncertain excess = excess();
        double u = excess.standardUncertainty();
        out.printf(
                Locale.ROOT,
                "Counted longer than caught by %+.3f s, standard uncertainty %.3f s.%n",
                excess.value(),
                u);
        out.println(
                Math.abs(excess.value()) <= u
                        ? "No more than its uncertainty: the diverter is set well."
                        : "More than its uncertainty: adjust the switch and try again, or have the count corrected for it.");
        out.println("For the sheet, uncorrected:");
        out.printf(
                Locale.ROOT,
                "  timing: { excess_seconds: 0, switch_half_width_seconds: %.3f }%n",
                DiverterTrial.switchHalfWidthSeconds(excess));
        return ExitCode.PASS;
    }

    private Uncertain excess() throws OrderException {
        try {
            return DiverterTrial.excessSeconds(
                    numbers("--long", longRuns),
                    TypedNumber.of(spec, "--long-seconds", longSeconds),
                    numbers("--short", shortRuns),
                    TypedNumber.of(spec, "--short-seconds", shortSeconds));
        } catch (IllegalArgumentException e) {
            throw new OrderException(e.getMessage() + ".");
        }
    }

    private double[] numbers(String option, List<String> texts) {
        return texts.stream()
                .mapToDouble(text -> TypedNumber.of(spec, option, text.strip()))
                .toArray();
    }
}
