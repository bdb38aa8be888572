package org.pumpwright.host.report.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Picture;
import org.pumpwright.host.text.Texts;

/** Two photos of the unit: its plate, and damage where there is any, else the whole unit. One that is missing is named. Thread-safe. */
final class PhotoPair {
    private static final int HEIGHT = 96;

    private final ClerkEvidence evidence;
    private final Texts texts;

    PhotoPair(ClerkEvidence evidence, Texts texts) {
        this.evidence = evidence;
        this.texts = texts;
    }

    Tag draw() {
        Photo.Shows second = newest(Photo.Shows.DAMAGE).isPresent() ? Photo.Shows.DAMAGE : Photo.Shows.WHOLE;
        Tag row = Tag.of("tr");
        List.of(Photo.Shows.PLATE, second).forEach(shows -> row.add(cell(shows)));
        return Tag.of("table", "photos").add(row);
    }

    private Optional<Photo> newest(Photo.Shows shows) {
        return evidence.file().photos().stream()
                .filter(photo -> photo.shows() == shows)
                .reduce((older, newer) -> newer);
    }

    private Tag cell(Photo.Shows shows) {
        String name = texts.say(shows.key());
        Optional<Photo> photo = newest(shows);
        if (photo.isEmpty()) {
            return Tag.withText("td", texts.say("clerk.photo_missing", name)).set("class", "photo no-photo");
        }
        Optional<Picture> picture =
                Optional.ofNullable(evidence.thumbnails().get(photo.get().sha256()));
        String caption = texts.say("clerk.photo", name, photo.get().takenAt().toLocalDate());
        return picture.map(found -> Tag.of("td", "photo")
                        .add(found.draw(HEIGHT), Tag.withText("p", caption).set("class", "small")))
                .orElseGet(() -> Tag.withText("td", texts.say("clerk.photo_not_printed", caption))
                        .set("class", "photo no-photo"));
    }
}
