package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that needs the desk open. */
abstract class DeskCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private StoreOptions options = new StoreOptions();

    DeskCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        try (OpenDesk desk = OpenDesk.of(workshop, options)) {
            PrintWriter out = spec.commandLine().getOut();
            carryOut(desk, out);
            out.flush();
            return ExitCode.PASS;
        }
    }

    /** Does the command's work. */
    abstract void carryOut(OpenDesk desk, PrintWriter out) throws Exception;
}
