package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import org.pumpwright.host.app.claim.ClaimPage;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows a claim. */
@Command(
        name = "show",
        description = "Shows everything that is known of a claim on one page, and names what is missing.",
        mixinStandardHelpOptions = true)
final class ShowCommand extends DeskCommand {
    @Parameters(paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Option(names = "--json", description = "Prints one JSON object, and nothing else.")
    private boolean json;

    ShowCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        ClaimReview.Reviewed reviewed = desk.review().of(number);
        if (json) {
            out.println(ClaimJson.of(reviewed));
        } else {
            out.print(ClaimPage.of(reviewed, true));
        }
    }
}
