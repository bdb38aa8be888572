package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.app.claim.ClaimPage;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists claims. */
@Command(
        name = "list",
        description = "Lists the claims that are in the shop, by state, the oldest first.",
        mixinStandardHelpOptions = true)
final class ListCommand extends DeskCommand {
    @Option(names = "--all", description = "Those that left the shop too.")
    private boolean all;

    @Option(names = "--json", description = "Prints one JSON object a line, and nothing else.")
    private boolean json;

    ListCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        List<ClaimList.Line> lines = new ClaimList(desk.claims()).lines(LocalDate.now(desk.clock()), all);
        if (json) {
            lines.forEach(line -> out.println(ClaimJson.of(line)));
            return;
        }
        if (lines.isEmpty()) {
            out.println("No claims are open.");
        }
        for (CustodyState state : CustodyState.values()) {
            List<ClaimList.Line> here = lines.stream()
                    .filter(line -> line.file().whereabouts().to() == state)
                    .toList();
            if (!here.isEmpty()) {
                out.println("%s (%d)".formatted(state.word(), here.size()));
                here.forEach(line -> out.println("  " + ClaimPage.line(line)));
            }
        }
    }
}
