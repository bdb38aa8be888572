package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes what was seen, or that the unit was rinsed. */
@Command(
        name = "note",
        description = "Notes what was seen on a unit, that it was rinsed, or anything else.",
        mixinStandardHelpOptions = true)
final class NoteCommand extends DeskCommand {
    @Parameters(index = "0", paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Parameters(index = "1", arity = "0..1", paramLabel = "TEXT", description = "In your own words.")
    private String words = "";

    @Option(names = "--by", paramLabel = "NAME", description = "Who saw it.")
    private @Nullable String by;

    @Option(
            names = "--seen",
            paramLabel = "WHAT",
            description = {
                "One of the usual things: freed-by-rinse, debris-found, dry, wet-motor, oil-in-product,",
                "cracked-head, external-leak, short-to-case, planter-check; note if not given."
            },
            defaultValue = "note")
    private String seen = "note";

    @Option(
            names = "--rinsed-by",
            paramLabel = "NAME",
            description = "Who of the shop made sure that the unit is clean.")
    private @Nullable String rinsedBy;

    @Option(
            names = "--rinses",
            paramLabel = "N",
            description = "How many times it was rinsed; 2 if not given.",
            defaultValue = "2")
    private int rinses = 2;

    @Option(
            names = "--bypass-decontamination",
            paramLabel = "NAME",
            description = "Who lets the unit be tested without that; needs --reason.")
    private @Nullable String bypass;

    @Option(names = "--reason", paramLabel = "TEXT", description = "Why; needs --bypass-decontamination.")
    private @Nullable String reason;

    @Option(
            names = "--corrects",
            paramLabel = "TEXT",
            description = "Why this takes the place of the last note; both stay on record.")
    private @Nullable String corrects;

    NoteCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        if ((bypass == null) != (reason == null)) {
            throw new OrderException(
                    "--bypass-decontamination and --reason belong together: a named person answers for it, and says why");
        }
        desk.desk().act(number, (file, now) -> act(now), Optional.ofNullable(corrects));
        out.println("Noted on claim %s.".formatted(number));
    }

    private Act act(OffsetDateTime now) throws OrderException {
        if (rinsedBy != null) {
            return new Act.Rinsed(rinsedBy, rinses);
        }
        if (bypass != null && reason != null) {
            return new Act.Waived(new Waiver(Waiver.Step.DECONTAMINATION, bypass, reason, now));
        }
        if (by == null) {
            throw new OrderException("say who saw it: --by NAME");
        }
        return new Act.Observed(new Observation(Seen.ofWord(seen), words, by, now));
    }
}
