package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.claim.StatisticsDesk;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.statistics.ReturnStatistics;
import org.pumpwright.host.cli.ExitCode;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the returns teach together. */
@Command(
        name = "statistics",
        description = {
            "What the returns teach together: how many were confirmed, how many showed no",
            "fault, the shop's figures; with a table of what was shipped also months in",
            "service, life of each failure mode and batches that come back too often.",
            "Every rate comes with its 95 %% interval, and too few are called too few.",
            ""
        },
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Example: pumpwright claim statistics --model pump-12v-5gpm --shipped shipped.csv",
            "with shipped.csv: month,count,date_code / 2026-01,120,2603 / 2026-02,95,2607",
            "Exit codes: 0 done, 2 wrong use or a file that is not in order.",
            "docs/metrology/returns.md says what can be concluded, and what not."
        })
final class StatisticsCommand implements Callable<Integer> {
    private static final double PERCENT = 100;

    private final Clock clock;
    private final Claims claims;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--model", paramLabel = "NAME", description = "Returns of this model alone.")
    private @Nullable String model;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "First day of coming in that is counted, as 2026-01-31. Lives and batches always count from"
                    + " the first shipment.")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DAY", description = "Last day that is counted; today if not given.")
    private @Nullable LocalDate until;

    @Option(
            names = "--shipped",
            paramLabel = "FILE",
            description = "CSV of what was shipped of the model: month,count and, where kept, date_code.")
    private @Nullable Path shipped;

    @Option(
            names = "--alert-percent",
            paramLabel = "P",
            description = "A batch is an alert when chance makes it so bad less often; 2 percent if not given.",
            defaultValue = "2")
    private double alertPercent;

    @Mixin
    private StoreOptions store = new StoreOptions();

    @Option(names = "--practice", description = "Practice claims instead of real ones; never both.")
    private boolean practice;

    @Option(names = "--json", description = "Prints one JSON object, and nothing else.")
    private boolean json;

    /** Reads every claim from the store that was named. */
    @FunctionalInterface
    interface Claims {
        List<ClaimFile> all(StoreOptions store) throws Exception;
    }

    /** Over the claims of the desk. */
    static StatisticsCommand of(Workshop workshop) {
        return new StatisticsCommand(workshop.clock(), store -> {
            try (OpenDesk desk = OpenDesk.of(workshop, store)) {
                return desk.claims().all();
            }
        });
    }

    StatisticsCommand(Clock clock, Claims claims) {
        this.clock = clock;
        this.claims = claims;
    }

    @Override
    public Integer call() throws Exception {
        if (!(alertPercent > 0 && alertPercent < PERCENT)) {
            throw new ParameterException(
                    spec.commandLine(), "--alert-percent is " + alertPercent + ", must lie between 0 and 100");
        }
        StatisticsDesk.Question question = new StatisticsDesk.Question(
                Optional.ofNullable(model),
                Optional.ofNullable(from),
                until == null ? LocalDate.now(clock) : until,
                Optional.ofNullable(shipped),
                alertPercent / PERCENT,
                practice);
        List<ClaimFile> all = claims.all(store);
        ReturnStatistics statistics = new StatisticsDesk(() -> all).answer(question);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(StatisticsJson.of(question, statistics));
        } else {
            StatisticsPage.lines(question, statistics).forEach(out::println);
        }
        return ExitCode.PASS;
    }
}
