package org.pumpwright.host.ui.control;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.RowConstraints;

/**
 * Choices in rows of one height that fill their place, scrolled by whole rows: none is ever cut at an edge. JavaFX thread only.
 */
public final class WholeRows extends ScrollPane {
    private static final double SAME = 0.001;

    private final int columns;
    private final double highestEms;
    private final GridPane grid = new GridPane();
    private int shown = 1;

    /**
     * No choices yet.
     *
     * @param columns how many stand beside each other
     * @param highestEms no row grows higher than this
     */
    public WholeRows(int columns, double highestEms) {
        this.columns = columns;
        this.highestEms = highestEms;
        grid.getStyleClass().add("choice-grid");
        ColumnConstraints share = new ColumnConstraints();
        share.setPercentWidth(100.0 / columns);
        for (int i = 0; i < columns; i++) {
            grid.getColumnConstraints().add(share);
        }
        setContent(grid);
        setFitToWidth(true);
        setMinHeight(0);
        setFocusTraversable(false);
        viewportBoundsProperty().addListener((observed, old, now) -> share());
        grid.getChildren().addListener((ListChangeListener<Node>) change -> requestLayout());
        vvalueProperty().addListener((observed, old, now) -> snap());
    }

    /** Shows these instead. */
    public void show(List<? extends Node> choices) {
        grid.getChildren().clear();
        for (int i = 0; i < choices.size(); i++) {
            grid.add(choices.get(i), i % columns, i / columns);
        }
        share();
    }

    /** What is shown. */
    public List<Node> choices() {
        return grid.getChildren();
    }

    /** Scrolls to a choice. */
    public void bringIntoSight(Node choice) {
        int hidden = rows() - shown;
        if (hidden > 0) {
            setVvalue(Math.min(1, (double) GridPane.getRowIndex(choice) / hidden));
        }
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        share();
    }

    private int rows() {
        return (grid.getChildren().size() + columns - 1) / columns;
    }

    /** As many rows as there is place for share the height. */
    private void share() {
        double place = getViewportBounds().getHeight() - grid.snappedTopInset() - grid.snappedBottomInset();
        double wide = (grid.getWidth() - (columns - 1) * grid.getHgap()) / columns;
        if (place <= 0 || wide <= 0 || rows() == 0) {
            return;
        }
        double least = 1;
        double em = 1;
        for (Node choice : grid.getChildren()) {
            least = Math.max(least, choice.minHeight(wide));
            em = choice instanceof ChoiceButton button ? button.getFont().getSize() : em;
        }
        double gap = grid.getVgap();
        shown = Math.max(1, Math.min(rows(), (int) ((place + gap) / (least + gap))));
        double high = Math.max(least, (place + gap) / shown - gap);
        set(shown == rows() ? Math.min(high, highestEms * em) : high);
        snap();
    }

    private void set(double high) {
        boolean same = grid.getRowConstraints().size() == rows()
                && grid.getRowConstraints().stream().allMatch(row -> Math.abs(row.getPrefHeight() - high) < SAME);
        if (!same) {
            grid.getRowConstraints().clear();
            for (int i = 0; i < rows(); i++) {
                grid.getRowConstraints().add(new RowConstraints(high, high, high));
            }
        }
    }

    private void snap() {
        int hidden = rows() - shown;
        if (hidden > 0) {
            double whole = (double) Math.round(getVvalue() * hidden) / hidden;
            if (Math.abs(whole - getVvalue()) > SAME) {
                setVvalue(whole);
            }
        }
    }
}
