package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.record.ledger.Digest;

/**
 * A claim that is looked at. Thread-safe.
 *
 * @param reviewed the claim with flags and what the coverage rules say
 * @param thumbnails its pictures, small, as PNG; one that can't be read is left out
 * @param cautions what to know before the unit is opened
 */
public record ClaimView(ClaimReview.Reviewed reviewed, Map<Digest, byte[]> thumbnails, List<String> cautions) {
    public ClaimView {
        thumbnails = Map.copyOf(thumbnails);
        cautions = List.copyOf(cautions);
    }

    /** What comes next at the desk. */
    public enum NextStep {
        COMPLETE_INTAKE,
        TEST,
        FIND,
        DECIDE,
        PACK
    }

    /** The claim. */
    public ClaimFile file() {
        return reviewed.file();
    }

    /** The next step, in the order of the work. */
    public NextStep next() {
        if (file().missing().stream().anyMatch(Missing::beforeTheTest)) {
            return NextStep.COMPLETE_INTAKE;
        }
        if (file().decision().isPresent()) {
            return NextStep.PACK;
        }
        if (file().finding().isPresent()) {
            return NextStep.DECIDE;
        }
        return file().runs().isEmpty() ? NextStep.TEST : NextStep.FIND;
    }

    /** Number, state and unit on one line. */
    public Word headline() {
        return Word.of(
                file().intake().practice() ? "ui.claim.head.practice" : "ui.claim.head",
                file().number(),
                Word.of(file().whereabouts().to().key()),
                file().whereabouts().at().toLocalDate());
    }

    /** What to do next, in a sentence. */
    public Word nextSentence() {
        return Word.of("ui.claim.next." + next().name().toLowerCase(Locale.ROOT));
    }

    /** Its pictures. */
    public List<Photo> photos() {
        return file().photos();
    }

    /** Its runs, the newest first. */
    public List<ClaimRun> runs() {
        List<ClaimRun> runs = new ArrayList<>(file().runs());
        Collections.reverse(runs);
        return runs;
    }
}
