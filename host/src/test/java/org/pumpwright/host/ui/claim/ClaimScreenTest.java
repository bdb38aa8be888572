package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.Moment;

/** A claim from its first look to its packet, through the window. */
final class ClaimScreenTest extends DeskWindow {
    @Test
    void aNewClaimSaysWhatComesNextAndShowsFileAndLineOfEachRule() throws Exception {
        openExample();
        assertThat(said("claim-next")).startsWith("Nobody has confirmed that the unit is clean");
        assertThat(onScreen(() -> model.standing().stream()
                        .map(row -> window.saying().now(row.remedy()))
                        .toList()))
                .contains("Rule: coverage/example-2026.yaml:7");
        looksGood("claim-new");
    }

    @Test
    void theCautionsOfTheExampleAreSaidInTheWindowsLanguage() throws Exception {
        openExample();
        onScreen(() -> {
            window.saying().languageProperty().set(Language.ES);
            return true;
        });
        assertThat(onScreen(() -> model.standing().stream()
                        .filter(row -> row.name().key().equals("ui.claim.caution"))
                        .map(row -> window.saying().now(row.finding()))
                        .toList()))
                .hasSizeGreaterThan(4)
                .anyMatch(said -> said.startsWith("Que nunca se junte con soluciones de nitrato de calcio"))
                .noneMatch(said -> said.contains(" the "));
    }

    @Test
    void aUnitGoesWhereTheRulesAllowAndGetsItsTag() throws Exception {
        openExample();
        press(KeyCode.F3);
        assertThat(off("action-1")).isTrue();
        type("claim-person", "Terry Tester");
        type("claim-place", "shelf 3");
        type("claim-tag", "T-31");
        fire("tag-red");
        looksGood("claim-move");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().moves().size() == 2);
        assertThat(file().whereabouts().place()).isEqualTo("shelf 3");
        assertThat(file().whereabouts().tag()).isEqualTo("T-31");
        assertThat(file().whereabouts().colour()).contains("red");
    }

    @Test
    void aTechnicianCanOnlySignWhatTheRunsSay() throws Exception {
        openExample();
        addRun();
        assertThat(said("claim-next")).startsWith("A technician signs");
        press(KeyCode.F1);
        select("finding-categories", 3);
        assertThat(said("claim-need")).startsWith("C4 does not agree with the runs on record");
        assertThat(off("action-1")).isTrue();
        select("finding-categories", 1);
        fire("reproduced-YES");
        assertThat(said("claim-need")).isEqualTo("Write what it rests on.");
        type("finding-basis", "flow low at every point");
        type("finding-parts", "valve plate, spring");
        looksGood("claim-finding");
        type("finding-signer", "Terry Tester");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().finding().isPresent());
        assertThat(file().finding().orElseThrow().category()).isEqualTo(Category.C2);
        assertThat(file().finding().orElseThrow().parts()).containsExactly("valve plate", "spring");
        free();
        looksGood("claim-tested");
    }

    private void findAndGoToTheDecision() throws Exception {
        openExample();
        addRun();
        press(KeyCode.F1);
        select("finding-categories", 1);
        fire("reproduced-YES");
        type("finding-basis", "flow low at every point");
        type("finding-parts", "diaphragm");
        type("finding-signer", "Terry Tester");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().finding().isPresent());
        free();
        press(KeyCode.F1);
    }

    @Test
    void whatTheDecisionLacksIsSaidAndSigningWaits() throws Exception {
        findAndGoToTheDecision();
        assertThat(said("claim-need")).isEqualTo("Choose what is decided.");
        fire("outcome-APPROVE");
        assertThat(said("claim-need")).startsWith("The rules ask for more first: photo of the plate");
        assertThat(said("claim-against")).startsWith("Against a rule: No consumable part");
        type("decision-signer", "terry  tester");
        looksGood("claim-lacking");
        desk.photos().add("EX-1001", photo("plate"), Photo.Shows.PLATE, "Kim Clerk");
        lookAt("EX-1001");
        press(KeyCode.F1);
        fire("outcome-APPROVE");
        assertThat(said("claim-need")).startsWith("The rules ask for more first: photo of the connector");
        fire("outcome-GOODWILL");
        type("decision-reason", "worn early");
        type("decision-signer", "terry  tester");
        assertThat(said("claim-need")).startsWith("terry  tester tested this unit");
        assertThat(off("action-1")).isTrue();
        looksGood("claim-same-hand");
        type("decision-signer", "Kim Clerk");
        type("decision-amount", "1,200");
        assertThat(said("claim-need")).startsWith("Write the amount like");
        type("decision-amount", "1200");
        assertThat(said("claim-need")).isEqualTo("Above this value two persons sign.");
        type("decision-second", "Lee Chief");
        assertThat(said("claim-need")).isEmpty();
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().decision().isPresent());
        assertThat(file().decision().orElseThrow().second()).contains("Lee Chief");
    }

    @Test
    void aDecisionThatTakesThePlaceOfAnotherNeedsItsOwnReason() throws Exception {
        findAndGoToTheDecision();
        fire("outcome-REFER");
        type("decision-reason", "the factory decides");
        type("decision-signer", "Kim Clerk");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().decision().isPresent());
        free();
        looksGood("claim-decided");
        press(KeyCode.F5);
        looksGood("claim-more");
        press(KeyCode.F5);
        fire("outcome-GOODWILL");
        type("decision-reason", "a good customer");
        type("decision-signer", "Kim Clerk");
        type("decision-amount", "80");
        assertThat(said("claim-need")).isEqualTo("Write why it takes the place of the one before.");
        type("decision-corrects", "the factory said no");
        looksGood("claim-decide-again");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().decisions().size() == 2);
        assertThat(file().decision().orElseThrow().outcome()).isEqualTo(Outcome.GOODWILL);
        assertThat(file().corrections().get(0).reason()).isEqualTo("the factory said no");
    }

    @Test
    void papersOpenAndThePacketIsMadeAndOpened() throws Exception {
        openExample();
        addRun();
        press(KeyCode.F5);
        press(KeyCode.F1);
        looksGood("claim-papers");
        press(KeyCode.F1);
        until(() -> !opened.isEmpty());
        free();
        assertThat(opened.get(0).getFileName()).hasToString("EX-1001-clerk.pdf");
        assertThat(Files.readAllBytes(opened.get(0))).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        press(KeyCode.F5);
        press(KeyCode.F1);
        press(KeyCode.F2);
        until(() -> opened.size() == 2);
        free();
        assertThat(opened.get(1).getFileName()).hasToString("EX-1001-customer.pdf");
        press(KeyCode.F5);
        press(KeyCode.F1);
        press(KeyCode.F3);
        until(() -> model.papers().packedProperty().get().isPresent());
        Path zip = onScreen(() -> model.papers().packedProperty().get().orElseThrow());
        assertThat(Files.size(zip)).isGreaterThan(10_000);
        looksGood("claim-packed");
        press(KeyCode.F2);
        until(() -> opened.contains(zip));
    }

    @Test
    void aRunIsLookedAtInTheHistory() throws Exception {
        openExample();
        addRun();
        press(KeyCode.F5);
        press(KeyCode.F3);
        until(() -> history.shownProperty().get().isPresent());
        assertThat(onScreen(window::current)).isEqualTo(Moment.HISTORY);
    }

    @Test
    void aRefusalNamesNoCommandAndNoOption() throws Exception {
        openExample();
        onScreen(() -> {
            model.open("NOT-THERE");
            return true;
        });
        until(() -> window.scene().lookup("#banner").isVisible());
        String banner = onScreen(() -> window.scene().lookup("#banner").lookupAll(".label").stream()
                .map(label -> ((Labeled) label).getText())
                .reduce("", (one, other) -> one + "\n" + other));
        assertThat(banner)
                .contains("there is no claim 'NOT-THERE' on record.")
                .contains("Do it at Claim in this window.")
                .doesNotContain("pumpwright claim");
    }
}
