package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.DecisionDesk.Declined;
import org.pumpwright.host.app.claim.DecisionDesk.FindingAsked;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs what a technician finds. */
@Command(
        name = "finding",
        description = {
            "Signs what was found, in a neutral category. It must agree with the runs on record.",
            "",
            "  C1 outside limits, material or workmanship   C5 measurement inconclusive",
            "  C2 outside limits, normal wear               C6 not testable as received",
            "  C3 outside limits, installation,             C7 within limits, cause found",
            "     contamination or operation                   elsewhere",
            "  C4 within limits, symptom not reproduced     C8 outside limits, not determined",
            ""
        },
        mixinStandardHelpOptions = true)
final class FindingCommand extends DeskCommand {
    @Parameters(paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Option(names = "--category", required = true, paramLabel = "C1..C8", description = "The category.")
    private String category = "";

    @Option(
            names = "--reproduced",
            required = true,
            paramLabel = "WORD",
            description = "Whether the complaint showed: yes, no, partly, not-attempted.")
    private String reproduced = "";

    @Option(names = "--basis", required = true, paramLabel = "TEXT", description = "What it rests on.")
    private String basis = "";

    @Option(
            names = "--part",
            paramLabel = "WORD",
            description = "A part that is concerned; may be given several times.")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who signs.")
    private String by = "";

    @Option(
            names = "--declined-by",
            paramLabel = "NAME",
            description = "Who closes a C4 without the plan for what comes and goes; needs --reason.")
    private @Nullable String declinedBy;

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why; needs --declined-by.")
    private @Nullable String reason;

    @Option(
            names = "--corrects",
            paramLabel = "TEXT",
            description = "Why this takes the place of the finding before; both stay on record.")
    private @Nullable String corrects;

    FindingCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        ClaimFile file = desk.decisions().find(number, asked(), Optional.ofNullable(corrects));
        Finding finding = file.finding().orElseThrow();
        Texts texts = Texts.in(Language.EN);
        out.println("%s  %s"
                .formatted(finding.category(), texts.say(finding.category().key())));
        out.println("Reproduced: %s. Signed: %s."
                .formatted(texts.say(finding.reproduced().key()), finding.signer()));
        out.println("Tests it rests on:" + (finding.tests().isEmpty() ? " none" : ""));
        finding.tests().forEach(test -> out.println("  " + test));
    }

    private FindingAsked asked() throws OrderException {
        if ((declinedBy == null) != (reason == null)) {
            throw new OrderException(
                    "--declined-by and --reason belong together: a named person closes it, and says why");
        }
        Optional<Declined> declined =
                declinedBy == null || reason == null ? Optional.empty() : Optional.of(new Declined(declinedBy, reason));
        try {
            return new FindingAsked(
                    Category.ofWord(category), Reproduced.ofWord(reproduced), basis, parts, by, declined);
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }
}
