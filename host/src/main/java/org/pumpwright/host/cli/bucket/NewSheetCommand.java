package org.pumpwright.host.cli.bucket;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an empty sheet to fill in. */
@Command(
        name = "new-sheet",
        description = "Writes an empty sheet: everything (.yaml), or the runs only (.csv).",
        mixinStandardHelpOptions = true)
final class NewSheetCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Name of the new file, ending in .yaml or .csv.")
    private Path file = Path.of("");

    NewSheetCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws OrderException {
        String name = file.toString();
        String ending = name.endsWith(".csv") ? ".csv" : ".yaml";
        if (!name.endsWith(ending)) {
            throw new OrderException("%s: a sheet ends in .yaml or .csv".formatted(name));
        }
        try {
            Files.copy(workshop.home().resolve("fixtures/buckets/new-sheet" + ending), file);
        } catch (FileAlreadyExistsException e) {
            throw new OrderException("%s is already there: nothing was written, choose another name".formatted(name));
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s".formatted(name, e.getMessage()));
        }
        spec.commandLine().getOut().println("Written: " + file + ". Fill it in, then:");
        spec.commandLine()
                .getOut()
                .println("pumpwright bucket --typed " + file
                        + (ending.equals(".csv") ? " --bench FILE (such as fixtures/buckets/bench-example.yaml)" : ""));
        return ExitCode.PASS;
    }
}
