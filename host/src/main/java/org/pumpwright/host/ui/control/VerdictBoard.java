package org.pumpwright.host.ui.control;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import org.pumpwright.host.grade.Verdict;

/**
 * A verdict that is read across the shop: its sign, and its word as large as the width allows, in one line or in two. The largest size is
 * the style sheet's. JavaFX thread only.
 */
public final class VerdictBoard extends Region {
    /** Height of the capitals of the bundled type, as a share of its size. */
    private static final double CAPITALS = 0.727;

    private static final double LINE = 0.96;
    private static final double GAP = 0.16;
    private static final double BESIDE = 0.12;
    private static final double SMALL_SIGN = 0.42 * CAPITALS;
    private static final double TRIAL = 100;

    private final VerdictSign sign = new VerdictSign();
    private final Text largest = new Text();
    private final List<Text> lines = new ArrayList<>();
    private final ObservableValue<String> word;

    /** Shows this word. */
    public VerdictBoard(ObservableValue<String> word) {
        this.word = word;
        getStyleClass().add("verdict-board");
        largest.getStyleClass().add("verdict-largest");
        largest.setManaged(false);
        largest.setVisible(false);
        getChildren().addAll(largest, sign);
        word.addListener((observed, old, now) -> requestLayout());
        largest.fontProperty().addListener((observed, old, now) -> requestLayout());
    }

    /** Shows the sign of this verdict. */
    public void show(Verdict verdict) {
        sign.show(verdict);
        for (Verdict each : Verdict.values()) {
            pseudoClassStateChanged(VerdictSign.pseudoClass(each), each == verdict);
        }
        requestLayout();
    }

    /**
     * How the word is set.
     *
     * @param rows its lines
     * @param size of the type
     * @param side of the sign
     */
    private record Setting(List<String> rows, double size, double side) {
        double height() {
            return size * (CAPITALS + (rows.size() - 1) * LINE + 2 * GAP);
        }
    }

    private Setting setting(double width) {
        String text = word.getValue();
        List<Setting> possible = new ArrayList<>();
        possible.add(set(List.of(text), width, CAPITALS));
        // Where the sign would cost the word much of its size it is drawn smaller.
        possible.add(set(List.of(text), width, SMALL_SIGN));
        for (int space = text.indexOf(' '); space > 0; space = text.indexOf(' ', space + 1)) {
            List<String> rows = List.of(text.substring(0, space), text.substring(space + 1));
            possible.add(set(rows, width, CAPITALS));
            possible.add(set(rows, width, SMALL_SIGN));
        }
        Setting best = possible.get(0);
        for (Setting each : possible) {
            if (each.size() > best.size() * 1.04) {
                best = each;
            }
        }
        return best;
    }

    private Setting set(List<String> rows, double width, double signShare) {
        double widest = rows.stream().mapToDouble(VerdictBoard::emsWide).max().orElse(1);
        double size = Math.min(largest.getFont().getSize(), width / (widest + signShare + BESIDE));
        return new Setting(rows, size, size * signShare);
    }

    private static double emsWide(String row) {
        Text trial = new Text(row);
        trial.setFont(font(TRIAL));
        return trial.getLayoutBounds().getWidth() / TRIAL;
    }

    private static Font font(double size) {
        return Font.font("Inter", FontWeight.BOLD, size);
    }

    @Override
    protected void layoutChildren() {
        Setting set = fitted();
        getChildren().removeAll(lines);
        lines.clear();
        double capitals = set.size() * CAPITALS;
        double base = set.size() * GAP + capitals;
        sign.resizeRelocate(0, base - capitals + (capitals - set.side()) / 2, set.side(), set.side());
        for (String row : set.rows()) {
            Text text = new Text(row);
            text.getStyleClass().add("verdict-word");
            text.setFont(font(set.size()));
            text.setTextOrigin(VPos.BASELINE);
            text.setManaged(false);
            text.setX(set.side() + set.size() * BESIDE);
            text.setY(base);
            base += set.size() * LINE;
            lines.add(text);
        }
        getChildren().addAll(lines);
    }

    /** The setting for the width, smaller where the height is short. */
    private Setting fitted() {
        Setting wide = setting(getWidth());
        double share = Math.min(1, getHeight() / wide.height());
        return new Setting(wide.rows(), wide.size() * share, wide.side() * share);
    }

    /** Height of the capitals as they are shown, in pixels. */
    double capitals() {
        return fitted().size() * CAPITALS;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        return width > 0 ? setting(width).height() : largest.getFont().getSize();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width) / 2;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }
}
