package org.pumpwright.host.cli.record;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.CheckingKey;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The keys. */
@Command(name = "key", description = "The keys with which entries are signed.", mixinStandardHelpOptions = true)
final class KeyCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    static CommandLine tree(Workshop workshop) {
        return new CommandLine(new KeyCommand()).addSubcommand(new Show(workshop));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** Shows the open halves. */
    @Command(
            name = "show",
            description = {
                "Shows the open keys and their fingerprints. An open key is to be given away: whoever",
                "has it can check what was signed, and sign nothing. The secret half, NAME.key, never",
                "leaves the folder but for a backup under lock."
            },
            mixinStandardHelpOptions = true)
    static final class Show implements Callable<Integer> {
        private final Workshop workshop;

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Mixin
        private StoreOptions store = new StoreOptions();

        @Option(names = "--name", paramLabel = "NAME", description = "Only this key, as its file is to be sent.")
        private @Nullable String name;

        Show(Workshop workshop) {
            this.workshop = workshop;
        }

        @Override
        public Integer call() throws Exception {
            PrintWriter out = spec.commandLine().getOut();
            try (RecordBook book = store.book(workshop)) {
                StoreChoice choice = book.choice();
                Map<String, CheckingKey> keys = choice.named();
                if (name != null) {
                    if (!keys.containsKey(name)) {
                        throw new OrderException("there is no key '%s' in %s. Known are: %s."
                                .formatted(name, choice.keys(), String.join(", ", keys.keySet())));
                    }
                    out.print(Files.readString(choice.keys().resolve(name + ".pub")));
                    out.flush();
                    return ExitCode.PASS;
                }
                out.println("Keys in %s:".formatted(choice.keys()));
                for (Map.Entry<String, CheckingKey> key : keys.entrySet()) {
                    boolean own = Files.exists(choice.keys().resolve(key.getKey() + ".key"));
                    out.println("%-16s SHA-256 %s%s"
                            .formatted(key.getKey(), key.getValue().digest().hex(), own ? "" : "  (another's)"));
                }
                if (keys.isEmpty()) {
                    out.println("none yet; a stand's key is made with its first entry.");
                }
                return ExitCode.PASS;
            }
        }
    }
}
