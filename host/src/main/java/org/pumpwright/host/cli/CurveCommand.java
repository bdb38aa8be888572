package org.pumpwright.host.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Groups what can be done with healthy curves. */
@Command(
        name = "curve",
        description = "Makes healthy curves from known-good units, has them approved and shows them.",
        mixinStandardHelpOptions = true)
final class CurveCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** The verb with all that belongs to it. */
    static CommandLine tree(Workshop workshop) {
        return new CommandLine(new CurveCommand())
                .addSubcommand(new CurveBuildCommand(workshop))
                .addSubcommand(new CurveApproveCommand(workshop))
                .addSubcommand(new CurveShowCommand());
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
