package org.pumpwright.host.ui.work;

import java.util.Optional;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Language;

/**
 * Hands the papers of a bucket test out: made when they are asked for, of its entry with the signature in it, or of its record alone
 * while it waits to be entered. JavaFX thread only.
 */
public final class BucketPaperDesk {
    private final Background background;
    private final PaperDesk desk;
    private final PaperWork work;
    private final Opener opener;

    /** Hands papers out that this desk makes. */
    public BucketPaperDesk(Background background, PaperDesk desk, Opener opener) {
        this.background = background;
        this.desk = desk;
        this.opener = opener;
        work = new PaperWork(background, desk, opener);
    }

    /** Makes a paper and opens it. */
    public void open(PaperKind kind, BucketDesk.Kept test, Language language, UnitSystem units) {
        work.open(
                kind,
                () -> new PaperWork.Source(found(test), Optional.empty()),
                new PaperDesk.Manner(language, units),
                made -> {});
    }

    private Found found(BucketDesk.Kept test) throws Exception {
        Optional<String> entry = test.entry();
        return entry.isPresent() ? desk.find(entry.get()) : new Found.Bucket(test.record(), Optional.empty());
    }

    /** Opens the certificate for machines, which was made with the record. */
    public void openCertificate(BucketDesk.Kept test) {
        PaperWork.open(background, opener, test.papers().certificate());
    }
}
