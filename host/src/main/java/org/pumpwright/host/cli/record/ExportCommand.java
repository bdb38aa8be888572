package org.pumpwright.host.cli.record;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.HandingOut;
import org.pumpwright.host.app.record.PacketFile;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.TraceBlob;
import org.pumpwright.host.record.exchange.RunTable;
import org.pumpwright.host.record.exchange.TraceTable;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Hands out what is on record. */
@Command(
        name = "export",
        description = {
            "Hands out what is on record, for spreadsheets, other programs, another stand or a",
            "factory. Whose unit it was is left out unless --with-customer is given; what is handed",
            "out can be checked all the same. The options of 'find' choose; without them everything."
        },
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    private static final int MOST = 10_000;

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** In which form. */
    static final class Form {
        @Option(names = "--csv", description = "Runs as a table, one line each.")
        private boolean csv;

        /** A table of runs, where none of the others is asked for. */
        boolean runs() {
            return csv || !(csvTrace || jsonLines || packet);
        }

        @Option(names = "--csv-trace", description = "Every sample of the runs as a table: raw counts and SI values.")
        private boolean csvTrace;

        @Option(
                names = "--json-lines",
                description = "Whole entries with their signatures, one a line; the form that 'import' takes.")
        private boolean jsonLines;

        @Option(names = "--packet", description = "A ZIP file with a list of digests and how to check it; needs --out.")
        private boolean packet;
    }

    @ArgGroup(multiplicity = "1")
    private Form form = new Form();

    @Mixin
    private SearchOptions wanted = new SearchOptions();

    @Mixin
    private StoreOptions store = new StoreOptions();

    @Option(names = "--out", paramLabel = "FILE", description = "New file; the terminal if not given.")
    private @Nullable Path file;

    @Option(names = "--with-customer", description = "Says whose units they were, and hands out all that was noted.")
    private boolean withCustomer;

    ExportCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        try (RecordBook book = store.book(workshop)) {
            HandingOut handing = new HandingOut(book, withCustomer);
            if (form.packet) {
                packet(handing);
            } else if (file == null) {
                write(book, handing, spec.commandLine().getOut());
                spec.commandLine().getOut().flush();
            } else {
                writeFile(book, handing, file);
            }
            return ExitCode.PASS;
        }
    }

    private void packet(HandingOut handing) throws OrderException, StoreException {
        if (file == null) {
            throw new OrderException("--packet makes a file: give its name with --out FILE.zip.");
        }
        int entries = PacketFile.write(handing, handing.entries(wanted.search(MOST)), file);
        spec.commandLine().getOut().println("%d entries in %s.".formatted(entries, file));
    }

    private void writeFile(RecordBook book, HandingOut handing, Path target) throws OrderException, StoreException {
        if (Files.exists(target)) {
            throw new OrderException("%s is already there and stays as it is. Choose another name.".formatted(target));
        }
        PrintWriter out = spec.commandLine().getOut();
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try {
            int entries;
            try (Writer writer = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
                entries = write(book, handing, writer);
            }
            Files.move(part, target);
            out.println("%d entries in %s.".formatted(entries, target));
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Free some space or choose another folder."
                    .formatted(target, e.getMessage()));
        } finally {
            remove(part);
        }
        if (handing.leftOut() > 0) {
            out.println("%d entries were left out: their signed heads name a customer. --with-customer hands them out."
                    .formatted(handing.leftOut()));
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // Its name says what it is, and the next export of that name writes over it.
            return;
        }
    }

    private int write(RecordBook book, HandingOut handing, Writer writer)
            throws OrderException, StoreException, IOException {
        if (form.jsonLines) {
            HandingOut.Taker taker = line -> writer.write(line + "\n");
            if (wanted.everything()) {
                handing.everything(taker);
            } else {
                handing.some(handing.entries(wanted.search(MOST)), taker);
            }
            return handing.handedOut();
        }
        List<Entry> runs = handing.entries(wanted.search(MOST)).stream()
                .filter(entry -> entry.kind() == EntryKind.RUN || entry.kind() == EntryKind.GRADE)
                .filter(entry -> entry.amends().isEmpty())
                .toList();
        return form.runs() ? writeRuns(runs, writer) : writeTraces(book, runs, writer);
    }

    private static int writeRuns(List<Entry> runs, Writer writer) throws IOException {
        writer.write(RunTable.heads());
        for (Entry run : runs) {
            writer.write(RunTable.line(run));
        }
        return runs.size();
    }

    private static int writeTraces(RecordBook book, List<Entry> runs, Writer writer)
            throws OrderException, StoreException, IOException {
        String heads = "";
        for (Entry run : runs) {
            Trace trace = trace(book, run);
            String now = TraceTable.heads(trace);
            if (!now.equals(heads)) {
                writer.write(now);
                heads = now;
            }
            for (Sample sample : trace.samples()) {
                writer.write(TraceTable.line(run.id(), trace, sample));
            }
        }
        return runs.size();
    }

    private static Trace trace(RecordBook book, Entry run) throws OrderException, StoreException {
        try {
            return TraceBlob.read(book.reading()
                    .attachment(run.attachments().get(0))
                    .orElseThrow(() ->
                            new IllegalArgumentException("the trace is missing. Run 'pumpwright record audit'.")));
        } catch (IllegalArgumentException e) {
            throw new OrderException("%s: %s".formatted(run.id(), e.getMessage()));
        }
    }
}
