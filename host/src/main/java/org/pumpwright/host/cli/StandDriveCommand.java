package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.ManualDrive;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.quantity.Duty;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Drives what hangs on the stand at one duty for a while, by hand. */
@Command(
        name = "drive",
        description =
                "Drives one duty for a while, by hand: to prime, to look, to listen. Shows live values, and keeps a"
                        + " record that is marked MANUAL - NOT GRADED.",
        mixinStandardHelpOptions = true)
final class StandDriveCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ReachOptions reach = new ReachOptions();

    @Mixin
    private PaperOptions papers = new PaperOptions();

    @Option(names = "--duty", required = true, paramLabel = "P", description = "The duty, 0 to 100 %%.")
    private double dutyPercent;

    @Option(names = "--seconds", required = true, paramLabel = "N", description = "How long, 0.5 to 600 s.")
    private double seconds;

    @Option(names = "--drive", paramLabel = "0|1", description = "0 the pump's drive (if not given), 1 the valve's.")
    private int drive;

    @Option(names = "--meter", paramLabel = "0|1", description = "The meter to watch; 0 if not given.")
    private int meter;

    @Option(names = "--model", paramLabel = "NAME", description = "The unit's model, for its current limit.")
    private @Nullable String model;

    @Mixin
    private AnswerOptions answers = new AnswerOptions();

    @Mixin
    private SimulatedUnitOptions simulated = new SimulatedUnitOptions();

    StandDriveCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        Acceptance.Order order = new Acceptance.Order(
                        reach.stand,
                        new Stands.Reach(
                                Optional.ofNullable(reach.port), Optional.empty(), simulated.pace(), answers.answers),
                        Optional.ofNullable(model).orElse(ManualDrive.PLAN),
                        Optional.empty(),
                        papers.serial,
                        papers.technician,
                        papers.units)
                .byHand(manual());
        if (!papers.json) {
            caution();
        }
        try (RunDesk desk = new RunDesk(workshop, spec.commandLine().getOut(), papers.book(workshop))) {
            return desk.carryOut(order, papers, answers);
        }
    }

    private ManualDrive manual() {
        try {
            return new ManualDrive(Duty.ofPercent(dutyPercent), seconds, drive, meter);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
    }

    /** More than the usual words: no plan watches over what is done here. */
    private void caution() {
        PrintWriter out = spec.commandLine().getOut();
        out.println("MANUAL: no plan, no verdict. Somebody stays at the emergency stop. Outlet open; never against a");
        out.println("closed valve. Without water a pump runs for seconds only.");
    }
}
