package org.pumpwright.host.ui.control;

import java.util.List;
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
    private static final double LEFT = 4.2;
    private static final double RIGHT = 7.0;
    private static final double LANE = 6.2;
    private static final double LEAST_TYPE = 18;
    /** The lane is this many brackets wide. */
    private static final double BRACKETS = 2.4;

    private final Canvas canvas = new Canvas();
    private final ObjectProperty<List<RepeatLane>> lanes = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private double em = LEAST_TYPE;

    /** No lanes yet. */
    public RepeatDots() {
        getStyleClass().add("repeat-dots");
        canvas.setManaged(false);
        getChildren().add(canvas);
        lanes.addListener((observed, old, now) -> redraw());
        palette.addListener((observed, old, now) -> redraw());
    }

    /** What it shows. */
    public ObjectProperty<List<RepeatLane>> lanesProperty() {
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
                ? LEAST_TYPE
                : LEAST_TYPE
                        * Math.max(
                                1,
                                Math.min(
                                        getScene().getWidth() / 1280, getScene().getHeight() / 800));
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.clearRect(0, 0, getWidth(), getHeight());
        int count = Math.max(1, lanes.get().size());
        double high = Math.min(getHeight() / count, LANE * em);
        for (int i = 0; i < lanes.get().size(); i++) {
            draw(pen, lanes.get().get(i), high * (i + 0.5), high);
        }
    }

    private void draw(GraphicsContext pen, RepeatLane lane, double y, double high) {
        double from = LEFT * em;
        double to = getWidth() - RIGHT * em;
        double middle = (from + to) / 2;
        double bracket = (to - from) / BRACKETS;
        pen.setStroke(palette.get().faint());
        pen.setLineWidth(2);
        pen.strokeLine(from, y, to, y);
        drawBracket(pen, middle, bracket, y, high, lane);
        pen.setTextBaseline(VPos.CENTER);
        pen.setFill(palette.get().ink());
        pen.setFont(Font.font("Inter", FontWeight.BOLD, 1.15 * em));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.fillText(lane.name(), from - 0.5 * em, y);
        for (double value : lane.values()) {
            drawDot(pen, Math.max(from, Math.min(to, middle + lane.place(value) * bracket)), y, lane.tooFar());
        }
        drawCount(pen, lane, to + 0.6 * em, y);
    }

    private void drawBracket(GraphicsContext pen, double middle, double wide, double y, double high, RepeatLane lane) {
        double half = Math.min(high * 0.34, 1.5 * em);
        pen.setFill(palette.get().healthy().deriveColor(0, 1, 1, 0.18));
        pen.fillRect(middle - wide / 2, y - half, wide, 2 * half);
        pen.setStroke(lane.tooFar() ? palette.get().outside() : palette.get().healthy());
        pen.setLineWidth(3);
        for (int sign : new int[] {-1, 1}) {
            double side = middle + sign * wide / 2;
            double foot = side - sign * 0.4 * em;
            pen.strokePolyline(
                    new double[] {foot, side, side, foot}, new double[] {y - half, y - half, y + half, y + half}, 4);
        }
    }

    private void drawDot(GraphicsContext pen, double x, double y, boolean tooFar) {
        double r = 0.5 * em;
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(1.5);
        pen.setFill(tooFar ? palette.get().outside() : palette.get().measured());
        if (tooFar) {
            pen.fillRect(x - r, y - r, 2 * r, 2 * r);
            pen.strokeRect(x - r, y - r, 2 * r, 2 * r);
        } else {
            pen.fillOval(x - r, y - r, 2 * r, 2 * r);
            pen.strokeOval(x - r, y - r, 2 * r, 2 * r);
        }
    }

    private void drawCount(GraphicsContext pen, RepeatLane lane, double x, double y) {
        pen.setFill(palette.get().ink());
        pen.setTextAlign(TextAlignment.LEFT);
        pen.setFont(Font.font("Inter", FontWeight.BOLD, 1.15 * em));
        pen.fillText(lane.count(), x, y - 0.66 * em);
        pen.setFont(Font.font("Inter", 0.9 * em));
        pen.fillText(lane.spread(), x, y + 0.66 * em);
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
