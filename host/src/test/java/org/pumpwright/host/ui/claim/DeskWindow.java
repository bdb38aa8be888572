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
import javafx.scene.control.TextField;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.history.HistoryScreen;
import org.pumpwright.host.ui.history.RunsOnRecord;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.ClaimView;
import org.pumpwright.host.ui.work.HistoryModel;

/** The warranty desk in a window of its own, with records in a folder of the test's; every unit and every name is invented. */
abstract class DeskWindow extends FramedTest {
    static final String SERIAL = "DP-2512-0417";

    final List<Path> opened = new ArrayList<>();
    ClaimModel model;
    HistoryModel history;
    DeskOfShop desk;

    @BeforeEach
    void build() throws Exception {
        desk = new DeskOfShop(services.book(), services.home().resolve("fixtures"), records, CLOCK);
        open(() -> {
            history = new HistoryModel(
                    background,
                    services.book(),
                    services.shelf(),
                    new PaperDesk(services.book(), services.home().resolve("fixtures"), records),
                    opened::add,
                    CLOCK);
            model = new ClaimModel(background, desk, records.resolve("papers"), opened::add);
            window.add(new ClaimScreen(window, model, history::open));
            window.add(new HistoryScreen(window, history, window.darkProperty()));
            return true;
        });
    }

    final String typed(String field) throws Exception {
        return onScreen(() -> ((TextField) window.scene().lookup("#" + field)).getText());
    }

    final boolean off(String id) throws Exception {
        return onScreen(() -> button(window.scene(), id).isDisabled());
    }

    /** What a label says now. */
    final String said(String id) throws Exception {
        return onScreen(() -> ((Labeled) window.scene().lookup("#" + id)).getText());
    }

    final void free() throws Exception {
        until(() -> !model.busyProperty().get());
    }

    final ClaimView view() throws Exception {
        return onScreen(() -> model.shownProperty().get().orElseThrow());
    }

    final ClaimFile file() throws Exception {
        return view().file();
    }

    /** The intake of the shop's example sheet. */
    final void takeInExample() throws Exception {
        Path sheet = services.home().resolve("fixtures/claims/example-sheet.yaml");
        desk.desk().open(IntakeSheetFile.read(sheet, OffsetDateTime.now(CLOCK)));
    }

    /** The same with this number and serial. */
    final void takeIn(String number, String serial) throws Exception {
        String sheet = Files.readString(services.home().resolve("fixtures/claims/example-sheet.yaml"))
                .replace("EX-1001", number)
                .replace(SERIAL, serial);
        Path file = records.resolve(number + ".yaml");
        Files.writeString(file, sheet);
        desk.desk().open(IntakeSheetFile.read(file, OffsetDateTime.now(CLOCK)));
    }

    final void openExample() throws Exception {
        takeInExample();
        lookAt("EX-1001");
    }

    final void lookAt(String number) throws Exception {
        onScreen(() -> {
            model.open(number);
            return true;
        });
        until(() -> model.shownProperty()
                .get()
                .filter(view -> view.file().number().equals(number))
                .isPresent());
        free();
    }

    /** A run of the example's unit that finds slip. */
    final void addRun() throws Exception {
        RunsOnRecord.add(services, SERIAL, "slip", Optional.of("EX-1001"), 1);
        lookAt("EX-1001");
        assertThat(view().runs()).isNotEmpty();
    }

    final void refresh() throws Exception {
        onScreen(() -> {
            model.list().refresh();
            return true;
        });
    }

    /** A drawing that stands for a photo. */
    final Path photo(String name) throws Exception {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(0x5a, 0x78 + name.length(), 0x8c));
        pen.fillRect(0, 0, 400, 300);
        pen.setColor(Color.WHITE);
        pen.drawRect(60, 60, 280, 180);
        pen.drawString(name, 160, 150);
        pen.dispose();
        Path file = records.resolve("pictures").resolve(name + ".png");
        Files.createDirectories(file.getParent());
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    /** In both languages, lights and sizes nothing is cut, and everything changes with the language. */
    final void looksGood(String name) throws Exception {
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, name)).isEmpty();
        onScreen(() -> {
            window.saying().languageProperty().set(Language.EN);
            return true;
        });
    }
}
