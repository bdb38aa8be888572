package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.record.GradesEntered;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.StopButton;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges stored runs again. */
@Command(
        name = "grade",
        description = {
            "Grades stored runs again, by the newest healthy curve and rules that fit.",
            "Every run gets a new record and new papers; the old ones are not touched."
        },
        mixinStandardHelpOptions = true)
final class GradeCommand implements Callable<Integer> {
    private static final int MOST_JOBS = 1000;

    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..*",
            paramLabel = "RECORDS",
            description = "Record files, or folders that hold them; the folder of records if not given.")
    private List<Path> paths = List.of();

    @Option(
            names = "--curve",
            paramLabel = "NAME",
            description = "This healthy curve, a name or a file, instead of the newest that fits.")
    private @Nullable String curve;

    @Option(
            names = "--rules",
            paramLabel = "NAME",
            description = "These rules of grading, a name or a file, instead of those of each unit's model.")
    private @Nullable String rules;

    @Option(names = "--dry-run", description = "Tells what would change, and keeps nothing.")
    private boolean dryRun;

    @Option(names = "--jobs", paramLabel = "N", description = "How many at once; as many as the machine has cores.")
    private @Nullable Integer jobs;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of the papers; us if not given.",
            defaultValue = "US")
    private UnitSystem units = UnitSystem.US;

    @Option(
            names = "--records",
            paramLabel = "FOLDER",
            description = "Where the new records are kept; 'records' beside the program.")
    private @Nullable Path records;

    @Option(
            names = "--store",
            paramLabel = "ADDRESS",
            description =
                    "Database of the record: jdbc:postgresql://...; the file ledger.db in that folder if not given.")
    private @Nullable String store;

    @Option(names = "--json", description = "Prints each run and the summary as JSON, one object a line.")
    private boolean json;

    @Option(names = "--numbers", description = "Shows the numbers behind the verdict too, where one record is graded.")
    private boolean numbers;

    @Option(names = "--quiet", description = "No live line.")
    private boolean quiet;

    GradeCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        Path into = Optional.ofNullable(records).orElse(workshop.records());
        Regrading.Order order = new Regrading.Order(
                paths.isEmpty() ? List.of(workshop.records()) : paths,
                Optional.ofNullable(curve),
                Optional.ofNullable(rules),
                jobs(),
                dryRun,
                units);
        StopButton stop = new StopButton();
        RegradeTally tally = new RegradeTally();
        RegradeFace face = json
                ? new RegradeLines(out, stop)
                : new RegradeText(out, stop, workshop.livePerson() && !quiet, order, into, numbers, workshop.clock());
        EndOfProcess end = EndOfProcess.watch(workshop.stands(), stop, () -> {});
        try (RecordBook book = workshop.recordBook(into, Optional.ofNullable(store))) {
            GradesEntered entering = new GradesEntered(book, tally.before(face));
            new Regrading(workshop.shelf(), workshop.recordFolder(into), workshop.clock())
                    .carryOut(order, entering, stop);
            if (!dryRun) {
                new RecordLines(out, json).entered(entering.entered());
            }
            face.over(tally, stop.pressed());
        } finally {
            end.close();
        }
        return exitCode(tally);
    }

    private int jobs() {
        if (jobs == null) {
            return Math.min(MOST_JOBS, Runtime.getRuntime().availableProcessors());
        }
        if (jobs < 1 || jobs > MOST_JOBS) {
            throw new ParameterException(
                    spec.commandLine(), "--jobs is %d, it must be 1 to %d".formatted(jobs, MOST_JOBS));
        }
        return jobs;
    }

    /** One run answers with its verdict, as a test does; for many it only says whether all could be judged. */
    private int exitCode(RegradeTally tally) {
        boolean one = paths.size() == 1 && !Files.isDirectory(paths.get(0));
        if (tally.notJudged() > 0) {
            return ExitCode.STAND;
        }
        return one && tally.onlyVerdict().isPresent()
                ? ExitCode.of(tally.onlyVerdict().get())
                : ExitCode.PASS;
    }
}
