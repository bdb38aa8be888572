package org.pumpwright.host.ui.work;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.DecisionNeeds;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.coverage.CoverageRules;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.claim.photo.Thumbnail;
import org.pumpwright.host.record.ledger.Digest;

/** Reads a claim with all that the screen shows of it. Thread-safe; called on worker threads. */
final class ClaimReader {
    private final Background background;
    private final DeskOfShop desk;

    ClaimReader(Background background, DeskOfShop desk) {
        this.background = background;
        this.desk = desk;
    }

    ClaimView view(String number) throws Exception {
        ClaimReview.Reviewed reviewed = desk.review().of(number);
        ClaimFile file = reviewed.file();
        String product = file.intake().planter().product();
        Optional<CoverageRules> rules =
                desk.data().coverage(file.intake().received().toLocalDate());
        return new ClaimView(
                reviewed,
                thumbnails(file),
                product.isEmpty() ? List.of() : desk.data().cautions(product),
                new DecisionNeeds(file, rules),
                desk.decisions().fit(file),
                desk.data().tags().meanings());
    }

    private Map<Digest, byte[]> thumbnails(ClaimFile file) {
        PhotoFolder folder = desk.photoFolder();
        Map<Digest, byte[]> small = new HashMap<>();
        for (Photo photo : file.photos()) {
            try {
                small.put(photo.sha256(), Thumbnail.png(folder.read(photo)));
            } catch (IOException e) {
                background.trouble(Trouble.named("order", String.valueOf(e.getMessage())));
            }
        }
        return small;
    }
}
