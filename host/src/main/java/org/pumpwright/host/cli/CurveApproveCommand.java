package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.CurveWorkshop;
import org.pumpwright.host.curve.HealthyCurve;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a curve be used for verdicts, in the name of a person. */
@Command(
        name = "approve",
        description = "Lets a curve be used for verdicts. The author can't approve the own curve.",
        mixinStandardHelpOptions = true)
final class CurveApproveCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The curve's file.")
    private Path file = Path.of("");

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who approves.")
    private String by = "";

    @Option(names = "--json", description = "Prints the curve as one line of JSON, and nothing else.")
    private boolean json;

    @Mixin
    private StoreOptions store = new StoreOptions();

    CurveApproveCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        HealthyCurve curve = new CurveWorkshop(workshop.clock()).approve(file, by);
        PrintWriter out = spec.commandLine().getOut();
        RecordLines lines = new RecordLines(out, json);
        if (json) {
            out.println(CurveJson.of("approved", curve, List.of(), Optional.of(file.toString())));
            lines.entered(store.curve(workshop, curve, "approved", file));
            return ExitCode.PASS;
        }
        out.println("%s is approved by %s on %s%s."
                .formatted(
                        curve.label(),
                        by,
                        curve.approval().orElseThrow().on(),
                        curve.provisional() ? "; with so few units it still only advises" : ""));
        lines.entered(store.curve(workshop, curve, "approved", file));
        return ExitCode.PASS;
    }
}
