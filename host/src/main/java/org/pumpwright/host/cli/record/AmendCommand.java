package org.pumpwright.host.cli.record;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.record.Amending;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.RecordLines;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.Entry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Corrects an entry by another one. */
@Command(
        name = "amend",
        description = {
            "Corrects what is on record: a new entry says what is right, who says so and why.",
            "The first entry stays as it is, and both are shown."
        },
        mixinStandardHelpOptions = true)
final class AmendCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ID", description = "The entry's id, or the end of it behind the stand's name.")
    private String id = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who corrects.")
    private String by = "";

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
    private String reason = "";

    @Option(names = "--serial", paramLabel = "TEXT", description = "The right serial number.")
    private @Nullable String serial;

    @Option(names = "--technician", paramLabel = "NAME", description = "The right technician.")
    private @Nullable String technician;

    @Option(names = "--claim", paramLabel = "NUMBER", description = "The right claim number.")
    private @Nullable String claim;

    @Mixin
    private StoreOptions store = new StoreOptions();

    AmendCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        Amending right = new Amending(
                Optional.ofNullable(serial), Optional.ofNullable(technician), Optional.ofNullable(claim), by, reason);
        try (RecordBook book = store.book(workshop)) {
            RecordLines lines = new RecordLines(spec.commandLine().getOut(), false);
            lines.entered(book.workOff(List.of()));
            Entry amendment = right.amend(book, id, OffsetDateTime.now(workshop.clock()));
            spec.commandLine()
                    .getOut()
                    .println("%s amends %s, by %s because: %s"
                            .formatted(
                                    amendment.id(),
                                    amendment.amends().orElseThrow().id(),
                                    by,
                                    reason));
            return ExitCode.PASS;
        }
    }
}
