package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyRules;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.TagColoursFile;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes that a unit went from one place or state to the next. */
@Command(
        name = "move",
        description = {
            "Notes that a unit went on: quarantined, tested, awaiting-decision, returned,",
            "scrapped or to-factory. A move that is not allowed is refused, and what is allowed told.",
            ""
        },
        mixinStandardHelpOptions = true)
final class MoveCommand extends DeskCommand {
    @Parameters(index = "0", paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Parameters(index = "1", paramLabel = "STATE", description = "Where the unit is now.")
    private String state = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "In whose hands it is.")
    private String by = "";

    @Option(names = "--place", required = true, paramLabel = "TEXT", description = "Where it stands.")
    private String place = "";

    @Option(names = "--tag", paramLabel = "NUMBER", description = "A new tag's number.")
    private String tag = "";

    @Option(
            names = "--colour",
            paramLabel = "WORD",
            description = "The tag's colour: a word in fixtures/claims/tags.yaml.")
    private @Nullable String colour;

    MoveCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        TagColoursFile tags = desk.data().tags();
        ClaimFile file = desk.desk()
                .act(
                        number,
                        (before, now) -> {
                            CustodyState to = CustodyState.ofWord(state);
                            CustodyRules.check(before, to);
                            Optional<String> known = Optional.empty();
                            if (colour != null) {
                                known = Optional.of(tags.checked(colour));
                            }
                            return new Act.Moved(new CustodyMove(
                                    now,
                                    to,
                                    by,
                                    place,
                                    tag.isEmpty() ? before.intake().unit().tag() : tag,
                                    known));
                        },
                        Optional.empty());
        out.println("Claim %s is %s, with %s, %s."
                .formatted(number, file.whereabouts().to().word(), by, place));
        file.whereabouts()
                .colour()
                .ifPresent(word -> out.println(
                        "Tag: %s (%s)".formatted(word, tags.meanings().get(word))));
        out.println("From there: " + file.whereabouts().to().nextWords() + ".");
    }
}
