package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.record.Importing;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.RecordLines;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes in what others have exported, and old records. */
@Command(
        name = "import",
        description = {
            "Takes in what another stand has exported with --json-lines, and records of runs and",
            "bucket tests from before, in files or folders. What is on record stays as it is: the",
            "same file twice changes nothing. A file that was changed is refused as a whole."
        },
        mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files of entries, records, or folders of records.")
    private List<Path> files = List.of();

    @Mixin
    private StoreOptions store = new StoreOptions();

    ImportCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = store.book(workshop)) {
            new RecordLines(out, false).entered(book.workOff(List.of()));
            Importing importing = new Importing(book);
            for (Path file : files) {
                Importing.Taken taken = importing.take(file);
                out.println("%s: %d found, %d new, %d were on record already."
                        .formatted(file, taken.found(), taken.fresh(), taken.found() - taken.fresh()));
                for (String key : taken.unknownKeys()) {
                    out.println("! signed by '%s', whose key is not trusted here. If it is the stand you think, put its"
                            .formatted(key));
                    out.println("  file %s.pub into %s; until then an audit says so."
                            .formatted(key, book.choice().keys()));
                }
            }
            return ExitCode.PASS;
        }
    }
}
