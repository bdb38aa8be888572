package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.Entry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks for entries. */
@Command(
        name = "find",
        description = {
            "Looks for what is on record, the newest first. Everything that is given must hold;",
            "large and small letters are the same."
        },
        mixinStandardHelpOptions = true)
final class FindCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private SearchOptions wanted = new SearchOptions();

    @Mixin
    private StoreOptions store = new StoreOptions();

    @Option(names = "--json", description = "Prints each entry as JSON, one object a line, and nothing else.")
    private boolean json;

    FindCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = store.book(workshop)) {
            List<Entry> found = book.reading().search(wanted.search());
            if (json) {
                found.forEach(entry -> out.println(EntryTable.json(entry)));
            } else if (found.isEmpty()) {
                out.println("Nothing on record fits.");
            } else {
                EntryTable.print(found, out);
                if (found.size() == wanted.most()) {
                    out.println("There may be more: these are the newest %d. --most N shows more."
                            .formatted(wanted.most()));
                }
            }
            return ExitCode.PASS;
        }
    }
}
