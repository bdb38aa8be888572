package org.pumpwright.host.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
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

    @Option(
            names = "--fault",
            paramLabel = "WORD",
            description = "Fault of a simulated unit: ${COMPLETION-CANDIDATES}.",
            completionCandidates = FaultNames.class,
            converter = FaultNames.Faults.class,
            defaultValue = "healthy")
    private PumpFault fault = PumpFault.HEALTHY;

    @Option(
            names = "--severity",
            paramLabel = "WORD",
            description = "Severity of that fault: mild, moderate or severe.",
            converter = FaultNames.Severities.class,
            defaultValue = "moderate")
    private Severity severity = Severity.MODERATE;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Which simulated unit; the same number is the same unit.",
            defaultValue = "1")
    private long seed;

    @Option(
            names = "--pace",
            paramLabel = "X",
            description = "Simulated seconds in a second; 1 is real time, 0 (if not given) as fast as it goes.",
            defaultValue = "0")
    private double pace;

    AcceptCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        PracticeUnit unit = new PracticeUnit(fault, severity, seed);
        Acceptance.Order order = new Acceptance.Order(
                reach.stand,
                reach.reach(unit, pace),
                model,
                Optional.ofNullable(plan),
                papers.serial,
                papers.technician,
                papers.units);
        return new RunDesk(workshop, spec.commandLine().getOut()).carryOut(order, papers);
    }
}
