package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.CurveWorkshop;
import org.pumpwright.host.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a healthy curve from stored records of known-good units. */
@Command(
        name = "build",
        description = {
            "Makes a healthy curve from stored records of units that a person has declared good.",
            "Each unit at least once, better twice on different days; units are told apart by serial."
        },
        mixinStandardHelpOptions = true)
final class CurveBuildCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "1..*", paramLabel = "RECORDS", description = "Record files, or folders that hold them.")
    private List<Path> records = List.of();

    @Option(names = "--model", required = true, paramLabel = "NAME", description = "The units' model.")
    private String model = "";

    @Option(
            names = "--known-good",
            required = true,
            paramLabel = "FILE",
            description = "Which units are good, and who says so.")
    private Path knownGood = Path.of("");

    @Option(names = "--author", required = true, paramLabel = "NAME", description = "Who makes the curve.")
    private String author = "";

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "New file of the curve.")
    private Path out = Path.of("");

    @Option(names = "--replaces", paramLabel = "FILE", description = "The version before this one.")
    private @Nullable Path replaces;

    @Option(names = "--id", paramLabel = "NAME", description = "Short name; the model's if not given.")
    private @Nullable String id;

    @Option(names = "--title", paramLabel = "TEXT", description = "For people; the model's if not given.")
    private @Nullable String title;

    @Option(
            names = "--points",
            paramLabel = "N",
            description = "Points of the curve, 2 to 200; ${DEFAULT-VALUE} if not given.",
            defaultValue = "9")
    private int points;

    @Option(
            names = "--freewheel-volts",
            paramLabel = "V",
            description = "Drop of the driver's freewheel diode; ${DEFAULT-VALUE} if not given.",
            defaultValue = "0.5")
    private double freewheelVolts;

    @Option(names = "--json", description = "Prints the curve as one line of JSON, and nothing else.")
    private boolean json;

    @Mixin
    private StoreOptions store = new StoreOptions();

    CurveBuildCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        CurveWorkshop.Built built = new CurveWorkshop(workshop.clock())
                .build(new CurveWorkshop.Order(
                        records,
                        knownGood,
                        model,
                        author,
                        out,
                        Optional.ofNullable(replaces),
                        Optional.ofNullable(id),
                        Optional.ofNullable(title),
                        points,
                        freewheelVolts));
        PrintWriter print = spec.commandLine().getOut();
        RecordLines lines = new RecordLines(print, json);
        if (json) {
            print.println(CurveJson.of("built", built.curve(), built.notes(), Optional.of(out.toString())));
            lines.entered(store.curve(workshop, built.curve(), "built", out));
            return ExitCode.PASS;
        }
        print.print(CurvePage.of(built.curve(), UnitSystem.US));
        built.notes().forEach(note -> print.println(WrappedText.of("! " + note, 2)));
        print.println("Written to " + out);
        lines.entered(store.curve(workshop, built.curve(), "built", out));
        return ExitCode.PASS;
    }
}
