package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.pumpwright.host.app.StandCheckUp;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Checks whether the stand is fit to test with; drives nothing. */
@Command(
        name = "check",
        description = "Checks whether the stand is fit to test with. Closes the contactor, drives nothing.",
        mixinStandardHelpOptions = true)
final class StandCheckCommand implements Callable<Integer> {
    private final Workshop workshop;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ReachOptions reach = new ReachOptions();

    StandCheckCommand(Workshop workshop) {
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws Exception {
        StandDescription description = workshop.shelf().stand(reach.stand);
        try (Stand stand = workshop.stands()
                .reach(description, reach.reach(), UnitKind.PUMP_12V)
                .stand()) {
            StandCheckUp.Finding finding = StandCheckUp.of(stand, LocalDate.now(workshop.clock()));
            PrintWriter out = spec.commandLine().getOut();
            out.printf(
                    "%s: board %s, firmware %s%n",
                    description.title(),
                    finding.identity().boardKind(),
                    finding.identity().firmware());
            finding.checks().forEach(check -> print(out, check));
            if (!finding.outcome().ending().completed()) {
                out.println("  NOT  " + finding.outcome().ending().reason());
            }
            out.println("Stand: " + finding.outcome().safe().words() + ".");
            out.println(finding.fit() ? "Fit to test with." : "NOT FIT: put right what is marked, then check again.");
            return finding.fit() ? ExitCode.PASS : ExitCode.STAND;
        }
    }

    private static void print(PrintWriter out, StandCheck check) {
        out.printf("  %-4s %-28s %s%n", check.ok() ? "ok" : "NOT", check.name(), check.finding());
        if (!check.ok()) {
            out.println("       " + check.remedy());
        }
    }
}
