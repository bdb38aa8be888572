package org.pumpwright.host.ui.receive;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.record.RecentTechnicians;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.history.RunsOnRecord;
import org.pumpwright.host.ui.work.ClaimInHand.State;
import org.pumpwright.host.ui.work.DeskClaims;
import org.pumpwright.host.ui.work.Product;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.Rinsing;
import org.pumpwright.host.ui.work.Technicians;
import org.pumpwright.host.ui.work.WorkInHand;
import org.pumpwright.host.ui.work.WorkOrder;

/** A unit comes in for a claim at the desk of the shop; every unit and every name here is invented. */
final class ReceiveScreenTest extends FramedTest {
    private static final String CLAIM = "EX-1001";

    private final WorkInHand work = new WorkInHand();
    private DeskOfShop desk;
    private ReceiveModel model;

    @BeforeEach
    void build() throws Exception {
        desk = new DeskOfShop(services.book(), services.home().resolve("fixtures"), records, CLOCK);
        Path sheet = services.home().resolve("fixtures/claims/example-sheet.yaml");
        desk.desk().open(IntakeSheetFile.read(sheet, OffsetDateTime.now(CLOCK)));
        RunsOnRecord.add(services, "AB-1", "healthy", Optional.empty(), 0);
        open(() -> {
            model = new ReceiveModel(
                    background,
                    services.shelf(),
                    new DeskClaims(desk),
                    () -> new RecentTechnicians(services.book()).names(Technicians.MOST),
                    work);
            window.add(new ReceiveScreen(window, model));
            return true;
        });
        until(() -> window.scene().lookup("#model-demo-pump") != null
                && !model.technicians().recent().isEmpty());
    }

    @Test
    void aScannedClaimFillsInWhatTheDeskKnowsAndShowsIt() throws Exception {
        press(KeyCode.F3);
        scanClaim();
        assertThat(onScreen(() -> model.serialProperty().get())).isEqualTo("DP-2512-0417");
        assertThat(onScreen(
                        () -> model.unit().planProperty().get().orElseThrow().id()))
                .isEqualTo("full-12v-pump");
        assertThat(onScreen(() -> model.rinsing().productProperty().get())).contains(Product.FERTILIZER);
        assertThat(onScreen(() -> ((Labeled) window.scene().lookup(".claim-standing")).getText()))
                .contains("At the desk");
        assertThat(onScreen(() -> model.technicians().recent())).containsExactly("Terry Tester");
        fire("name-0");
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "receive-claim")).isEmpty();
    }

    @Test
    void anotherSerialThanTheClaimSaysIsToldInWords() throws Exception {
        scan("XY-4711");
        press(KeyCode.F3);
        scanClaim();
        assertThat(onScreen(() -> ((Labeled) window.scene().lookup(".claim-standing")).getText()))
                .contains("DP-2512-0417")
                .contains("XY-4711");
        assertThat(ScreenPictures.of(this, window, "receive-differs")).isEmpty();
        press(KeyCode.F3);
        assertThat(ScreenPictures.of(this, window, "receive-differs-unit")).isEmpty();
    }

    @Test
    void aNumberThatIsNotAtTheDeskIsSaidSo() throws Exception {
        press(KeyCode.F3);
        scan("NO-SUCH-1");
        until(() -> model.claim().stateProperty().get() == State.NOT_AT_DESK);
        assertThat(onScreen(() -> ((Labeled) window.scene().lookup(".claim-standing")).getText()))
                .isEqualTo("Not at the desk");
        assertThat(onScreen(() -> window.scene().lookup("#add-photo").isDisabled()))
                .isTrue();
        assertThat(ScreenPictures.of(this, window, "receive-no-claim")).isEmpty();
    }

    @Test
    void aPictureIsKeptWithTheClaim() throws Exception {
        press(KeyCode.F3);
        scanClaim();
        fire("name-0");
        Path picture = records.resolve("plate.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
        fire("add-photo");
        type("photo-file", "'" + picture + "'");
        press(KeyCode.F1);
        until(() -> model.claim().knownProperty().get().orElseThrow().photos() == 1);
        assertThat(claim().photos())
                .singleElement()
                .extracting(each -> each.person())
                .isEqualTo("Terry Tester");
    }

    @Test
    void aUnitIsAskedForItsRinsingAndTheClaimLearnsWhoHasMadeSure() throws Exception {
        ready();
        press(KeyCode.F1);
        assertThat(onScreen(() -> window.scene().lookup("#prompt").isVisible())).isTrue();
        assertThat(ScreenPictures.of(this, window, "receive-rinse")).isEmpty();
        press(KeyCode.F1);
        until(() -> work.orderProperty().get().isPresent());
        WorkOrder order = onScreen(() -> work.orderProperty().get().orElseThrow());
        assertThat(order.job().claim()).contains(CLAIM);
        assertThat(order.job().handling())
                .isEqualTo(new Handling(Optional.of("uan-32"), Optional.of("Terry Tester"), Optional.empty()));
        assertThat(claim().intake().decontamination().confirmedBy()).contains("Terry Tester");
    }

    @Test
    void aUnitThatIsNotRinsedNeedsANameAndAReasonAndBothStandInTheClaim() throws Exception {
        ready();
        press(KeyCode.F1);
        press(KeyCode.F2);
        assertThat(onScreen(() -> button(window.scene(), "action-1").isDisabled()))
                .isTrue();
        type("rinse-person", "Robin Example");
        type("rinse-reason", "its leak shows only with product");
        assertThat(ScreenPictures.of(this, window, "receive-not-rinsed")).isEmpty();
        press(KeyCode.F1);
        until(() -> work.orderProperty().get().isPresent());
        assertThat(claim().waivers())
                .singleElement()
                .extracting(Waiver::person, Waiver::reason)
                .containsExactly("Robin Example", "its leak shows only with product");
        assertThat(onScreen(() -> model.rinsing().stateProperty().get())).isEqualTo(Rinsing.State.NOT_SAID);
    }

    private void ready() throws Exception {
        press(KeyCode.F3);
        scanClaim();
        fire("name-0");
        assertThat(onScreen(() -> model.onlyRinsingProperty().get())).isTrue();
    }

    private void scanClaim() throws Exception {
        scan(CLAIM);
        until(() -> model.claim().stateProperty().get() == State.FOUND);
    }

    private ClaimFile claim() throws Exception {
        return desk.arrivals().find(CLAIM).orElseThrow();
    }
}
