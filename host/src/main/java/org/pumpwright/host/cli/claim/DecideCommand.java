package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.DecisionDesk.DecisionAsked;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs what the desk decides. */
@Command(
        name = "decide",
        description = {
            "Signs what the desk decides on a claim: approve, deny, goodwill or refer. Who",
            "tested the unit or signed its finding can't decide.",
            ""
        },
        mixinStandardHelpOptions = true)
final class DecideCommand extends DeskCommand {
    @Parameters(index = "0", paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Parameters(index = "1", paramLabel = "DECISION", description = "approve, deny, goodwill or refer.")
    private String outcome = "";

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
    private String reason = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who signs.")
    private String by = "";

    @Option(names = "--second-signer", paramLabel = "NAME", description = "Who signs too, above the rules' value.")
    private @Nullable String second;

    @Option(names = "--amount", paramLabel = "X", description = "What is given, in the shop's currency.")
    private @Nullable String amount;

    @Option(
            names = "--corrects",
            paramLabel = "TEXT",
            description = "Why this takes the place of the decision before; both stay on record.")
    private @Nullable String corrects;

    DecideCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        ClaimFile file = desk.decisions().decide(number, asked(), Optional.ofNullable(corrects));
        CoverageDecision decision = file.decision().orElseThrow();
        out.println("Claim %s: %s. Signed: %s%s."
                .formatted(
                        number,
                        Texts.in(Language.EN).say(decision.outcome().key()),
                        decision.signer(),
                        decision.second().map(name -> " and " + name).orElse("")));
        out.println("Rules: " + decision.rules().orElse("none in effect on the day the unit came"));
    }

    private DecisionAsked asked() throws OrderException {
        try {
            return new DecisionAsked(
                    CoverageDecision.Outcome.ofWord(outcome),
                    reason,
                    by,
                    Optional.ofNullable(second),
                    Optional.ofNullable(amount).map(Amount::of));
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }
}
