package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Severity;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tests a simulated unit whose fault is chosen, or is a surprise that is told afterwards. */
@Command(
        name = "practice",
        description = "Tests a simulated unit with a fault: choose one, or be surprised and compare afterwards.",
        mixinStandardHelpOptions = true)
final class PracticeCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private PaperOptions papers = new PaperOptions();

    @Option(
            names = "--model",
            paramLabel = "NAME",
            description = "The unit's model; demo-pump if not given.",
            defaultValue = "demo-pump")
    private String model = "";

    @Option(names = "--plan", paramLabel = "NAME", description = "A plan other than the model's own: a name or a file.")
    private @Nullable String plan;

    @Option(names = "--list", description = "Lists the faults and ends.")
    private boolean list;

    @Mixin
    private JobOptions jobs = new JobOptions();

    @Mixin
    private AnswerOptions answers = new AnswerOptions();

    @Mixin
    private SimulatedUnitOptions simulated = new SimulatedUnitOptions();

    PracticeCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        if (list) {
            printFaults(workshop.shelf().model(model).kind());
            return ExitCode.PASS;
        }
        try (RunDesk desk = new RunDesk(workshop, spec.commandLine().getOut(), papers.book(workshop))) {
            return practise(workshop.shelf().model(model), desk);
        }
    }

    private int practise(UnitModel known, RunDesk desk)
            throws OrderException, DataFileException, StandException, RunRecordException {
        Acceptance.Job job = desk.claimed(jobs, known.id(), papers);
        PracticeUnit unit = unit(known.kind());
        Acceptance.Order order = new Acceptance.Order(
                        "simulated",
                        new Stands.Reach(Optional.empty(), Optional.of(unit), simulated.pace(), answers.answers),
                        model,
                        jobs.plan(known, job, plan, papers.json),
                        papers.serial,
                        papers.technician,
                        papers.units)
                .within(job);
        int code = desk.carryOut(order, papers, answers);
        tell(unit);
        return code;
    }

    private void tell(PracticeUnit unit) {
        PrintWriter out = spec.commandLine().getOut();
        if (papers.json) {
            new EventLines(out, new StopButton()).unit(unit);
        } else {
            out.println("The unit       " + unit.words());
        }
    }

    /** What was not chosen is a surprise, drawn by the seed, or by the clock without one. */
    private PracticeUnit unit(UnitKind kind) throws OrderException {
        long seed = simulated.seed == null ? workshop.clock().millis() : simulated.seed;
        Random surprise = new Random(seed);
        Fault fault = drawn(PracticeUnit.faults(kind), surprise);
        Severity severity = drawn(List.of(Severity.values()), surprise);
        return new PracticeUnit(
                kind,
                simulated.fault == null ? fault : PracticeUnit.fault(kind, simulated.fault),
                simulated.severity == null ? severity : simulated.severity,
                seed);
    }

    private static <T> T drawn(List<T> all, Random surprise) {
        return all.get(surprise.nextInt(all.size()));
    }

    private void printFaults(UnitKind kind) {
        for (Fault each : PracticeUnit.faults(kind)) {
            String of = each.ofTheStand() ? "stand" : "unit";
            spec.commandLine().getOut().printf("%-20s %-6s %s%n", each.word(), of, each.sentence());
        }
    }
}
