package org.pumpwright.host.cli;

import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.PracticeUnit;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.Severity;
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

    @Option(names = "--list", description = "Lists the faults and ends.")
    private boolean list;

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
            printFaults();
            return ExitCode.PASS;
        }
        PracticeUnit unit = unit();
        Acceptance.Order order = new Acceptance.Order(
                "simulated",
                new Stands.Reach(Optional.empty(), Optional.of(unit), simulated.pace(), answers.answers),
                "demo-pump",
                Optional.empty(),
                papers.serial,
                papers.technician,
                papers.units);
        int code = new RunDesk(workshop, spec.commandLine().getOut()).carryOut(order, papers, answers);
        spec.commandLine().getOut().println("The unit       " + unit.words());
        return code;
    }

    /** What was not chosen is a surprise, drawn by the seed, or by the clock without one. */
    private PracticeUnit unit() {
        long seed = simulated.seed == null ? workshop.clock().millis() : simulated.seed;
        Random surprise = new Random(seed);
        PumpFault fault = drawn(PumpFault.values(), surprise);
        Severity severity = drawn(Severity.values(), surprise);
        return new PracticeUnit(
                simulated.fault == null ? fault : simulated.fault,
                simulated.severity == null ? severity : simulated.severity,
                seed);
    }

    private static <T> T drawn(T[] all, Random surprise) {
        return all[surprise.nextInt(all.length)];
    }

    private void printFaults() {
        for (PumpFault each : PumpFault.values()) {
            String of = each.ofTheStand() ? "stand" : "unit";
            spec.commandLine().getOut().printf("%-20s %-6s %s%n", each.word(), of, each.sentence());
        }
    }
}
