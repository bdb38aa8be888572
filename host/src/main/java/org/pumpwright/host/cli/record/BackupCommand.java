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

/** Copies everything on record to a folder or stick. */
@Command(
        name = "backup",
        description = {
            "Copies everything on record into one file in a folder, on a stick for example, and checks",
            "the copy. FILE.sha256 beside it is checked with: sha256sum -c FILE.sha256"
        },
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "Where the backup goes.")
    private Path folder = Path.of("");

    @Mixin
    private StoreOptions store = new StoreOptions();

    BackupCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        try (RecordBook book = store.book(workshop)) {
            Backups.Copied copied = Backups.write(book, folder, workshop.clock());
            spec.commandLine()
                    .getOut()
                    .println("%d entries and %d things beside them in %s, checked.%nSHA-256 %s"
                            .formatted(copied.entries(), copied.attachments(), copied.file(), copied.sha256()));
            return ExitCode.PASS;
        }
    }
}
