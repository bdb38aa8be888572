package org.pumpwright.host.cli.record;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Checks that nothing on record was changed or taken away. */
@Command(
        name = "audit",
        description = {
            "Checks everything on record: nothing changed, removed, put in between or dated back.",
            "That the newest entries were cut off shows only by comparing with ends that were",
            "written down elsewhere: --write-heads now and then, --heads to compare."
        },
        mixinStandardHelpOptions = true)
final class AuditCommand implements Callable<Integer> {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private StoreOptions store = new StoreOptions();

    @Option(
            names = "--heads",
            paramLabel = "FILE",
            description = "Ends that were written down earlier, to compare with.")
    private @Nullable Path heads;

    @Option(
            names = "--write-heads",
            paramLabel = "FILE",
            description = "New file to write the ends into, to be kept where nobody at the stand can change it.")
    private @Nullable Path writeHeads;

    @Option(names = "--every-signature", description = "Checks each signature by itself; takes longer, finds no more.")
    private boolean every;

    @Option(names = "--json", description = "Prints the finding as one JSON object, and nothing else.")
    private boolean json;

    AuditCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = store.book(workshop)) {
            Audit.Result result = Audit.of(
                    book.reading(),
                    keyring(book),
                    heads(),
                    every ? Audit.Depth.EVERY_SIGNATURE : Audit.Depth.PROVING_SIGNATURES);
            if (json) {
                out.println(json(result));
            } else {
                tell(result, out);
            }
            if (writeHeads != null) {
                write(Heads.of(book.reading()), writeHeads, out);
            }
            return result.clean() ? ExitCode.PASS : ExitCode.FAIL;
        }
    }

    private static Keyring keyring(RecordBook book) throws OrderException {
        try {
            return Keyring.ofFolder(book.choice().keys());
        } catch (IOException e) {
            throw new OrderException(
                    "the keys can't be read: %s. Take the broken file out of the folder.".formatted(e.getMessage()));
        }
    }

    private Heads heads() throws OrderException {
        try {
            return heads == null ? Heads.NONE : Heads.read(heads);
        } catch (IOException e) {
            throw new OrderException("the ends in %s can't be read: %s. Give a file that --write-heads has written."
                    .formatted(heads, e.getMessage()));
        }
    }

    private void write(Heads now, Path file, PrintWriter out) throws OrderException {
        if (Files.exists(file)) {
            throw new OrderException("%s is already there and stays as it is. Choose another name.".formatted(file));
        }
        try {
            Files.writeString(file, now.text(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Choose another folder.".formatted(file, e.getMessage()));
        }
        if (!json) {
            out.println("The ends of the chains are written into %s.".formatted(file));
        }
    }

    private static void tell(Audit.Result result, PrintWriter out) {
        for (Audit.Trouble trouble : result.troubles()) {
            out.println("TROUBLE  %s entry %d  %s: %s"
                    .formatted(trouble.chain(), trouble.number(), trouble.id(), trouble.says()));
        }
        for (Audit.Trouble notice : result.notices()) {
            out.println("Note     %s entry %d  %s: %s"
                    .formatted(notice.chain(), notice.number(), notice.id(), notice.says()));
        }
        out.println(
                "%d entries and %d things beside them checked: %s"
                        .formatted(
                                result.entries(),
                                result.attachments(),
                                result.clean()
                                        ? "all as they were signed."
                                        : "NOT all as they were signed. Keep the store as it is, and take a backup to compare."));
    }

    private static ObjectNode json(Audit.Result result) {
        ObjectNode node = JSON.createObjectNode()
                .put("clean", result.clean())
                .put("entries", result.entries())
                .put("attachments", result.attachments());
        for (Audit.Trouble trouble : result.troubles()) {
            node.withArray("troubles").add(json(trouble));
        }
        for (Audit.Trouble notice : result.notices()) {
            node.withArray("notices").add(json(notice));
        }
        return node;
    }

    private static ObjectNode json(Audit.Trouble trouble) {
        return JSON.createObjectNode()
                .put("chain", trouble.chain())
                .put("number", trouble.number())
                .put("id", trouble.id())
                .put("says", trouble.says());
    }
}
