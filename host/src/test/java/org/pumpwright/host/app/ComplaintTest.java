package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.bench.Firmware;

final class ComplaintTest {
    private static final Shelf SHELF = new Shelf(Firmware.root().resolve("fixtures"));

    @ParameterizedTest
    @CsvSource({
        "quits-hot, demo-pump, soak-12v-pump",
        "intermittent, demo-pump, wiggle-12v-pump",
        "reads-with-no-flow, demo-pump, zero-flow-12v-pump",
        "wont-start, demo-pump, restart-12v-pump",
        "leaks, demo-pump, dead-head-12v-pump",
        "no-flow, demo-hydraulic-pump, override-split",
        "leaks, demo-hydraulic-pump, valve-sweep",
        "reads-wrong, demo-meter, meter-check",
        "blows-fuse, demo-harness, harness-drop",
        "low, demo-driver, driver-loads"
    })
    void theComplaintPicksThePlan(String word, String model, String plan) throws Exception {
        assertThat(Complaint.ofWord(word).proposal(SHELF.model(model)).plan()).isEqualTo(plan);
    }

    @ParameterizedTest
    @CsvSource({"demo-pump", "demo-hydraulic-pump", "demo-driver", "demo-meter", "demo-harness"})
    void everyProposedPlanIsOnTheShelfAndForThatKind(String model) throws Exception {
        for (Complaint complaint : Complaint.values()) {
            Complaint.Proposal proposal = complaint.proposal(SHELF.model(model));
            assertThat(SHELF.plan(proposal.plan()).kind())
                    .as(complaint.word())
                    .isEqualTo(SHELF.model(model).kind());
            assertThat(proposal.reason()).as(complaint.word()).isNotBlank();
        }
    }

    @Test
    void anUnknownComplaintNamesTheKnownOnes() {
        assertThatThrownBy(() -> Complaint.ofWord("rattles"))
                .isInstanceOf(OrderException.class)
                .hasMessage(
                        "there is no complaint 'rattles'. Known are: no-flow, low, surging, wont-start, quits-hot, leaks,"
                                + " blows-fuse, reads-wrong, reads-with-no-flow, intermittent.");
    }
}
