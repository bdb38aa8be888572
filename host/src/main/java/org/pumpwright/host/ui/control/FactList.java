package org.pumpwright.host.ui.control;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Fact;
import org.pumpwright.host.ui.work.Word;

/** Facts that were written down, their names at the left; what nobody has told stays as a ruled blank. JavaFX thread only. */
public final class FactList extends ScrollPane {
    private final Saying saying;
    private final GridPane grid = new GridPane();

    /** Shows these facts and follows them. */
    public FactList(Saying saying, ObservableValue<List<Fact>> facts) {
        this.saying = saying;
        getStyleClass().add("fact-list");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinHeight(0);
        grid.getStyleClass().add("facts");
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(36);
        ColumnConstraints values = new ColumnConstraints();
        values.setPercentWidth(64);
        grid.getColumnConstraints().setAll(names, values);
        setContent(grid);
        facts.addListener((observed, old, now) -> show(now));
        show(facts.getValue());
    }

    private void show(List<Fact> facts) {
        grid.getChildren().clear();
        for (int i = 0; i < facts.size(); i++) {
            Fact fact = facts.get(i);
            boolean blank = fact.value().equals(Word.NONE);
            Label name = label("fact-name", saying.text(fact.name()));
            Label value = label(
                    blank ? "fact-blank" : "fact-value",
                    blank ? saying.text("ui.claim.blank") : saying.text(fact.value()));
            if (fact.value().key().isEmpty() && !blank) {
                value.getStyleClass().add("data");
            }
            grid.add(name, 0, i);
            grid.add(value, 1, i);
        }
    }

    private static Label label(String style, ObservableValue<String> text) {
        Label label = new Label();
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        GridPane.setValignment(label, VPos.TOP);
        label.textProperty().bind(text);
        return label;
    }
}
