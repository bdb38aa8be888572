package org.pumpwright.host.ui.history;

import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.PretenceSign;
import org.pumpwright.host.ui.control.RowList;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.StoredRun;
import org.pumpwright.host.ui.work.Word;

/** One run with its curve, or two over each other; of a bucket test what came of it. JavaFX thread only. */
final class RunPane {
    private final Saying saying;
    private final HistoryModel model;
    private final VBox node;

    RunPane(Saying saying, HistoryModel model, RunPlot plot) {
        this.saying = saying;
        this.model = model;
        Label paper = label("paper-line");
        paper.getStyleClass().add("data");
        paper.textProperty().bind(saying.text(model.paperProperty()));
        paper.visibleProperty().bind(paper.textProperty().isNotEmpty());
        paper.managedProperty().bind(paper.visibleProperty());
        paper.setMinHeight(Label.USE_PREF_SIZE);
        Node body = body(plot);
        VBox.setVgrow(body, Priority.ALWAYS);
        node = new VBox(head(), body, paper);
        node.getStyleClass().add("history-run");
        node.setMinHeight(0);
    }

    private Node head() {
        Sign sign = new Sign(Mark.UNKNOWN);
        sign.markProperty()
                .bind(model.shownProperty().map(run -> run.map(StoredRun::mark).orElse(Mark.UNKNOWN)));
        Label verdict = label("headline");
        verdict.textProperty().bind(saying.text(ofTheRun(StoredRun::verdict)));
        verdict.setMinWidth(Label.USE_PREF_SIZE);
        Label subject = label("history-subject");
        subject.setMinHeight(Label.USE_PREF_SIZE);
        subject.getStyleClass().add("data");
        subject.textProperty().bind(saying.text(ofTheRun(StoredRun::subject)));
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox first = new HBox(sign, verdict, between, new PretenceSign(saying, ofTheRun(StoredRun::pretence)));
        first.getStyleClass().add("head");
        first.setAlignment(Pos.CENTER_LEFT);
        return new VBox(first, subject);
    }

    private ObservableValue<Word> ofTheRun(Function<StoredRun, Word> what) {
        return model.shownProperty().map(run -> run.map(what).orElse(Word.NONE));
    }

    private Node body(RunPlot plot) {
        Label before = label("history-before");
        before.textProperty()
                .bind(saying.text(model.earlierProperty()
                        .map(run -> run.map(each -> Word.of("ui.history.hollow", each.verdict()))
                                .orElse(Word.NONE))));
        before.managedProperty().bind(before.textProperty().isNotEmpty());
        before.setMinHeight(Label.USE_PREF_SIZE);
        VBox.setVgrow(plot.plot(), Priority.ALWAYS);
        plot.plot().setMinHeight(0);
        VBox left = new VBox(plot.plot(), before);
        HBox.setHgrow(left, Priority.ALWAYS);
        left.setMinHeight(0);
        left.visibleProperty()
                .bind(model.shownProperty()
                        .map(run -> run.filter(StoredRun::drawn).isPresent()));
        left.managedProperty().bind(left.visibleProperty());
        RowList details = new RowList(saying, model.details());
        beside(details, left.isVisible());
        left.visibleProperty().addListener((observed, old, now) -> beside(details, now));
        HBox body = new HBox(left, details);
        body.getStyleClass().add("history-body");
        body.setMinHeight(0);
        return body;
    }

    /** A narrow column beside the curve; the whole width where there is none. */
    private static void beside(RowList details, boolean curve) {
        HBox.setHgrow(details, curve ? Priority.NEVER : Priority.ALWAYS);
        details.getStyleClass().remove("history-details");
        if (curve) {
            details.getStyleClass().add("history-details");
        }
    }

    private static Label label(String style) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        return label;
    }

    Node node() {
        return node;
    }
}
