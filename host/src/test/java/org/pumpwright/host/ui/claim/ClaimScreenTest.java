package org.pumpwright.host.ui.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.record.RunPages;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.ui.BenchServices;
import org.pumpwright.host.ui.BenchWindow;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.WindowTest;
import org.pumpwright.host.ui.history.HistoryScreen;
import org.pumpwright.host.ui.history.RunsOnRecord;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.IntakeForm.Entered;

/** The warranty desk through the window; every unit and every name here is invented. */
final class ClaimScreenTest extends WindowTest {
    private static final String SERIAL = "DP-2512-0417";

    @TempDir
    Path records;

    private final List<Path> opened = new ArrayList<>();
    private BenchServices services;
    private BenchWindow window;
    private ClaimModel model;
    private HistoryModel history;
    private DeskOfShop desk;
    private Background background;

    @BeforeEach
    void build() throws Exception {
        services = services(records);
        desk = new DeskOfShop(services.book(), services.home().resolve("fixtures"), records, CLOCK);
        onScreen(() -> {
            background = Background.threads(trouble -> window.trouble(trouble));
            window = frame();
            history = new HistoryModel(
                    background,
                    services.book(),
                    services.shelf(),
                    new RunPages(records.resolve("papers"), Sheet.LETTER),
                    opened::add,
                    CLOCK);
            model = new ClaimModel(background, desk, records.resolve("papers"), opened::add);
            window.add(new ClaimScreen(window, model, history::open));
            window.add(new HistoryScreen(window, history, window.darkProperty()));
            return true;
        });
        show(window.scene(), 1280, 800);
    }

    @AfterEach
    void close() throws Exception {
        onScreen(() -> {
            background.close();
            window.close();
            return true;
        });
        services.book().close();
    }

    private void press(KeyCode key) throws Exception {
        onScreen(() -> {
            press(window.scene(), key);
            return true;
        });
    }

    private void select(String list, int line) throws Exception {
        onScreen(() -> {
            ((ListView<?>) window.scene().lookup("#" + list))
                    .getSelectionModel()
                    .select(line);
            return true;
        });
    }

    private void type(String field, String text) throws Exception {
        onScreen(() -> {
            ((TextField) window.scene().lookup("#" + field)).setText(text);
            return true;
        });
    }

    private void fire(String id) throws Exception {
        onScreen(() -> {
            button(window.scene(), id).fire();
            return true;
        });
    }

    private void free() throws Exception {
        until(() -> !model.busyProperty().get());
    }

    private void openExample() throws Exception {
        Path sheet = services.home().resolve("fixtures/claims/example-sheet.yaml");
        desk.desk().open(IntakeSheetFile.read(sheet, OffsetDateTime.now(CLOCK)));
        onScreen(() -> {
            model.list();
            return true;
        });
        until(() -> model.rows().size() == 1);
    }

    /** A drawing that stands for a photo. */
    private Path photo(String name) throws Exception {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(0x5a, 0x78 + name.length(), 0x8c));
        pen.fillRect(0, 0, 400, 300);
        pen.setColor(Color.WHITE);
        pen.drawRect(60, 60, 280, 180);
        pen.drawString(name, 160, 150);
        pen.dispose();
        Path file = records.resolve(name + ".png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    private CoverageDecision decision() throws Exception {
        return desk.review().of("EX-1001").file().decision().orElseThrow();
    }

    @Test
    void aClaimGoesFromTheListToThePacket() throws Exception {
        openExample();
        assertThat(ScreenPictures.of(this, window, "claim-list")).isEmpty();
        select("claim-list", 0);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        assertThat(ScreenPictures.of(this, window, "claim-new")).isEmpty();

        press(KeyCode.F3);
        type("claim-person", "Terry Tester");
        type("claim-place", "sink");
        assertThat(ScreenPictures.of(this, window, "claim-move")).isEmpty();
        press(KeyCode.F5);
        until(() -> model.shownProperty()
                .get()
                .orElseThrow()
                .file()
                .intake()
                .decontamination()
                .confirmed());

        for (Photo.Shows shows :
                List.of(Photo.Shows.PLATE, Photo.Shows.CONNECTOR, Photo.Shows.PORTS, Photo.Shows.WHOLE)) {
            free();
            press(KeyCode.F2);
            type("claim-photo-file", photo(shows.word()).toString());
            int before = onScreen(
                    () -> model.shownProperty().get().orElseThrow().photos().size());
            press(KeyCode.valueOf("F" + (before + 1)));
            until(() -> model.shownProperty().get().orElseThrow().photos().size() == before + 1);
        }

        RunsOnRecord.add(services, SERIAL, "slip", Optional.of("EX-1001"), 1);
        onScreen(() -> {
            model.open("EX-1001");
            return true;
        });
        until(() -> !model.shownProperty().get().orElseThrow().runs().isEmpty());
        free();
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "claim-tested")).isEmpty();

        press(KeyCode.F4);
        until(() -> history.shownProperty().get().isPresent());
        assertThat(onScreen(window::current)).isEqualTo(Moment.HISTORY);
        onScreen(() -> {
            window.goTo(Moment.CLAIM);
            return true;
        });

        press(KeyCode.F1);
        select("finding-categories", 1);
        fire("reproduced-YES");
        type("finding-basis", "flow low at every point");
        type("finding-parts", "valve plate");
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "claim-finding")).isEmpty();
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().finding().isPresent());
        free();

        press(KeyCode.F1);
        fire("outcome-APPROVE");
        type("decision-reason", "worn early");
        type("decision-signer", "terry  tester");
        assertThat(onScreen(() -> button(window.scene(), "action-1").isDisabled()))
                .isTrue();
        assertThat(ScreenPictures.of(this, window, "claim-same-hand")).isEmpty();
        type("decision-signer", "Kim Clerk");
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().orElseThrow().file().decision().isPresent());
        free();
        assertThat(decision().signer()).isEqualTo("Kim Clerk");
        assertThat(ScreenPictures.of(this, window, "claim-decided")).isEmpty();

        press(KeyCode.F5);
        press(KeyCode.F1);
        until(() -> model.packedProperty().get().isPresent()
                || window.scene().lookup("#banner").isVisible());
        assertThat(onScreen(() -> window.scene().lookup("#banner").lookupAll(".label").stream()
                        .map(label -> ((Labeled) label).getText())
                        .toList()))
                .doesNotContain("That can't be done as it stands");
        Path zip = onScreen(() -> model.packedProperty().get().orElseThrow());
        assertThat(Files.size(zip)).isGreaterThan(10_000);
        assertThat(ScreenPictures.of(this, window, "claim-packed")).isEmpty();
    }

    @Test
    void aUnitIsTakenInAFewFieldsAtATime() throws Exception {
        press(KeyCode.F2);
        onScreen(() -> {
            model.form().field(Entered.CLAIM).set("EX-2002");
            model.form().field(Entered.TAKEN_BY).set("Robin Example");
            model.form().field(Entered.BROUGHT_BY).set("Sam Example");
            return true;
        });
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "claim-intake-1")).isEmpty();
        press(KeyCode.F1);
        fire("intake-KIND");
        until(() -> window.scene().lookup("#prompt").isVisible());
        press(KeyCode.F1);
        assertThat(onScreen(() -> model.form().field(Entered.KIND).get())).isEqualTo("pump-12v");
        assertThat(ScreenPictures.of(this, window, "claim-intake-2")).isEmpty();
        press(KeyCode.F1);
        fire("intake-COMPLAINT_CODE");
        until(() -> window.scene().lookup("#prompt").isVisible());
        assertThat(ScreenPictures.of(this, window, "claim-complaint")).isEmpty();
        press(KeyCode.F1);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        assertThat(onScreen(
                        () -> model.shownProperty().get().orElseThrow().file().missing()))
                .contains(Missing.PRODUCT, Missing.SERIAL)
                .doesNotContain(Missing.KIND, Missing.BROUGHT_BY, Missing.COMPLAINT_CODE);
        assertThat(ScreenPictures.of(this, window, "claim-incomplete")).isEmpty();

        press(KeyCode.F1);
        onScreen(() -> {
            model.form().field(Entered.PRODUCT).set("unknown");
            return true;
        });
        press(KeyCode.F1);
        press(KeyCode.F1);
        press(KeyCode.F1);
        free();
        until(() -> !model.shownProperty().get().orElseThrow().file().missing().contains(Missing.PRODUCT));
    }

    @Test
    void aNumberThatCanBeNoClaimNumberIsTold() throws Exception {
        press(KeyCode.F2);
        onScreen(() -> {
            model.form().field(Entered.CLAIM).set("no / number");
            model.takeIn(() -> {});
            return true;
        });
        assertThat(onScreen(() -> window.scene().lookup("#banner").isVisible())).isTrue();
    }
}
