package org.pumpwright.host.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.stand.StandException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Runs a plan on a unit and grades it. */
@Command(
        name = "accept",
        description = "Tests a unit: runs its plan on the stand, grades it, keeps the record and makes the page.",
        mixinStandardHelpOptions = true)
final class AcceptCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ReachOptions reach = new ReachOptions();

    @Mixin
    private PaperOptions papers = new PaperOptions();

    @Option(
            names = "--model",
            required = true,
            paramLabel = "NAME",
            description = "The unit's model: a file in fixtures/models.")
    private String model = "";

    @Option(names = "--plan", paramLabel = "NAME", description = "A plan other than the model's own: a name or a file.")
    private @Nullable String plan;

    @Mixin
    private JobOptions jobs = new JobOptions();

    @Mixin
    private AnswerOptions answers = new AnswerOptions();

    @Mixin
    private SimulatedUnitOptions simulated = new SimulatedUnitOptions();

    AcceptCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        UnitModel unit = workshop.shelf().model(model);
        try (RunDesk desk = new RunDesk(workshop, spec.commandLine().getOut(), papers.book(workshop))) {
            return accept(unit, desk);
        }
    }

    private int accept(UnitModel unit, RunDesk desk)
            throws OrderException, DataFileException, StandException, RunRecordException {
        Acceptance.Job job = desk.claimed(jobs, unit.id(), papers);
        Acceptance.Order order = new Acceptance.Order(
                        reach.stand,
                        new Stands.Reach(
                                Optional.ofNullable(reach.port),
                                simulated.unit(unit.kind()),
                                simulated.pace(),
                                answers.answers),
                        model,
                        jobs.plan(unit, job, plan, papers.json),
                        papers.serial,
                        papers.technician,
                        papers.units)
                .within(job);
        return desk.carryOut(order, papers, answers);
    }
}
