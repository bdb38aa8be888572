package org.pumpwright.host.ui;

import java.time.LocalTime;
import java.util.ArrayDeque;
import java.util.Deque;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.control.BigButton;
import org.pumpwright.host.ui.control.Sign;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Trouble;
import org.pumpwright.host.ui.work.Word;

/**
 * Trouble, in clear words and with what to do. It stays until somebody says that it was understood, and the window goes on meanwhile.
 * Several wait in their order; the same one is not shown twice. JavaFX thread only.
 */
final class Banner extends HBox {
    private static final String STOPPED = "ui.trouble.stopped.what";

    private final Saying saying;
    private final Deque<Trouble> waiting = new ArrayDeque<>();
    private final Label what = new Label();
    private final Label remedy = new Label();
    private final Label detail = new Label();

    Banner(Saying saying) {
        this.saying = saying;
        setId("banner");
        getStyleClass().add("banner");
        setAlignment(Pos.CENTER_LEFT);
        what.getStyleClass().add("banner-what");
        detail.getStyleClass().add("banner-detail");
        what.setWrapText(true);
        remedy.setWrapText(true);
        detail.setWrapText(true);
        // What went wrong is told whole; the screen below gives way.
        what.setMinHeight(USE_PREF_SIZE);
        remedy.setMinHeight(USE_PREF_SIZE);
        detail.setMinHeight(USE_PREF_SIZE);
        VBox words = new VBox(what, remedy, detail);
        HBox.setHgrow(words, Priority.ALWAYS);
        BigButton understood = new BigButton(saying.text("ui.banner.understood"), "F8");
        understood.setId("understood");
        understood.setOnAction(pressed -> acknowledge());
        getChildren().addAll(new Sign(Mark.BAD), words, understood);
        show();
    }

    /** Adds trouble. */
    void add(Trouble trouble) {
        if (!waiting.contains(trouble)) {
            waiting.add(trouble);
            show();
        }
    }

    /** STOP was pressed: that comes before all other trouble, once however often it was pressed. */
    void stopped(LocalTime when) {
        waiting.removeIf(each -> each.what().key().equals(STOPPED));
        waiting.addFirst(new Trouble(Word.of(STOPPED, when), Word.of("ui.trouble.stopped.do"), ""));
        show();
    }

    /** Takes the trouble away that is shown. */
    void acknowledge() {
        waiting.poll();
        show();
    }

    private void show() {
        Trouble first = waiting.peek();
        setVisible(first != null);
        setManaged(first != null);
        if (first == null) {
            return;
        }
        what.textProperty().bind(saying.text(first.what()));
        remedy.textProperty().bind(saying.text(first.remedy()));
        detail.textProperty().bind(saying.text(Word.stored(first.detail())));
        detail.setManaged(!first.detail().isEmpty());
        detail.setVisible(!first.detail().isEmpty());
    }
}
