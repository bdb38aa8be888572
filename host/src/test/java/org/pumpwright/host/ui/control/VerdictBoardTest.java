package org.pumpwright.host.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import org.pumpwright.host.ui.Action;
import org.pumpwright.host.ui.BenchWindow;
import org.pumpwright.host.ui.Moment;
import org.pumpwright.host.ui.Screen;
import org.pumpwright.host.ui.WindowTest;

/** The verdict across the shop. */
final class VerdictBoardTest extends WindowTest {
    /** 40 mm on a screen of 24 inches that is 1920 pixels wide: 1920 / 531 mm x 40 mm. */
    private static final double LEAST_CAPITALS = 144.5;

    @Test
    void everyVerdictIsReadFromFarInBothLanguages() throws Exception {
        SimpleStringProperty word = new SimpleStringProperty("");
        List<VerdictBoard> made = new ArrayList<>();
        BenchWindow window = onScreen(() -> {
            BenchWindow frame = frame();
            VerdictBoard board = new VerdictBoard(word);
            made.add(board);
            frame.add(new Only(new VBox(board)));
            return frame;
        });
        show(window.scene(), 1920, 1080);
        List<String> tooSmall = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            for (Language language : Language.values()) {
                String said = Texts.in(language).say("verdict." + verdict.name().toLowerCase(Locale.ROOT));
                onScreen(() -> {
                    word.set(said);
                    made.get(0).show(verdict);
                    return true;
                });
                settle();
                double capitals = onScreen(() -> {
                    window.scene().getRoot().layout();
                    return made.get(0).capitals();
                });
                if (capitals < LEAST_CAPITALS) {
                    tooSmall.add(said + " " + capitals);
                }
            }
        }
        onScreen(() -> {
            window.close();
            return true;
        });
        assertThat(tooSmall).isEmpty();
    }

    /** Nothing but a node. */
    private record Only(Node node) implements Screen {
        @Override
        public Moment moment() {
            return Moment.VERDICT;
        }

        @Override
        public ObservableList<Action> actions() {
            return FXCollections.observableArrayList();
        }

        @Override
        public String helpKey() {
            return "ui.verdict.help";
        }
    }
}
