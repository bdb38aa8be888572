package org.pumpwright.host.ui.control;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/**
 * How well runs repeat: a lane for each group of runs, a dot for each run, and a bracket as wide as the runs may lie apart. The bracket
 * sits in the middle of the dots, so what sticks out of it is too far. JavaFX thread only.
 */
public final class RepeatDots extends Region {
    private static final double LEFT = 3.4;
    private static final double RIGHT = 6.6;
    /** The lane is this many brackets wide. */
    private static final double BRACKETS = 3;

    private final Canvas canvas = new Canvas();
    private final ObjectProperty<List<Lane>> lanes = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private double em = 18;

    /**
     * One group of runs.
     *
     * @param name in front of it
     * @param values one for each run
     * @param planned how many runs there are to be
     * @param bracketShare how far they may lie apart, as a share of their mean
     */
    public record Lane(String name, List<Double> values, int planned, double bracketShare) {
        public Lane {
            values = List.copyOf(values);
        }

        private double mean() {
            return values.stream().mapToDouble(each -> each).average().orElse(0);
        }

        private double least() {
            return values.stream().mapToDouble(each -> each).min().orElse(0);
        }

        private double most() {
            return values.stream().mapToDouble(each -> each).max().orElse(0);
        }

        private double rangeShare() {
            return values.size() < 2 ? 0 : (most() - least()) / mean();
        }

        private boolean tooFar() {
            return rangeShare() > bracketShare;
        }
    }

    /** No lanes yet. */
    public RepeatDots() {
        getStyleClass().add("repeat-dots");
        canvas.setManaged(false);
        getChildren().add(canvas);
        lanes.addListener((observed, old, now) -> redraw());
        palette.addListener((observed, old, now) -> redraw());
    }

    /** What it shows. */
    public ObjectProperty<List<Lane>> lanesProperty() {
        return lanes;
    }

    /** Its colours. */
    public ObjectProperty<Palette> paletteProperty() {
        return palette;
    }

    @Override
    protected void layoutChildren() {
        redraw();
    }

    private void redraw() {
        if (getWidth() < 1 || getHeight() < 1) {
            return;
        }
        em = getScene() == null
                ? 18
                : Math.max(18, Math.min(getScene().getWidth() / 1280, getScene().getHeight() / 800) * 18);
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.clearRect(0, 0, getWidth(), getHeight());
        int count = Math.max(1, lanes.get().size());
        double high = Math.min(getHeight() / count, 5.2 * em);
        for (int i = 0; i < lanes.get().size(); i++) {
            draw(pen, lanes.get().get(i), high * (i + 0.5), high);
        }
    }

    private void draw(GraphicsContext pen, Lane lane, double y, double high) {
        double from = LEFT * em;
        double to = getWidth() - RIGHT * em;
        double middle = (from + to) / 2;
        double bracket = (to - from) / BRACKETS;
        pen.setStroke(palette.get().faint());
        pen.setLineWidth(2);
        pen.strokeLine(from, y, to, y);
        drawBracket(pen, middle - bracket / 2, middle + bracket / 2, y, high, lane);
        pen.setTextBaseline(VPos.CENTER);
        pen.setFill(palette.get().ink());
        pen.setFont(Font.font("Inter", FontWeight.BOLD, em));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.fillText(lane.name(), from - 0.5 * em, y);
        double centre = (lane.most() + lane.least()) / 2;
        for (double value : lane.values()) {
            double off = (value - centre) / lane.mean() / lane.bracketShare() * bracket;
            drawDot(pen, Math.max(from, Math.min(to, middle + off)), y, lane);
        }
        drawCount(pen, lane, to, y);
    }

    private void drawBracket(GraphicsContext pen, double from, double to, double y, double high, Lane lane) {
        double half = Math.min(high * 0.34, 1.3 * em);
        pen.setFill(palette.get().healthy().deriveColor(0, 1, 1, 0.18));
        pen.fillRect(from, y - half, to - from, 2 * half);
        pen.setStroke(lane.tooFar() ? palette.get().outside() : palette.get().healthy());
        pen.setLineWidth(3);
        for (double side : new double[] {from, to}) {
            double foot = side == from ? 0.4 * em : -0.4 * em;
            pen.strokePolyline(
                    new double[] {side + foot, side, side, side + foot},
                    new double[] {y - half, y - half, y + half, y + half},
                    4);
        }
    }

    private void drawDot(GraphicsContext pen, double x, double y, Lane lane) {
        double r = 0.42 * em;
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(1.5);
        pen.setFill(lane.tooFar() ? palette.get().outside() : palette.get().measured());
        if (lane.tooFar()) {
            pen.fillRect(x - r, y - r, 2 * r, 2 * r);
            pen.strokeRect(x - r, y - r, 2 * r, 2 * r);
        } else {
            pen.fillOval(x - r, y - r, 2 * r, 2 * r);
            pen.strokeOval(x - r, y - r, 2 * r, 2 * r);
        }
    }

    private void drawCount(GraphicsContext pen, Lane lane, double to, double y) {
        pen.setFill(palette.get().ink());
        pen.setTextAlign(TextAlignment.LEFT);
        pen.setFont(Font.font("Inter", FontWeight.BOLD, em));
        pen.fillText("%d/%d".formatted(lane.values().size(), lane.planned()), to + 0.6 * em, y - 0.62 * em);
        pen.setFont(Font.font("Inter", 0.86 * em));
        if (lane.values().size() > 1) {
            pen.fillText(
                    String.format(Locale.ROOT, "%.2f / %.2f %%", 100 * lane.rangeShare(), 100 * lane.bracketShare()),
                    to + 0.6 * em,
                    y + 0.62 * em);
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return 22 * em;
    }

    @Override
    protected double computePrefHeight(double width) {
        return 15 * em;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 16 * em;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }
}
