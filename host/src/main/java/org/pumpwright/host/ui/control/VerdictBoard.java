package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import javafx.scene.transform.Scale;
import org.pumpwright.host.grade.Verdict;

/**
 * A verdict that is read across the shop: its sign, and its word on one line. What is read from afar is the height of the letters, so a
 * wide word is first set narrower, with a smaller sign, and only then lower. The largest size is the style sheet's. JavaFX thread only.
 */
public final class VerdictBoard extends Region {
    /** Height of the capitals of the bundled type, as a share of its size. */
    public static final double CAPITALS = 0.727;

    /** Air above and below the letters; what stands under them needs the room. */
    private static final double GAP = 0.1;

    private static final double ACCENT_GAP = 0.03;
    private static final double BESIDE = 0.14;
    /** Heights of the sign, as shares of the size of the type, the best first. */
    private static final double[] SIGNS = {CAPITALS, 0.8 * CAPITALS, 0.6 * CAPITALS};
    /** Letters this much narrower still look like the type. */
    private static final double NARROW = 0.8;
    /** Narrower ones are hard to tell apart. */
    private static final double NARROWEST = 0.7;

    private static final double TRIAL = 100;
    private final VerdictSign sign = new VerdictSign();
    private final Text shown = new Text();
    /** The word is set in the style sheet's size and drawn smaller: a size set here would be the style sheet's to take back. */
    private final Scale setting = new Scale(1, 1);

    private final ObservableValue<String> word;

    /** Shows this word. */
    public VerdictBoard(ObservableValue<String> word) {
        this.word = word;
        getStyleClass().add("verdict-board");
        shown.getStyleClass().add("verdict-word");
        shown.setTextOrigin(VPos.BASELINE);
        shown.setManaged(false);
        shown.getTransforms().add(setting);
        getChildren().addAll(sign, shown);
        word.addListener((observed, old, now) -> requestLayout());
        shown.fontProperty().addListener((observed, old, now) -> requestLayout());
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
     * @param size of the type
     * @param side of the sign
     * @param width of the letters, as a share of their own
     */
    private record Setting(double size, double side, double width) {}

    /** Height of the whole for a size of 1: an accent on a capital needs more above it. */
    private double height() {
        return Math.max(CAPITALS + GAP, rise()) + GAP;
    }

    private double rise() {
        Text trial = trial(word.getValue());
        trial.setBoundsType(TextBoundsType.VISUAL);
        return ACCENT_GAP - trial.getLayoutBounds().getMinY() / TRIAL;
    }

    /** The setting for a size of the type; with a smaller one where even the narrowest letters are too wide. */
    private Setting setting(double width, double size) {
        double ems = emsWide(word.getValue());
        for (double share : SIGNS) {
            double narrow = (width / size - share - BESIDE) / ems;
            if (narrow >= NARROW) {
                return new Setting(size, size * share, Math.min(1, narrow));
            }
        }
        double share = SIGNS[SIGNS.length - 1];
        double fitting = Math.min(size, width / (ems * NARROWEST + share + BESIDE));
        return new Setting(fitting, fitting * share, (width / fitting - share - BESIDE) / ems);
    }

    private static double emsWide(String row) {
        return trial(row).getLayoutBounds().getWidth() / TRIAL;
    }

    private static Text trial(String row) {
        Text trial = new Text(row.isEmpty() ? " " : row);
        trial.setFont(Font.font("Inter", FontWeight.BOLD, TRIAL));
        return trial;
    }

    @Override
    protected void layoutChildren() {
        double low = getHeight() / height();
        double full = shown.getFont().getSize();
        Setting set = setting(getWidth(), Math.min(full, low));
        double capitals = set.size() * CAPITALS;
        double base = set.size() * (height() - GAP);
        sign.resizeRelocate(0, base - capitals + (capitals - set.side()) / 2, set.side(), set.side());
        shown.setText(word.getValue());
        shown.setX(set.side() + set.size() * BESIDE);
        shown.setY(base);
        setting.setPivotX(shown.getX());
        setting.setPivotY(base);
        setting.setX(set.width() * set.size() / full);
        setting.setY(set.size() / full);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        double size = shown.getFont().getSize();
        return width > 0 ? setting(width, size).size() * height() : size;
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
