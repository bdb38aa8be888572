package org.pumpwright.host.cli.record;

import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What is on record. */
@Command(
        name = "record",
        description = {
            "What is on record: every run, bucket test, curve and stand, signed and chained,",
            "so that it shows when something is changed or taken away afterwards.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Exit codes: 0 done, 1 the check found something, 2 wrong use, 3 trouble with the",
            "store or the disk. docs/user/records.md says more."
        })
public final class RecordCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** The command with its verbs. */
    public static CommandLine tree(Workshop workshop) {
        return new CommandLine(new RecordCommand())
                .addSubcommand(new FindCommand(workshop))
                .addSubcommand(new ShowCommand(workshop))
                .addSubcommand(new PapersCommand(workshop))
                .addSubcommand(new ExportCommand(workshop))
                .addSubcommand(new ImportCommand(workshop))
                .addSubcommand(new AuditCommand(workshop))
                .addSubcommand(new BackupCommand(workshop))
                .addSubcommand(new RestoreCommand(workshop))
                .addSubcommand(new AmendCommand(workshop))
                .addSubcommand(new EnterCommand(workshop))
                .addSubcommand(KeyCommand.tree(workshop));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
