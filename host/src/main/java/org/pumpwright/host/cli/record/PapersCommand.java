package org.pumpwright.host.cli.record;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.Paper;
import org.pumpwright.host.app.paper.PaperFile;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.app.paper.Papers;
import org.pumpwright.host.app.paper.RecordLookUp;
import org.pumpwright.host.app.paper.Surroundings;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a paper of what is on record. */
@Command(
        name = "papers",
        description = {
            "Makes a paper of a run or a bucket test that is on record: a PDF that is made to be",
            "kept (PDF/A-3b), with the signed record in it, or the same as HTML.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PapersCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ID", description = "The entry's id, its beginning or end; or a record.json file.")
    private String id = "";

    @Option(
            names = "--page",
            required = true,
            paramLabel = "PAGE",
            description = "technician, customer, clerk, factory, retest, label; of a bucket test: bucket, label.")
    private PaperKind page = PaperKind.TECHNICIAN;

    @Option(names = "--with", paramLabel = "ID", description = "The other run of the unit, for a retest.")
    private @Nullable String with;

    @Option(
            names = "--paper",
            paramLabel = "letter|a4|label",
            description = "Size; letter if not given, and for a label the label alone.")
    private @Nullable Sheet sheet;

    @Option(names = "--language", paramLabel = "en|es", description = "Language; en if not given.", defaultValue = "EN")
    private Language language = Language.EN;

    @Option(names = "--units", paramLabel = "us|metric", description = "Units; us if not given.", defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--format", paramLabel = "pdf|html", description = "pdf if not given.", defaultValue = "PDF")
    private Format format = Format.PDF;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Where it goes; ID-PAGE.pdf in this folder if not given.")
    private @Nullable Path file;

    @Mixin
    private StoreOptions options = new StoreOptions();

    /** What kind of file it is. */
    enum Format {
        PDF,
        HTML
    }

    PapersCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        try (RecordBook book = options.book(workshop)) {
            RecordLookUp lookUp = new RecordLookUp(book);
            Found found = lookUp.find(id);
            Optional<Found> other = with == null ? Optional.empty() : Optional.of(lookUp.find(with));
            Surroundings around =
                    new Surroundings(store(book), workshop.home().resolve("fixtures"), options.records(workshop));
            Paper paper = new Papers(around, Texts.in(language), units, sheet()).of(page, found, other);
            byte[] bytes = format == Format.PDF ? paper.pdf() : paper.html().getBytes(StandardCharsets.UTF_8);
            Path target = target(found);
            write(target, bytes);
            out.println("Made: %s, %d bytes".formatted(target, bytes.length));
            told(found, paper, out);
            return ExitCode.PASS;
        }
    }

    private static Optional<RecordStore> store(RecordBook book) throws StoreException {
        return book.choice().mayHold() ? Optional.of(book.reading()) : Optional.empty();
    }

    private Sheet sheet() {
        Sheet usual = page == PaperKind.LABEL ? Sheet.LABEL : Sheet.LETTER;
        return Optional.ofNullable(sheet).orElse(usual);
    }

    private Path target(Found found) {
        return Optional.ofNullable(file)
                .orElseGet(() -> Path.of("%s-%s.%s"
                        .formatted(found.id(), page.word(), format.name().toLowerCase(Locale.ROOT))));
    }

    private void told(Found found, Paper paper, PrintWriter out) {
        if (format == Format.PDF) {
            out.println("In it: "
                    + paper.attachments().stream().map(Attachment::name).collect(Collectors.joining(", ")));
        }
        if (found.entry().isEmpty()) {
            out.println("Made of a file: there is no signature in it.");
        }
        found.amendments()
                .forEach(amendment -> out.println("Corrected on record by %s, because: %s; the paper says so."
                        .formatted(
                                amendment.id(), amendment.amends().orElseThrow().reason())));
    }

    private static void write(Path target, byte[] bytes) throws OrderException {
        try {
            PaperFile.write(target, bytes);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Free some space, or choose another place: --out FILE."
                    .formatted(target, e.getMessage()));
        }
    }
}
