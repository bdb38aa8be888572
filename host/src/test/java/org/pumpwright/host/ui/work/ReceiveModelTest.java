package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.ui.WindowTest;

/** A unit comes in, without a window. */
final class ReceiveModelTest {
    @TempDir
    Path records;

    private final WorkInHand work = new WorkInHand();
    private ReceiveModel model;

    private final Desk desk = new Desk();

    @BeforeEach
    void load() {
        Background background = Background.inline(trouble -> {
            throw new AssertionError(trouble.toString());
        });
        model = new ReceiveModel(
                background, WindowTest.services(records).shelf(), desk, () -> List.of("Ines", "Rosa"), work);
        model.load();
    }

    /** A desk with one claim. */
    private static final class Desk implements ClaimLookup {
        private final List<Handling> told = new ArrayList<>();
        private List<String> lacking = List.of();
        private Handling handling = Handling.UNKNOWN;
        private int photos;

        @Override
        public Optional<Known> find(String number) {
            return number.equals("C-7") ? Optional.of(claim()) : Optional.empty();
        }

        private Known claim() {
            return new Known(
                    Optional.of("demo-pump"),
                    Optional.empty(),
                    Optional.of("AB-9"),
                    Optional.of(Complaint.WONT_START),
                    "it hums and sits there",
                    "UAN 28",
                    handling,
                    lacking,
                    photos);
        }

        @Override
        public void handled(String number, Handling how) {
            told.add(how);
        }

        @Override
        public int addPhoto(String number, Path file, Photo.Shows shows, String person) {
            photos++;
            return photos;
        }
    }

    @Test
    void modelsAreFoundByPartOfTheirName() {
        int all = model.unit().shown().size();
        model.unit().filterProperty().set("DIAphragm");
        assertThat(model.unit().shown())
                .hasSize(1)
                .first()
                .extracting(each -> each.id())
                .isEqualTo("demo-pump");
        model.unit().filterProperty().set("");
        assertThat(model.unit().shown()).hasSize(all);
    }

    @Test
    void theComplaintProposesThePlan() {
        choose("demo-pump");
        assertThat(plan()).isEqualTo("quick-12v-pump");
        model.unit().complaintProperty().set(Optional.of(new ComplaintChoice(Optional.of(Complaint.WONT_START))));
        assertThat(plan()).isEqualTo("restart-12v-pump");
        choose("demo-meter");
        assertThat(plan()).isEqualTo("meter-check");
    }

    @Test
    void whatIsMissingIsNamedInTheOrderOfTheScreenAndStopsTheUnitAtTheDoor() {
        assertThat(model.missing())
                .extracting(Word::key)
                .containsExactly(
                        "ui.receive.missing.technician",
                        "ui.receive.missing.model",
                        "ui.receive.missing.serial",
                        "ui.receive.missing.product",
                        "ui.receive.missing.decontaminated",
                        "ui.receive.missing.complaint");
        model.accept(() -> {});
        assertThat(work.orderProperty().get()).isEmpty();
    }

    @Test
    void aClaimFillsInWhatWasNotSaidYet() {
        model.serialProperty().set("XY-1");
        model.claim().numberProperty().set("C-7");
        model.claim().lookUp();
        assertThat(model.serialProperty().get()).isEqualTo("XY-1");
        assertThat(plan()).isEqualTo("restart-12v-pump");
        model.claim().numberProperty().set("C-8");
        model.claim().lookUp();
        assertThat(plan()).isEqualTo("restart-12v-pump");
    }

    @Test
    void aUnitTakenInLeavesTheFieldsEmptyButForTheTechnician() {
        choose("demo-pump");
        model.noPlateProperty().set(true);
        model.scannedPlate(" AB-2 ");
        model.technicians().nameProperty().set("Rosa");
        model.unit().complaintProperty().set(Optional.of(new ComplaintChoice(Optional.empty())));
        model.rinsing().productProperty().set(Optional.of(Product.PESTICIDE));
        assertThat(model.missing()).hasSize(1);
        model.rinsing().clean();
        model.accept(() -> {});

        WorkOrder order = work.orderProperty().get().orElseThrow();
        assertThat(order.serial()).isEqualTo("AB-2");
        assertThat(order.product()).isEqualTo(Product.PESTICIDE);
        assertThat(model.serialProperty().get()).isEmpty();
        assertThat(model.rinsing().stateProperty().get()).isEqualTo(Rinsing.State.NOT_SAID);
        assertThat(order.job().handling())
                .isEqualTo(new Handling(Optional.of("pesticide"), Optional.of("Rosa"), Optional.empty()));
        assertThat(model.technicians().nameProperty().get()).isEqualTo("Rosa");
        assertThat(model.technicians().recent()).containsExactly("Rosa", "Ines");
    }

    @Test
    void aNumberThatIsNotAtTheDeskIsSaidSoAndUsedAllTheSame() {
        fill();
        model.claim().numberProperty().set("C-8");
        assertThat(model.claim().stateProperty().get()).isEqualTo(ClaimInHand.State.TYPED);
        model.accept(() -> {});
        assertThat(work.orderProperty().get().orElseThrow().job().claim()).contains("C-8");
        assertThat(desk.told).isEmpty();
    }

    @Test
    void aClaimThatTurnsUpOnlyWhenTheUnitIsTakenInIsShownFirst() {
        fill();
        model.claim().numberProperty().set("C-7");
        model.accept(() -> {});
        assertThat(work.orderProperty().get()).isEmpty();
        assertThat(model.claim().stateProperty().get()).isEqualTo(ClaimInHand.State.FOUND);
        assertThat(model.differences()).extracting(Word::key).containsExactly("ui.receive.differs.serial");
        model.accept(() -> {});
        assertThat(work.orderProperty().get().orElseThrow().serial()).isEqualTo("XY-1");
        assertThat(desk.told)
                .containsExactly(new Handling(Optional.of("UAN 28"), Optional.of("Rosa"), Optional.empty()));
    }

    @Test
    void aUnitThatIsNotRinsedComesToTheStandOnlyWhenSomebodyAnswersForIt() {
        fill();
        model.rinsing().unsay();
        assertThat(model.onlyRinsingProperty().get()).isTrue();
        model.accept(() -> {});
        assertThat(work.orderProperty().get()).isEmpty();
        model.rinsing().answer("Ines", "the planter stands in the field");
        model.accept(() -> {});
        Handling handling = work.orderProperty().get().orElseThrow().job().handling();
        assertThat(handling.cleanBy()).isEmpty();
        assertThat(handling.uncleaned()).contains(new Decision("Ines", "the planter stands in the field"));
    }

    @Test
    void whatTheClaimSaysOfRinsingAndProductIsTakenOver() {
        desk.handling = new Handling(Optional.of("UAN 28"), Optional.of("Pat"), Optional.empty());
        model.scannedClaim(" C-7 ");
        assertThat(model.rinsing().productProperty().get()).contains(Product.FERTILIZER);
        assertThat(model.rinsing().stateProperty().get()).isEqualTo(Rinsing.State.CLEAN);
        assertThat(model.serialProperty().get()).isEqualTo("AB-9");
        model.technicians().nameProperty().set("Rosa");
        model.accept(() -> {});
        assertThat(work.orderProperty().get().orElseThrow().job().handling().cleanBy())
                .contains("Pat");
    }

    @Test
    void aClaimWithGapsInItsIntakeKeepsItsUnitOffTheStand() {
        fill();
        desk.lacking = List.of("claim.missing.seal");
        model.scannedClaim("C-7");
        assertThat(model.missing()).extracting(Word::key).containsExactly("ui.receive.missing.intake");
    }

    @Test
    void picturesAreKeptWithTheClaimAndWithoutOneItIsSaidThatTheyCanNot() {
        model.photos().add(Path.of("plate.jpg"), Photo.Shows.PLATE, "Rosa");
        assertThat(model.photos().word().getValue().key()).isEqualTo("ui.receive.photo.no_claim");
        model.scannedClaim("C-7");
        model.photos().add(Path.of("plate.jpg"), Photo.Shows.PLATE, "Rosa");
        assertThat(model.photos().word().getValue()).isEqualTo(Word.of("ui.receive.photo.count", 1, "C-7"));
    }

    @Test
    void whoTestedLatelyIsOfferedTheLatestFirst() {
        assertThat(model.technicians().recent()).containsExactly("Ines", "Rosa");
    }

    @Test
    void noUnitIsTakenInWhileARunGoesOn() {
        work.busyProperty().set(true);
        assertThat(model.missing()).extracting(Word::key).contains("ui.receive.missing.run");
    }

    private void fill() {
        choose("demo-pump");
        model.serialProperty().set("XY-1");
        model.technicians().nameProperty().set("Rosa");
        model.unit().complaintProperty().set(Optional.of(new ComplaintChoice(Optional.of(Complaint.LOW))));
        model.rinsing().productProperty().set(Optional.of(Product.FERTILIZER));
        model.rinsing().clean();
    }

    private void choose(String id) {
        model.unit()
                .modelProperty()
                .set(model.unit().shown().stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst());
    }

    private String plan() {
        return model.unit().planProperty().get().orElseThrow().id();
    }
}
