package org.pumpwright.host.cli.claim;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.ClaimData;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an empty intake sheet. */
@Command(name = "new-sheet", description = "Writes an empty intake sheet to fill in.", mixinStandardHelpOptions = true)
final class NewSheetCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Name of the new file, ending in .yaml.")
    private Path file = Path.of("");

    NewSheetCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws OrderException {
        if (!file.toString().endsWith(".yaml")) {
            throw new OrderException("%s: a sheet ends in .yaml".formatted(file));
        }
        try {
            Files.copy(new ClaimData(workshop.home().resolve("fixtures")).newSheet(), file);
        } catch (FileAlreadyExistsException e) {
            throw new OrderException("%s is already there: nothing was written, choose another name".formatted(file));
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s".formatted(file, e.getMessage()));
        }
        spec.commandLine().getOut().println("Written: " + file + ". Fill it in, then:");
        spec.commandLine().getOut().println("pumpwright claim open --sheet " + file);
        return ExitCode.PASS;
    }
}
