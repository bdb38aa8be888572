package org.pumpwright.host.ui.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.sql.OwnPostgresql;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.PaperText;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.work.AskedVerdict;
import org.pumpwright.host.ui.work.HistoryModel;

/** What is on record, through the window. */
final class HistoryScreenTest extends FramedTest {
    private final List<Path> opened = new ArrayList<>();
    private HistoryModel model;

    private void openOn(RecordBook book) throws Exception {
        open(() -> {
            model = new HistoryModel(
                    background,
                    book,
                    services.shelf(),
                    new PaperDesk(services.book(), services.home().resolve("fixtures"), records),
                    opened::add,
                    CLOCK);
            window.add(new HistoryScreen(window, model, window.darkProperty()));
            return true;
        });
    }

    @Test
    void beforeAndAfterOfOneUnitLieOverEachOther() throws Exception {
        RunsOnRecord.add(services, "DP-2512-0417", "slip", Optional.of("EX-1001"), 0);
        RunsOnRecord.add(services, "DP-2512-0417", "healthy", Optional.of("EX-1001"), 2);
        RunsOnRecord.add(services, "DP-2601-0033", "healthy", Optional.empty(), 3);
        openOn(services.book());
        until(() -> model.search().rows().size() == 3);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "history-list")).isEmpty();

        onScreen(() -> {
            scan(window.scene(), "DP-2512");
            return true;
        });
        until(() -> model.search().rows().size() == 2);
        select("history-list", 0);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        assertThat(onScreen(() -> model.shownProperty().get().orElseThrow().others()))
                .hasSize(1);
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "history-run")).isEmpty();

        press(KeyCode.F2);
        until(() -> window.scene().lookup("#prompt").isVisible());
        assertThat(ScreenPictures.of(this, window, "history-which")).isEmpty();
        press(KeyCode.F1);
        until(() -> model.earlierProperty().get().isPresent());
        assertThat(onScreen(() -> model.earlierProperty()
                        .get()
                        .orElseThrow()
                        .entry()
                        .finder()
                        .verdict()))
                .contains("fail");
        assertThat(onScreen(() ->
                        model.details().stream().map(row -> row.finding().key()).toList()))
                .hasSizeGreaterThan(3)
                .containsOnly("ui.history.change");
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "history-overlay")).isEmpty();

        press(KeyCode.F1);
        until(() -> !opened.isEmpty());
        assertThat(PaperText.of(opened.get(0)).attachments())
                .contains("record.json", "entry.json", "entry.sig", "before-record.json", "before-entry.sig");
    }

    @Test
    void theRunHasItsPapersInTheWordsAndUnitsOfTheWindow() throws Exception {
        RunsOnRecord.add(services, "DP-2512-0417", "slip", Optional.empty(), 0);
        openOn(services.book());
        onScreen(() -> {
            window.saying().languageProperty().set(Language.ES);
            window.saying().unitsProperty().set(UnitSystem.METRIC);
            return true;
        });
        until(() -> model.search().rows().size() == 1);
        select("history-list", 0);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());

        press(KeyCode.F1);
        until(() -> opened.size() == 1 && !model.makingPaperProperty().get());
        press(KeyCode.F4);
        until(() -> opened.size() == 2 && !model.makingPaperProperty().get());
        press(KeyCode.F5);
        press(KeyCode.F3);
        until(() -> opened.size() == 3);

        PaperText page = PaperText.of(opened.get(0));
        assertThat(page.words()).contains("NO APROBADO").contains("L/min");
        assertThat(page.attachments()).contains("record.json", "entry.sig");
        assertThat(page.widthMm()).isEqualTo(210);
        assertThat(PaperText.of(opened.get(1)).widthMm()).isEqualTo(90);
        assertThat(PaperText.of(opened.get(2)).words()).doesNotContain("Terry Tester");
    }

    @Test
    void aBucketTestHasItsReportAndTheLabelOfItsMeter() throws Exception {
        BucketRecord test = RunsOnRecord.addBucketTest(services);
        openOn(services.book());
        until(() -> model.search().rows().size() == 1);
        select("history-list", 0);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "history-bucket")).isEmpty();
        onScreen(() -> {
            window.saying().languageProperty().set(Language.EN);
            return true;
        });

        press(KeyCode.F1);
        until(() -> opened.size() == 1 && !model.makingPaperProperty().get());
        press(KeyCode.F4);
        until(() -> opened.size() == 2);

        assertThat(PaperText.of(opened.get(0)).words()).contains(test.meter().serial());
        assertThat(PaperText.of(opened.get(1)).widthMm()).isEqualTo(90);
    }

    @Test
    void aRunThatDoesNotCountHasNoLabelAndTheBannerSaysWhy() throws Exception {
        RunsOnRecord.add(services, "DP-1", "low-supply", Optional.empty(), 0);
        openOn(services.book());
        until(() -> model.search().rows().size() == 1);
        select("history-list", 0);
        press(KeyCode.F1);
        until(() -> model.shownProperty().get().isPresent());
        press(KeyCode.F4);
        until(() -> window.scene().lookup("#banner").isVisible());

        assertThat(opened).isEmpty();
        assertThat(ScreenPictures.of(this, window, "history-no-label")).isEmpty();
    }

    @Test
    void verdictAndDaysNarrowTheListDown() throws Exception {
        RunsOnRecord.add(services, "DP-1", "slip", Optional.empty(), 0);
        RunsOnRecord.add(services, "DP-2", "healthy", Optional.empty(), 1);
        openOn(services.book());
        until(() -> model.search().rows().size() == 2);
        press(KeyCode.F2);
        until(() -> model.search().rows().size() == 1);
        assertThat(onScreen(() -> model.search().askedProperty().get())).isEqualTo(AskedVerdict.FAIL);
        press(KeyCode.F4);
        until(() -> model.search().rows().size() == 2);
        onScreen(() -> {
            ((TextField) window.scene().lookup("#history-text")).setText("nobody");
            return true;
        });
        until(() -> model.search().headlineProperty().get().key().equals("ui.history.none"));
    }

    @Test
    void aServerThatDiesIsToldAndTheWindowGoesOn() throws Exception {
        OwnPostgresql server = OwnPostgresql.start();
        RecordBook book = new RecordBook(
                new StoreChoice(
                        Optional.of(server.address(server.newDatabase()) + "?user=" + OwnPostgresql.USER),
                        records.resolve("ledger.db"),
                        records.resolve("keys"),
                        StoreChoice.DESK),
                records,
                records.resolve("spare"));
        try {
            RunsOnRecord.add(services, "DP-1", "healthy", Optional.empty(), 0);
            // Put on record once more, in the server.
            RunsOnRecord.addAgain(book, records);
            openOn(book);
            until(() -> model.search().rows().size() == 1);
            // Not asked to end: it would wait for whoever still reads.
            server.kill();
        } finally {
            server.close();
        }
        press(KeyCode.F3);
        until(() -> window.scene().lookup("#banner").isVisible());
        assertThat(onScreen(() -> model.search().headlineProperty().get().key()))
                .isEqualTo("ui.history.away");
        assertThat(ScreenPictures.of(this, window, "history-server-away")).isEmpty();
        press(KeyCode.F8);
        select("history-list", 0);
        assertThat(onScreen(() -> button(window.scene(), "action-1").isDisabled()))
                .isFalse();
        book.close();
    }
}
