package org.pumpwright.host.cli.claim;

import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Groups what is done at the warranty desk. */
@Command(
        name = "claim",
        description = {
            "The warranty desk: a unit comes in, is tested, found on and decided, and every",
            "step stays on record. The stand measures; the desk decides: never the same person.",
            "",
            "  1  pumpwright claim new-sheet my-claim.yaml       an empty intake sheet",
            "  2  pumpwright claim open --sheet my-claim.yaml    the unit is in",
            "  3  pumpwright claim note N --rinsed-by NAME --rinses 2",
            "  4  pumpwright accept --claim N ...                tested",
            "  5  pumpwright claim finding N ...                 the technician signs",
            "  6  pumpwright claim decide N ...                  somebody else decides",
            "  7  pumpwright claim packet N --out N.zip          everything, to be checked",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {"", "Exit codes: 0 done, 2 refused or wrong use, 3 the records can't be reached."})
public final class ClaimCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** The verb with all that belongs to it. */
    public static CommandLine tree(Workshop workshop) {
        return new CommandLine(new ClaimCommand())
                .addSubcommand(new NewSheetCommand(workshop))
                .addSubcommand(new OpenCommand(workshop))
                .addSubcommand(new ShowCommand(workshop))
                .addSubcommand(new ListCommand(workshop))
                .addSubcommand(new MoveCommand(workshop))
                .addSubcommand(new PhotoCommand(workshop))
                .addSubcommand(new NoteCommand(workshop))
                .addSubcommand(new FindingCommand(workshop))
                .addSubcommand(new DecideCommand(workshop))
                .addSubcommand(new PacketCommand(workshop))
                .addSubcommand(StatisticsCommand.of(workshop));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
