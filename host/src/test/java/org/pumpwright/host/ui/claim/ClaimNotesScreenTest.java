package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.claim.Waiver;

/** What a person notes on a claim: observations, a rinse, a step gone past, a correction of the last note. */
final class ClaimNotesScreenTest extends DeskWindow {
    @Test
    void anObservationIsNotedAndCorrected() throws Exception {
        openExample();
        press(KeyCode.F4);
        assertThat(said("claim-need")).isEqualTo("Write the note.");
        type("note-words", "the plug is green inside");
        assertThat(said("claim-need")).isEqualTo("Write your name.");
        type("note-person", "Kim Clerk");
        looksGood("claim-note");
        press(KeyCode.F1);
        until(() ->
                model.shownProperty().get().orElseThrow().file().observations().size() == 1);
        free();
        press(KeyCode.F4);
        select("note-kinds", 7);
        type("note-words", "the left ear");
        type("note-corrects", "it is the head");
        looksGood("claim-note-again");
        press(KeyCode.F1);
        until(() ->
                !model.shownProperty().get().orElseThrow().file().corrections().isEmpty());
        free();
        assertThat(file().observations()).hasSize(1);
        assertThat(file().observations().get(0).seen()).isEqualTo(Seen.CRACKED_HEAD);
        assertThat(file().observations().get(0).person()).isEqualTo("Kim Clerk");
        looksGood("claim-noted");
    }

    @Test
    void aRinseIsTheNextStepOfAWholeIntake() throws Exception {
        openExample();
        press(KeyCode.F1);
        type("note-rinses", "none");
        assertThat(said("claim-need")).isEqualTo("Write how many times, 1 to 50.");
        type("note-rinses", "3");
        type("note-person", "Sam Shop");
        looksGood("claim-rinse");
        press(KeyCode.F1);
        until(() -> model.shownProperty()
                .get()
                .orElseThrow()
                .file()
                .intake()
                .decontamination()
                .confirmed());
        assertThat(file().intake().decontamination().rinses()).isEqualTo(3);
    }

    @Test
    void aNamedPersonAnswersForATestWithoutARinse() throws Exception {
        openExample();
        press(KeyCode.F4);
        select("note-kinds", 11);
        type("note-person", "Kim Clerk");
        assertThat(said("claim-need")).isEqualTo("Write why the unit is tested like this.");
        type("note-words", "it is new out of the box");
        looksGood("claim-waiver");
        press(KeyCode.F1);
        until(() -> !model.shownProperty().get().orElseThrow().file().waivers().isEmpty());
        Waiver waiver = file().waivers().get(0);
        assertThat(waiver.step()).isEqualTo(Waiver.Step.DECONTAMINATION);
        assertThat(waiver.reason()).isEqualTo("it is new out of the box");
        assertThat(said("claim-next")).startsWith("The unit is to be tested");
    }
}
