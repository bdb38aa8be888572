package org.pumpwright.host.cli.bucket;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.SchemaCheck;
import org.pumpwright.host.app.bucket.Sheet;
import org.pumpwright.host.app.bucket.SheetFile;
import org.pumpwright.host.app.record.Bookkeeper;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.RecordLines;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecordException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The bucket test: pulses per gallon with its uncertainty. */
@Command(
        name = "bucket",
        description = {
            "The bucket test of a pulse meter: K, pulses per gallon and per litre, with",
            "its uncertainty, a report and a label. From a sheet that was filled in, or",
            "guided on the stand.",
            "",
            "  1  pumpwright bucket new-sheet my-test.yaml       an empty sheet to fill in",
            "  2  catch and weigh: at least 3 flows with 3 runs each, better 5 and 5",
            "  3  pumpwright bucket --typed my-test.yaml         K, and the papers",
            "",
            "To see one: pumpwright bucket --typed fixtures/buckets/weighed-example.yaml",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Exit codes: 0 K accepted, 1 not accepted, 2 no K from this sheet or wrong use,",
            "3 trouble with stand or disk. docs/user/bucket.md says more."
        })
public final class BucketCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--typed",
            paramLabel = "SHEET",
            description = "A sheet that was filled in: .yaml; or .csv with the runs only, then --bench too.")
    private @Nullable Path typed;

    @Option(
            names = "--stand",
            paramLabel = "NAME",
            description = "Guided on this stand; needs --bench for scale, liquid and meter.")
    private @Nullable String stand;

    @Mixin
    private SheetOptions papers = new SheetOptions();

    @Mixin
    private GuidedOptions guided = new GuidedOptions();

    BucketCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    /** The command with its verbs. */
    public static CommandLine tree(Workshop workshop) {
        return new CommandLine(new BucketCommand(workshop))
                .addSubcommand(new NewSheetCommand(workshop))
                .addSubcommand(new FieldCommand())
                .addSubcommand(new CatchCommand())
                .addSubcommand(new OuncesCommand())
                .addSubcommand(new DiverterCommand())
                .addSubcommand(new PapersCommand(workshop));
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        if (typed == null && stand == null) {
            spec.commandLine().usage(out);
            return ExitCode.USAGE;
        }
        if (typed != null && stand != null) {
            throw new OrderException("--typed and --stand exclude each other: give one of the two");
        }
        BucketCalibration calibration = new BucketCalibration(papers.records(workshop), workshop.clock());
        if (stand != null) {
            return new GuidedDesk(workshop, out, papers, guided, calibration).carryOut(stand);
        }
        return finish(sheet(), calibration);
    }

    private Sheet sheet() throws OrderException, DataFileException {
        Path file = Objects.requireNonNull(typed);
        if (!SheetFile.holdsRunsOnly(file)) {
            return SheetFile.read(file, papers.units);
        }
        if (papers.bench == null) {
            throw new OrderException(
                    "%s holds runs only: give scale, liquid and meter with --bench FILE, such as".formatted(file)
                            + " fixtures/buckets/bench-example.yaml");
        }
        return SheetFile.read(papers.bench, file, papers.units);
    }

    private int finish(Sheet sheet, BucketCalibration calibration)
            throws OrderException, DataFileException, RunRecordException {
        return finish(workshop, spec.commandLine().getOut(), papers, sheet, calibration, false, Optional.empty());
    }

    /**
     * Works a sheet out, keeps it, shows it, puts it on record.
     *
     * @param stand the stand it was made on; empty for one from a sheet
     */
    static int finish(
            Workshop workshop,
            PrintWriter out,
            SheetOptions papers,
            Sheet sheet,
            BucketCalibration calibration,
            boolean simulated,
            Optional<String> stand)
            throws OrderException, DataFileException, RunRecordException {
        Sheet whole = papers.before == null
                ? sheet
                : sheet.withOtherState(
                        BucketRecordFile.read(papers.before).result().single().pulsesPerM3());
        BucketCalibration.Done done = calibration.work(whole, papers.wishes(workshop, simulated));
        RecordBook book = papers.book(workshop);
        Optional<String> notMarked = mark(book, done.record(), calibration, stand);
        BucketCalibration.Kept kept = calibration.keep(done.record(), papers.units);
        if (papers.json) {
            out.println(ResultJson.of(done.record(), kept));
        } else {
            ResultPage page = new ResultPage(out, done.record(), papers.units);
            page.print(papers.numbers);
            page.files(kept);
        }
        if (papers.dccSchema != null) {
            SchemaCheck.check(papers.dccSchema, kept.certificate());
            if (!papers.json) {
                out.println("The certificate keeps to " + papers.dccSchema + ".");
            }
        }
        enter(book, new RecordLines(out, papers.json), notMarked);
        return done.record().result().accepted() ? ExitCode.PASS : ExitCode.FAIL;
    }

    /** Marked before it is kept, so that it is not forgotten; why not, where that fails. */
    private static Optional<String> mark(
            RecordBook book, BucketRecord record, BucketCalibration calibration, Optional<String> stand) {
        try {
            book.markBucketTest(record.id(), calibration.file(record), stand);
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("the test can't be marked: %s. Put it on record later: pumpwright record import %s."
                    .formatted(e.getMessage(), calibration.file(record)));
        }
    }

    private static void enter(RecordBook book, RecordLines lines, Optional<String> notMarked) {
        try (Bookkeeper keeper = new Bookkeeper(book)) {
            RecordBook.Entered entered = keeper.enter(List.of());
            List<String> troubles = new ArrayList<>(notMarked.stream().toList());
            troubles.addAll(entered.troubles());
            lines.entered(new RecordBook.Entered(entered.ids(), entered.waiting(), troubles));
        }
    }
}
