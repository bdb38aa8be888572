package org.pumpwright.host.ui.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.record.AfterTheRun;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.app.record.StoreChoice;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.ui.FramedTest;
import org.pumpwright.host.ui.PaperText;
import org.pumpwright.host.ui.ScreenPictures;
import org.pumpwright.host.ui.SpokenTexts;
import org.pumpwright.host.ui.control.VerdictBoard;
import org.pumpwright.host.ui.history.RunsOnRecord;
import org.pumpwright.host.ui.work.Product;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.VerdictModel;
import org.pumpwright.host.ui.work.WorkInHand;
import org.pumpwright.host.ui.work.WorkOrder;

/** What came of a run, and its papers, through the window. */
final class VerdictScreenTest extends FramedTest {
    private static final Acceptance.Job JOB =
            new Acceptance.Job(Optional.of(Complaint.LOW), true, Optional.empty(), Optional.of("C-77"));

    private final List<Path> opened = new ArrayList<>();
    private final List<String> lookedAt = new ArrayList<>();
    private WorkInHand work;
    private VerdictModel model;

    @BeforeEach
    void build() throws Exception {
        build(services.book());
    }

    private void build(RecordBook book) throws Exception {
        open(() -> {
            work = new WorkInHand();
            model = new VerdictModel(
                    background,
                    services.shelf(),
                    work,
                    new AfterTheRun(book, services.shelf()),
                    new PaperDesk(book, services.home().resolve("fixtures"), records),
                    opened::add);
            window.add(new VerdictScreen(window, model, Optional.of(lookedAt::add)));
            return true;
        });
    }

    private Acceptance.Result run(String fault) throws Exception {
        Acceptance.Result result = RunsOnRecord.made(services, "DP-2512-0417", fault, JOB, 0);
        WorkOrder order = new WorkOrder(
                services.shelf().model("demo-pump"),
                services.shelf().plan("quick-12v-pump"),
                "DP-2512-0417",
                "Terry Tester",
                Product.WATER,
                JOB,
                JOB.claim(),
                Optional.empty());
        onScreen(() -> {
            work.take(order);
            work.resultProperty().set(Optional.of(result));
            return true;
        });
        return result;
    }

    private PaperText paper(KeyCode... keys) throws Exception {
        int before = opened.size();
        for (KeyCode key : keys) {
            press(key);
        }
        until(() -> opened.size() > before && !model.makingPaperProperty().get());
        return PaperText.of(opened.get(before));
    }

    /** JavaFX thread only. */
    private String filed() {
        return model.filedProperty().get().name().key();
    }

    @Test
    void aRunIsPutOnRecordAndItsPapersCarryTheSeal() throws Exception {
        Acceptance.Result result = run("slip");
        assertThat(result.record().grade().verdict()).isEqualTo(Verdict.FAIL);

        PaperText page = paper(KeyCode.F2);

        assertThat(onScreen(this::filed)).isEqualTo("ui.verdict.filed");
        assertThat(onScreen(() -> window.scene().lookup(".pretence").isVisible()))
                .isTrue();
        assertThat(page.words()).contains("FAIL").contains("DP-2512-0417").contains("Terry Tester");
        assertThat(page.attachments()).contains("record.json", "entry.json", "entry.sig");
        assertThat(page.widthMm()).isEqualTo(216);
        assertThat(services.book().waiting()).isZero();
        PaperText label = paper(KeyCode.F3);
        assertThat(label.widthMm()).isEqualTo(90);
        assertThat(label.words()).contains("DP-2512-0417");
        PaperText customer = paper(KeyCode.F4, KeyCode.F1);
        assertThat(customer.words()).contains("DP-2512-0417");
        assertThat(customer.attachments()).contains("entry.sig");
        assertThat(onScreen(() -> SpokenTexts.deaf(window))).isEmpty();
        assertThat(ScreenPictures.of(this, window, "verdict-printed")).isEmpty();
        press(KeyCode.F4);
        assertThat(ScreenPictures.of(this, window, "verdict-papers")).isEmpty();
        press(KeyCode.F6);
        press(KeyCode.F5);
        assertThat(lookedAt).containsExactly(result.record().id());
    }

    @Test
    void whetherTheComplaintIsExplainedHasALineOfItsOwn() throws Exception {
        run("slip");
        until(() -> filed().equals("ui.verdict.filed"));

        Row line = onScreen(() -> model.complaintProperty().get().orElseThrow());
        assertThat(line.name().key()).isEqualTo("ui.verdict.explains");
        assertThat(onScreen(
                        () -> model.next().stream().map(row -> row.name().key()).toList()))
                .doesNotContain("ui.verdict.explains");
        Label shown = onScreen(() -> (Label) window.scene().lookup("#complaint"));
        assertThat(onScreen(shown::getText)).startsWith("Explains the complaint \"");
        assertThat(onScreen(shown::isVisible)).isTrue();
    }

    @Test
    void aRunThatDoesNotCountHasAPageForTheStandAndNothingForTheUnit() throws Exception {
        Acceptance.Result result = run("low-supply");
        assertThat(result.record().grade().verdict()).isEqualTo(Verdict.INVALID);
        until(() -> filed().equals("ui.verdict.filed"));

        for (List<KeyCode> keys : List.of(List.of(KeyCode.F3), List.of(KeyCode.F4, KeyCode.F1))) {
            for (KeyCode key : keys) {
                press(key);
            }
            until(() -> window.scene().lookup("#banner").isVisible());
            if (keys.size() == 1) {
                assertThat(ScreenPictures.of(this, window, "verdict-no-label")).isEmpty();
            }
            press(KeyCode.F8);
        }
        assertThat(opened).isEmpty();
        assertThat(paper(KeyCode.F2).words()).contains(result.record().id());
    }

    @Test
    void theClerksPageNeedsItsClaimOnRecord() throws Exception {
        run("slip");
        until(() -> filed().equals("ui.verdict.filed"));
        press(KeyCode.F4);
        press(KeyCode.F2);

        until(() -> window.scene().lookup("#banner").isVisible());
        assertThat(opened).isEmpty();
    }

    @Test
    void withoutTheLedgerTheTechnicianStillHasThePageOfTheFile() throws Exception {
        build(new RecordBook(
                new StoreChoice(
                        Optional.of("jdbc:postgresql://127.0.0.1:1/none?user=nobody"),
                        records.resolve("ledger.db"),
                        records.resolve("keys"),
                        StoreChoice.DESK),
                records,
                records.resolve("spare")));
        run("slip");

        PaperText page = paper(KeyCode.F2);

        assertThat(onScreen(this::filed)).isEqualTo("ui.verdict.not_filed");
        assertThat(page.words()).contains("FAIL").contains("DP-2512-0417");
        assertThat(page.attachments()).contains("record.json").doesNotContain("entry.sig");
        assertThat(ScreenPictures.of(this, window, "verdict-not-filed")).isEmpty();
    }

    @Test
    void aPaperThatCantBeWrittenIsTold() throws Exception {
        Files.writeString(records.resolve("papers"), "a file where the folder belongs");
        run("healthy");
        press(KeyCode.F2);

        until(() -> window.scene().lookup("#banner").isVisible());
        assertThat(opened).isEmpty();
    }

    /** A screen of 24 inches is 531 mm wide: 40 mm, which is read from 2 m and more, are 144.6 of its 1920 pixels. */
    @Test
    void everyVerdictIsReadAcrossTheShopInBothLanguages() throws Exception {
        Acceptance.Result result = run("slip");
        until(() -> filed().equals("ui.verdict.filed"));
        show(window.scene(), 1920, 1080);
        List<String> wrong = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            for (Language language : Language.values()) {
                onScreen(() -> {
                    window.saying().languageProperty().set(language);
                    work.resultProperty().set(Optional.of(judged(result, verdict)));
                    return true;
                });
                until(() -> filed().equals("ui.verdict.filed"));
                settle();
                wrong.addAll(onScreen(this::badlyShown));
            }
            assertThat(ScreenPictures.of(this, window, "verdict-" + verdict)).isEmpty();
            show(window.scene(), 1920, 1080);
        }
        assertThat(wrong).isEmpty();
    }

    private List<String> badlyShown() {
        window.scene().getRoot().applyCss();
        window.scene().getRoot().layout();
        Text word = (Text) window.scene().lookup(".verdict-word");
        Bounds board = window.scene()
                .lookup(".verdict-board")
                .localToScene(word.getParent().getLayoutBounds());
        Bounds shown = word.localToScene(word.getLayoutBounds());
        List<String> wrong = new ArrayList<>();
        double capitals =
                word.getFont().getSize() * word.getLocalToSceneTransform().getMyy() * VerdictBoard.CAPITALS;
        if (capitals < 1920 / 531.0 * 40) {
            wrong.add("%s is %.0f pixels high".formatted(word.getText(), capitals));
        }
        if (shown.getMaxX() > board.getMaxX() + 1) {
            wrong.add("%s reaches out by %.0f".formatted(word.getText(), shown.getMaxX() - board.getMaxX()));
        }
        return wrong;
    }

    private static Acceptance.Result judged(Acceptance.Result result, Verdict verdict) {
        RunRecord run = result.record();
        Grade was = run.grade();
        Grade grade = new Grade(
                verdict,
                was.reasons(),
                was.standChecks(),
                was.features(),
                was.causes(),
                verdict == Verdict.PASS ? "" : was.nextTest(),
                was.rule(),
                false);
        RunRecord other = new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                grade,
                run.trace(),
                run.intake(),
                run.rules(),
                run.regradedFrom());
        return new Acceptance.Result(other, result.kept());
    }

    @Test
    void theNextTestTakesTheSameUnitOn() throws Exception {
        run("low-supply");
        until(() -> model.nextPlanProperty().get().begins());
        assertThat(onScreen(() -> model.next().get(0).remedy().key())).isEqualTo("ui.verdict.how.again");
        press(KeyCode.F1);

        WorkOrder order = onScreen(() -> work.orderProperty().get().orElseThrow());
        assertThat(order.serial()).isEqualTo("DP-2512-0417");
        assertThat(order.plan().id()).isEqualTo("quick-12v-pump");
        assertThat(onScreen(() -> work.resultProperty().get())).isEmpty();
        assertThat(onScreen(() -> model.verdictProperty().get())).isEmpty();
    }
}
