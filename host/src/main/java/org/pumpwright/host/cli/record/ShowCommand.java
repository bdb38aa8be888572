package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.Entry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows one entry. */
@Command(
        name = "show",
        description =
                "Shows an entry: what it says, what corrects it, what is kept beside it, and whether it is as it was signed.",
        mixinStandardHelpOptions = true)
final class ShowCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ID", description = "The entry's id, or the end of it behind the stand's name.")
    private String id = "";

    @Mixin
    private StoreOptions store = new StoreOptions();

    @Option(names = "--all", description = "Shows everything that the entry says, however deep.")
    private boolean all;

    @Option(
            names = "--json",
            description = "Prints what the entry says as it was hashed: canonical JSON (RFC 8785), not a byte more.")
    private boolean json;

    ShowCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = store.book(workshop)) {
            OnRecord found = OnRecord.of(book, id);
            if (json) {
                out.print(found.entry().content());
                out.flush();
            } else {
                page(found, out);
            }
            return found.seal() == OnRecord.Seal.BROKEN ? ExitCode.FAIL : ExitCode.PASS;
        }
    }

    private void page(OnRecord found, PrintWriter out) {
        Entry entry = found.entry();
        out.println("Entry          %s".formatted(entry.id()));
        out.println("Kind           %s, entry %d of chain %s"
                .formatted(entry.kind().word(), entry.number(), entry.chain()));
        out.println("When           %s".formatted(entry.at()));
        entry.amends()
                .ifPresent(amends ->
                        out.println("Amends         %s, because: %s".formatted(amends.id(), amends.reason())));
        entry.finder().claim().ifPresent(claim -> out.println("Claim          " + claim));
        entry.finder().customer().ifPresent(customer -> out.println("Customer       " + customer));
        out.println("Signature      " + words(found));
        out.println("SHA-256        " + entry.digest().hex());
        for (int i = 0; i < found.attachments().size(); i++) {
            Optional<byte[]> bytes = found.attachments().get(i);
            out.println("Beside it      %s, %s"
                    .formatted(
                            entry.attachments().get(i).hex(),
                            bytes.map(there -> there.length + " bytes").orElse("MISSING")));
        }
        out.println();
        ContentPage.print(entry.content(), all, out);
        amendments(found, out);
    }

    private void amendments(OnRecord found, PrintWriter out) {
        for (Entry amendment : found.amendments()) {
            out.println();
            out.println("AMENDED by %s on %s, because: %s"
                    .formatted(
                            amendment.id(),
                            amendment.at().toLocalDate(),
                            amendment.amends().orElseThrow().reason()));
            ContentPage.print(amendment.content(), true, out);
        }
        if (!found.amendments().isEmpty()) {
            out.println();
            out.println("Above stands the entry as it was first written; the amendments stand below it.");
        }
    }

    private static String words(OnRecord found) {
        String key = found.entry().seal().key().hex().substring(0, 16);
        return switch (found.seal()) {
            case HOLDS -> "holds (key %s...)".formatted(key);
            case UNKNOWN_KEY ->
                "of a key that is not trusted here (%s...); put its .pub file into the keys folder to check it"
                        .formatted(key);
            case BROKEN -> "DOES NOT HOLD: the entry was changed after it was signed (key %s...)".formatted(key);
        };
    }
}
