package org.pumpwright.host.cli;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
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

    @Option(
            names = "--fault",
            paramLabel = "WORD",
            description = "The fault; without it a surprise. See --list.",
            completionCandidates = FaultNames.class,
            converter = FaultNames.Faults.class)
    private @Nullable PumpFault fault;

    @Option(
            names = "--severity",
            paramLabel = "WORD",
            description = "mild, moderate or severe; without it a surprise.",
            converter = FaultNames.Severities.class)
    private @Nullable Severity severity;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "The same number is the same unit and surprise; else by the clock.")
    private @Nullable Long seed;

    @Option(
            names = "--pace",
            paramLabel = "X",
            description = "Simulated seconds in a second; 1 is real time, 0 (if not given) as fast as it goes.",
            defaultValue = "0")
    private double pace;

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
                new Stands.Reach(Optional.empty(), unit, pace),
                "demo-pump",
                Optional.empty(),
                papers.serial,
                papers.technician,
                papers.units);
        int code = new RunDesk(workshop, spec.commandLine().getOut()).carryOut(order, papers);
        spec.commandLine().getOut().println("The unit       " + unit.words());
        return code;
    }

    private PracticeUnit unit() {
        long number = seed == null ? workshop.clock().millis() : seed;
        Random surprise = new Random(number);
        List<PumpFault> faults = List.of(PumpFault.values());
        List<Severity> severities = List.of(Severity.values());
        PumpFault drawnFault = faults.get(surprise.nextInt(faults.size()));
        Severity drawnSeverity = severities.get(surprise.nextInt(severities.size()));
        return new PracticeUnit(
                fault == null ? drawnFault : fault, severity == null ? drawnSeverity : severity, number);
    }

    private void printFaults() {
        for (PumpFault each : PumpFault.values()) {
            String of = each.ofTheStand() ? "stand" : "unit";
            spec.commandLine().getOut().printf("%-20s %-6s %s%n", each.word(), of, each.sentence());
        }
    }
}
