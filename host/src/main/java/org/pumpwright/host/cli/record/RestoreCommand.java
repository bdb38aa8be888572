package org.pumpwright.host.cli.record;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.record.Backups;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a backup into an empty store. */
@Command(
        name = "restore",
        description = {
            "Puts a backup into a store that holds nothing yet, and checks everything: first that the file",
            "is the one that was written, then every entry."
        },
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The backup.")
    private Path file = Path.of("");

    @Mixin
    private StoreOptions store = new StoreOptions();

    RestoreCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        try (RecordBook book = store.book(workshop)) {
            Backups.Copied copied = Backups.restore(book, file);
            spec.commandLine()
                    .getOut()
                    .println("%d entries and %d things beside them from %s, checked.%nSHA-256 %s"
                            .formatted(copied.entries(), copied.attachments(), copied.file(), copied.sha256()));
            return ExitCode.PASS;
        }
    }
}
