package org.pumpwright.host.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Groups what can be done with a stand itself. */
@Command(name = "stand", description = "Finds, shows and checks the stand itself.", mixinStandardHelpOptions = true)
final class StandCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
