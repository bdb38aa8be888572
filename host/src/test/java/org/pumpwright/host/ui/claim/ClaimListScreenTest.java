package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.ui.work.Row;

/** The list of claims: what waits, how long, whose move it is, and how a claim is found. */
final class ClaimListScreenTest extends DeskWindow {
    private void takeThreeIn() throws Exception {
        takeInExample();
        takeIn("EX-1002", "DP-2512-0418");
        takeIn("EX-1003", "DP-2601-0003");
        desk.desk().act("EX-1002", (file, now) -> new Act.Rinsed("Sam Shop", 2), Optional.empty());
        desk.desk()
                .act(
                        "EX-1003",
                        (file, now) -> new Act.Moved(new CustodyMove(
                                now, CustodyState.QUARANTINED, "Sam Shop", "cage", "T-9", Optional.empty())),
                        Optional.empty());
        refresh();
        until(() -> model.list().rows().size() == 3);
    }

    private List<String> lines() throws Exception {
        return onScreen(() -> model.list().rows().stream()
                .map(Row::remedy)
                .map(window.saying()::now)
                .toList());
    }

    @Test
    void eachLineSaysWhoseMoveItIs() throws Exception {
        takeThreeIn();
        assertThat(lines())
                .containsExactly(
                        "Shop: rinse the unit and note it", "Stand: test the unit", "Shop: rinse the unit and note it");
        assertThat(said("claim-headline")).isEqualTo("3 claims. Waiting for the desk: 0");
        looksGood("claim-list");
    }

    @Test
    void aClaimWithARunWaitsForTheTechnician() throws Exception {
        openExample();
        addRun();
        onScreen(() -> {
            model.back();
            return true;
        });
        until(() -> model.list().rows().size() == 1);
        assertThat(lines()).containsExactly("Technician: sign what was found");
    }

    @Test
    void claimsAreListedByState() throws Exception {
        takeThreeIn();
        fire("which-QUARANTINED");
        assertThat(onScreen(() -> model.list().rows().size())).isEqualTo(1);
        looksGood("claim-quarantined");
        fire("which-LEFT");
        assertThat(said("claim-headline")).isEqualTo("None in this state");
    }

    @Test
    void aPartOfNumberOrSerialNarrowsTheListAndEnterOpensTheOnlyOne() throws Exception {
        takeThreeIn();
        type("claim-sought", "2601");
        assertThat(onScreen(() -> model.list().rows().size())).isEqualTo(1);
        looksGood("claim-search");
        press(KeyCode.F4);
        assertThat(onScreen(() -> model.list().rows().size())).isEqualTo(3);
        select("claim-list", 1);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        assertThat(file().number()).isEqualTo("EX-1002");
    }

    @Test
    void aScannedSerialOrNumberOpensItsClaim() throws Exception {
        takeThreeIn();
        scan("DP-2601-0003");
        until(() -> model.shownProperty().get().isPresent());
        assertThat(file().number()).isEqualTo("EX-1003");
        free();
        scan("ex-1001");
        until(() -> model.shownProperty().get().orElseThrow().file().number().equals("EX-1001"));
    }

    @Test
    void aScannedSerialThatIsNewGoesIntoANewClaim() throws Exception {
        takeThreeIn();
        scan("DP-2602-7777");
        until(() -> model.list().rows().isEmpty());
        assertThat(said("claim-headline")).startsWith("No claim with \"DP-2602-7777\"");
        press(KeyCode.F2);
        press(KeyCode.F1);
        assertThat(typed("intake-SERIAL")).isEqualTo("DP-2602-7777");
    }
}
