package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.RecordLines;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Puts on record what waits for it. */
@Command(
        name = "enter",
        description = {
            "Puts on record what is safe in the folder and is not on record yet, because the store",
            "was away or full. The next test does the same by itself."
        },
        mixinStandardHelpOptions = true)
final class EnterCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private StoreOptions store = new StoreOptions();

    EnterCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = store.book(workshop)) {
            RecordBook.Entered entered = book.workOff(List.of());
            entered.ids().forEach(id -> out.println("On record      " + id));
            new RecordLines(out, false).entered(entered);
            if (entered.ids().isEmpty() && entered.waiting() == 0) {
                out.println("Nothing waits: everything that was kept is on record.");
            }
            return entered.waiting() == 0 ? ExitCode.PASS : ExitCode.STAND;
        }
    }
}
