package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.BucketCalibration;
import org.pumpwright.host.app.BucketSchemaCheck;
import org.pumpwright.host.app.BucketSheet;
import org.pumpwright.host.app.BucketSheetFile;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.datafile.DataFileException;
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
            "Exit codes: 0 K accepted, 1 not accepted, 2 no K from this sheet or wrong use, 3 trouble",
            "with stand or disk. docs/user/bucket.md says more."
        })
final class BucketCommand implements Callable<Integer> {
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
    private BucketOptions papers = new BucketOptions();

    @Mixin
    private BucketStandOptions guided = new BucketStandOptions();

    BucketCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    /** The command with its verbs. */
    static CommandLine tree(Workshop workshop) {
        return new CommandLine(new BucketCommand(workshop))
                .addSubcommand(new BucketNewSheetCommand(workshop))
                .addSubcommand(new BucketFieldCommand())
                .addSubcommand(new BucketCatchCommand())
                .addSubcommand(new BucketOuncesCommand())
                .addSubcommand(new BucketDiverterCommand())
                .addSubcommand(new BucketPapersCommand(workshop));
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
            return new BucketDesk(workshop, out, papers, guided, calibration).carryOut(stand);
        }
        return finish(sheet(), calibration, false);
    }

    private BucketSheet sheet() throws OrderException, DataFileException {
        Path file = Objects.requireNonNull(typed);
        if (!BucketSheetFile.holdsRunsOnly(file)) {
            return BucketSheetFile.read(file, papers.units);
        }
        if (papers.bench == null) {
            throw new OrderException(
                    "%s holds runs only: give scale, liquid and meter with --bench FILE, such as".formatted(file)
                            + " fixtures/buckets/bench-example.yaml");
        }
        return BucketSheetFile.read(papers.bench, file, papers.units);
    }

    private int finish(BucketSheet sheet, BucketCalibration calibration, boolean simulated)
            throws OrderException, DataFileException, RunRecordException {
        return finish(workshop, spec.commandLine().getOut(), papers, sheet, calibration, simulated);
    }

    /** Works a sheet out, keeps it, shows it. */
    static int finish(
            Workshop workshop,
            PrintWriter out,
            BucketOptions papers,
            BucketSheet sheet,
            BucketCalibration calibration,
            boolean simulated)
            throws OrderException, DataFileException, RunRecordException {
        BucketSheet whole = papers.before == null
                ? sheet
                : sheet.withOtherState(
                        BucketRecordFile.read(papers.before).result().single().pulsesPerM3());
        BucketCalibration.Done done = calibration.work(whole, papers.wishes(workshop, simulated));
        BucketCalibration.Kept kept = calibration.keep(done.record(), papers.units);
        if (papers.json) {
            out.println(BucketJson.of(done.record(), kept));
        } else {
            BucketPage page = new BucketPage(out, done.record(), papers.units);
            page.print(papers.numbers);
            page.files(kept);
        }
        if (papers.dccSchema != null) {
            BucketSchemaCheck.check(papers.dccSchema, kept.certificate());
            if (!papers.json) {
                out.println("The certificate keeps to " + papers.dccSchema + ".");
            }
        }
        return done.record().result().accepted() ? ExitCode.PASS : ExitCode.FAIL;
    }
}
