package org.pumpwright.host.ui.control;

import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.Word;

/** A list of findings: a shape, what was looked at, what was found, and what to do. JavaFX thread only. */
public final class RowList extends ListView<Row> {
    /** Style of what is the same in every language. */
    private static final String DATA = "data";

    private final Saying saying;

    /** Shows these rows and follows them. */
    public RowList(Saying saying, ObservableList<Row> rows) {
        super(rows);
        this.saying = saying;
        getStyleClass().add("row-list");
        setCellFactory(list -> new Cell());
        setMinHeight(0);
    }

    /** A figure and its percent sign stay on one line. */
    private static String kept(String words) {
        return words.replaceAll("(\\d) %", "$1\u00a0%");
    }

    private final class Cell extends ListCell<Row> {
        private final Label name = new Label();
        private final Label finding = new Label();
        private final Label remedy = new Label();
        private final Sign sign = new Sign(Mark.UNKNOWN);
        private final HBox line = new HBox();

        Cell() {
            name.getStyleClass().add("row-name");
            remedy.getStyleClass().add("row-remedy");
            for (Label label : new Label[] {name, finding, remedy}) {
                label.setWrapText(true);
                label.setMinHeight(USE_PREF_SIZE);
            }
            VBox words = new VBox(name, finding, remedy);
            HBox.setHgrow(words, Priority.ALWAYS);
            line.getStyleClass().add("row");
            line.getChildren().addAll(sign, words);
            layoutYProperty().addListener(moved -> showWhole());
            heightProperty().addListener(moved -> showWhole());
            RowList.this.heightProperty().addListener(moved -> showWhole());
            // A cell asks for the width of its longest line otherwise, and nothing would wrap.
            setPrefWidth(0);
        }

        /** A row that the lower edge would cut is not shown until it is scrolled to; the bar tells that there is more. */
        private void showWhole() {
            double place =
                    RowList.this.getHeight() - RowList.this.snappedTopInset() - RowList.this.snappedBottomInset();
            boolean cut = getLayoutY() > 0
                    && getLayoutY() + getHeight() - getPadding().getBottom() > place;
            setOpacity(cut ? 0 : 1);
        }

        @Override
        protected void updateItem(@Nullable Row row, boolean empty) {
            super.updateItem(row, empty);
            if (empty || row == null) {
                setGraphic(null);
                return;
            }
            sign.markProperty().set(row.mark());
            say(name, row.name());
            say(finding, row.finding());
            say(remedy, row.remedy());
            boolean found = !row.finding().equals(Word.NONE);
            finding.setVisible(found);
            finding.setManaged(found);
            boolean advised = !row.remedy().equals(Word.NONE);
            remedy.setVisible(advised);
            remedy.setManaged(advised);
            setGraphic(line);
        }

        private void say(Label label, Word word) {
            label.textProperty().bind(saying.text(word).map(RowList::kept));
            label.getStyleClass().remove(DATA);
            if (word.key().isEmpty()) {
                label.getStyleClass().add(DATA);
            }
        }
    }
}
