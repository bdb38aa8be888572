package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.DecisionNeeds;
import org.pumpwright.host.app.claim.FindingFit;
import org.pumpwright.host.app.claim.NextStep;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.record.ledger.Digest;

/**
 * A claim that is looked at. Thread-safe.
 *
 * @param reviewed the claim with flags and what the coverage rules say
 * @param thumbnails its pictures, small, as PNG; one that can't be read is left out
 * @param cautions what to know before the unit is opened
 * @param needs what a decision on it needs
 * @param fit which findings agree with its runs
 * @param tagColours the shop's tag colours and what each means
 */
public record ClaimView(
        ClaimReview.Reviewed reviewed,
        Map<Digest, byte[]> thumbnails,
        List<String> cautions,
        DecisionNeeds needs,
        FindingFit fit,
        Map<String, String> tagColours) {
    public ClaimView {
        thumbnails = Map.copyOf(thumbnails);
        cautions = List.copyOf(cautions);
        tagColours = Collections.unmodifiableMap(new LinkedHashMap<>(tagColours));
    }

    /** The claim. */
    public ClaimFile file() {
        return reviewed.file();
    }

    /** What it waits for. */
    public NextStep next() {
        return NextStep.of(file());
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
