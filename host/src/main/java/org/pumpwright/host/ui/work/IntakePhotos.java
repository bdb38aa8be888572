package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import org.pumpwright.host.claim.Photo;

/** Pictures of a unit that comes in; they are kept with its claim. JavaFX thread only. */
public final class IntakePhotos {
    private final Background background;
    private final ClaimLookup desk;
    private final ClaimInHand claim;
    private final BooleanProperty busy = new SimpleBooleanProperty();
    private final ObservableValue<Word> word;

    IntakePhotos(Background background, ClaimLookup desk, ClaimInHand claim) {
        this.background = background;
        this.desk = desk;
        this.claim = claim;
        word = Bindings.createObjectBinding(this::standing, claim.knownProperty(), claim.numberProperty(), busy);
    }

    private Word standing() {
        if (busy.get()) {
            return Word.of("ui.receive.photo.adding");
        }
        return claim.knownProperty()
                .get()
                .map(known -> Word.of(
                        "ui.receive.photo.count",
                        known.photos(),
                        claim.numberProperty().get().strip()))
                .orElse(Word.of("ui.receive.photo.no_claim"));
    }

    /**
     * Keeps a picture with the claim; nothing happens without a claim at the desk.
     *
     * @param person who hands it in
     */
    public void add(Path file, Photo.Shows shows, String person) {
        if (claim.knownProperty().get().isEmpty() || busy.get()) {
            return;
        }
        String number = claim.given().orElseThrow();
        busy.set(true);
        background.run(
                () -> {
                    desk.addPhoto(number, file, shows, person);
                    return desk.find(number);
                },
                found -> {
                    busy.set(false);
                    if (claim.given().equals(Optional.of(number))) {
                        found.ifPresent(claim::knows);
                    }
                },
                failure -> {
                    busy.set(false);
                    background.trouble(Trouble.of(failure));
                });
    }

    /** Whether one can be kept: there is a claim at the desk, and no other is being kept. */
    public ObservableBooleanValue possible() {
        return Bindings.createBooleanBinding(
                () -> claim.knownProperty().get().isPresent() && !busy.get(), claim.knownProperty(), busy);
    }

    /** How many there are, or why none can be kept. */
    public ObservableValue<Word> word() {
        return word;
    }
}
