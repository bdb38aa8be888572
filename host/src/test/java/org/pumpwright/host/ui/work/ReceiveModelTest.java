package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.ui.WindowTest;

/** A unit comes in, without a window. */
final class ReceiveModelTest {
    @TempDir
    Path records;

    private final WorkInHand work = new WorkInHand();
    private ReceiveModel model;

    @BeforeEach
    void load() {
        ClaimLookup claims = number -> number.equals("C-7")
                ? Optional.of(new ClaimLookup.Known(
                        Optional.of("demo-pump"), Optional.of("AB-9"), Optional.of(Complaint.WONT_START)))
                : Optional.empty();
        Background background = Background.inline(trouble -> {
            throw new AssertionError(trouble.toString());
        });
        model = new ReceiveModel(background, WindowTest.services(records).shelf(), claims, work);
        model.load();
    }

    @Test
    void modelsAreFoundByPartOfTheirName() {
        int all = model.shown().size();
        model.filterProperty().set("DIAphragm");
        assertThat(model.shown())
                .hasSize(1)
                .first()
                .extracting(each -> each.id())
                .isEqualTo("demo-pump");
        model.filterProperty().set("");
        assertThat(model.shown()).hasSize(all);
    }

    @Test
    void theComplaintProposesThePlan() {
        choose("demo-pump");
        assertThat(plan()).isEqualTo("quick-12v-pump");
        model.complaintProperty().set(Optional.of(new ComplaintChoice(Optional.of(Complaint.WONT_START))));
        assertThat(plan()).isEqualTo("restart-12v-pump");
        choose("demo-meter");
        assertThat(plan()).isEqualTo("meter-check");
    }

    @Test
    void whatIsMissingIsNamedInTheOrderOfTheScreenAndStopsTheUnitAtTheDoor() {
        assertThat(model.missing())
                .extracting(Word::key)
                .containsExactly(
                        "ui.receive.missing.model",
                        "ui.receive.missing.serial",
                        "ui.receive.missing.technician",
                        "ui.receive.missing.complaint",
                        "ui.receive.missing.product",
                        "ui.receive.missing.decontaminated");
        model.accept();
        assertThat(work.orderProperty().get()).isEmpty();
    }

    @Test
    void aClaimFillsInWhatWasNotSaidYet() {
        model.serialProperty().set("XY-1");
        model.claimProperty().set("C-7");
        model.lookUpClaim();
        assertThat(model.serialProperty().get()).isEqualTo("XY-1");
        assertThat(plan()).isEqualTo("restart-12v-pump");
        model.claimProperty().set("C-8");
        model.lookUpClaim();
        assertThat(plan()).isEqualTo("restart-12v-pump");
    }

    @Test
    void aUnitTakenInLeavesTheFieldsEmptyButForTheTechnician() {
        choose("demo-pump");
        model.noPlateProperty().set(true);
        model.scanned(" AB-2 ");
        model.technicianProperty().set("Rosa");
        model.complaintProperty().set(Optional.of(new ComplaintChoice(Optional.empty())));
        model.productProperty().set(Optional.of(Product.PESTICIDE));
        assertThat(model.missing()).hasSize(1);
        model.decontaminatedProperty().set(true);
        model.accept();

        WorkOrder order = work.orderProperty().get().orElseThrow();
        assertThat(order.serial()).isEqualTo("AB-2");
        assertThat(order.product()).isEqualTo(Product.PESTICIDE);
        assertThat(model.serialProperty().get()).isEmpty();
        assertThat(model.decontaminatedProperty().get()).isFalse();
        assertThat(model.technicianProperty().get()).isEqualTo("Rosa");
        assertThat(model.technicians()).containsExactly("Rosa");
    }

    @Test
    void noUnitIsTakenInWhileARunGoesOn() {
        work.busyProperty().set(true);
        assertThat(model.missing()).extracting(Word::key).contains("ui.receive.missing.run");
    }

    private void choose(String id) {
        model.modelProperty()
                .set(model.shown().stream().filter(each -> each.id().equals(id)).findFirst());
    }

    private String plan() {
        return model.planProperty().get().orElseThrow().id();
    }
}
