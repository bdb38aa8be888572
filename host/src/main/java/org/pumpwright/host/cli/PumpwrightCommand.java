package org.pumpwright.host.cli;

import org.pumpwright.host.app.Version;
import org.pumpwright.host.cli.bucket.BucketCommand;
import org.pumpwright.host.cli.claim.ClaimCommand;
import org.pumpwright.host.cli.record.RecordCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line's root: without a verb it prints its help. */
@Command(
        name = "pumpwright",
        description = {
            "Drives a shop test stand: measures a returned pump, grades it against a healthy one and prints the papers.",
            ""
        },
        mixinStandardHelpOptions = true,
        versionProvider = PumpwrightCommand.Versions.class,
        footer = {
            "",
            "Exit codes: 0 pass, 1 fail, 2 wrong use or data file, 3 trouble with the stand",
            "(then nothing is said of the unit), 4 inconclusive.",
            "",
            "This program is not a safety device. The stand's emergency stop must work",
            "without it."
        })
final class PumpwrightCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** The whole command line, with its verbs. */
    static CommandLine tree(Workshop workshop) {
        CommandLine stand = new CommandLine(new StandCommand())
                .addSubcommand(new StandFindCommand(workshop))
                .addSubcommand(new StandShowCommand(workshop))
                .addSubcommand(new StandCheckCommand(workshop))
                .addSubcommand(new StandDriveCommand(workshop))
                .addSubcommand(new StandConformCommand(workshop));
        return new CommandLine(new PumpwrightCommand())
                .addSubcommand(new AcceptCommand(workshop))
                .addSubcommand(BucketCommand.tree(workshop))
                .addSubcommand(new DemandCommand(workshop))
                .addSubcommand(new PracticeCommand(workshop))
                .addSubcommand(new BenchCommand(workshop))
                .addSubcommand(new GradeCommand(workshop))
                .addSubcommand(CurveCommand.tree(workshop))
                .addSubcommand(ClaimCommand.tree(workshop))
                .addSubcommand(RecordCommand.tree(workshop))
                .addSubcommand(stand);
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The version as records name it. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Version.text()};
        }
    }
}
