package org.pumpwright.host.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a healthy curve in the terminal, and draws it to a file. */
@Command(
        name = "show",
        description = "Shows a healthy curve, its band and what it was built from.",
        mixinStandardHelpOptions = true)
final class CurveShowCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The curve's file.")
    private Path file = Path.of("");

    @Option(names = "--svg", paramLabel = "FILE", description = "Draws it to this file too, as a picture.")
    private @Nullable Path svg;

    @Option(names = "--units", paramLabel = "us|metric", description = "us if not given.", defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--json", description = "Prints the curve as one line of JSON, and nothing else.")
    private boolean json;

    @Override
    public Integer call() throws Exception {
        HealthyCurve curve = CurveFile.read(file);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(CurveJson.of("curve", curve, List.of(), Optional.empty()));
            drawIfAsked(curve);
            return ExitCode.PASS;
        }
        for (CurveSeries series : CurveSeries.of(curve, units)) {
            out.print(CurveTextPlot.of(series));
        }
        out.print(CurvePage.of(curve, units));
        if (drawIfAsked(curve)) {
            out.println("Drawn to " + svg);
        }
        return ExitCode.PASS;
    }

    private boolean drawIfAsked(HealthyCurve curve) throws OrderException {
        if (svg == null) {
            return false;
        }
        draw(curve, svg);
        return true;
    }

    private void draw(HealthyCurve curve, Path picture) throws OrderException {
        try {
            Files.writeString(picture, CurveSvg.of(curve, units), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Check the folder and its rights.".formatted(picture, e));
        }
    }
}
