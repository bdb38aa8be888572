package org.pumpwright.host.ui.control;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.ui.control.CurvePicture.Band;
import org.pumpwright.host.ui.control.CurvePicture.Dot;
import org.pumpwright.host.ui.control.CurvePicture.Spot;
import org.pumpwright.host.ui.control.CurvePicture.Standing;
import org.pumpwright.host.ui.control.CurvePicture.Way;

/**
 * A sweep while it is made: the healthy range, its mean, each measured point with its uncertainty, and a ring where the unit is now.
 * Ways and standings are told by shape, colour only repeats them. JavaFX thread only.
 */
public final class LivePlot extends Region {
    private static final double LEFT = 62;
    private static final double RIGHT = 16;
    private static final double TOP = 34;
    private static final double BOTTOM = 52;
    private static final double DOT = 7;
    private static final double RING = 15;
    private static final double LEAST_VOLTS = 14;
    private static final int STEPS = 6;

    private final Canvas canvas = new Canvas();
    private final TypeScale type = new TypeScale(this::redraw);
    private final ObservableValue<String> across;
    private final ObservableValue<String> up;
    private final ObjectProperty<CurvePicture> picture = new SimpleObjectProperty<>(CurvePicture.EMPTY);
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private Axis x = Axis.toCover(1, 1);
    private Axis y = Axis.toCover(1, 1);

    /**
     * An empty plot.
     *
     * @param across title of the axis of effective volts
     * @param up title of the other one, with its unit
     */
    public LivePlot(ObservableValue<String> across, ObservableValue<String> up) {
        this.across = across;
        this.up = up;
        getStyleClass().add("live-plot");
        canvas.setManaged(false);
        getChildren().addAll(canvas, type);
        picture.addListener((was, old, now) -> redraw());
        palette.addListener((was, old, now) -> redraw());
        across.addListener((was, old, now) -> redraw());
        up.addListener((was, old, now) -> redraw());
    }

    /** What it shows. */
    public ObjectProperty<CurvePicture> pictureProperty() {
        return picture;
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
        if (wide() <= LEFT + RIGHT || high() <= TOP + BOTTOM) {
            return;
        }
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        CurvePicture shown = picture.get();
        x = Axis.toCover(Math.max(LEAST_VOLTS, widest(shown)), STEPS);
        y = Axis.toCover(highest(shown), STEPS);
        GraphicsContext pen = canvas.getGraphicsContext2D();
        double scale = type.scale();
        pen.setTransform(scale, 0, 0, scale, 0, 0);
        pen.clearRect(0, 0, wide(), high());
        drawBand(pen, shown.band());
        drawGrid(pen);
        drawEarlier(pen, shown.earlier());
        drawWay(pen, shown.dots(), Way.UP);
        drawWay(pen, shown.dots(), Way.DOWN);
        inDrawingOrder(shown.dots()).forEach(dot -> drawDot(pen, dot));
        shown.now().ifPresent(spot -> drawRing(pen, spot));
    }

    /** What matters most is drawn last and so lies on top. */
    private static List<Dot> inDrawingOrder(List<Dot> dots) {
        return dots.stream()
                .sorted(Comparator.comparing((Dot dot) -> dot.standing() != Standing.INSIDE)
                        .thenComparing(dot -> dot.way() == Way.UP))
                .toList();
    }

    private double wide() {
        return getWidth() / type.scale();
    }

    private double high() {
        return getHeight() / type.scale();
    }

    /** The way up of a run before, hollow squares on a dotted line: it never looks like the run that is shown. */
    private void drawEarlier(GraphicsContext pen, List<Dot> earlier) {
        List<Dot> up = earlier.stream().filter(dot -> dot.way() == Way.UP).toList();
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(2.5);
        pen.setLineDashes(3, 7);
        for (int i = 1; i < up.size(); i++) {
            Spot from = up.get(i - 1).spot();
            Spot to = up.get(i).spot();
            pen.strokeLine(across(from.volts()), down(from.value()), across(to.volts()), down(to.value()));
        }
        pen.setLineDashes();
        for (Dot dot : up) {
            double cx = across(dot.spot().volts());
            double cy = down(dot.spot().value());
            pen.setFill(palette.get().ground());
            pen.fillRect(cx - DOT, cy - DOT, 2 * DOT, 2 * DOT);
            pen.strokeRect(cx - DOT, cy - DOT, 2 * DOT, 2 * DOT);
        }
    }

    private static double widest(CurvePicture shown) {
        double most = shown.band().stream().mapToDouble(Band::volts).max().orElse(0);
        double measured =
                all(shown).mapToDouble(dot -> dot.spot().volts()).max().orElse(0);
        return Math.max(Math.max(most, measured), shown.now().map(Spot::volts).orElse(0.0));
    }

    private static Stream<Dot> all(CurvePicture shown) {
        return Stream.concat(shown.dots().stream(), shown.earlier().stream());
    }

    private static double highest(CurvePicture shown) {
        double most = shown.band().stream().mapToDouble(Band::high).max().orElse(1);
        double measured = all(shown)
                .mapToDouble(dot -> dot.spot().value() + dot.half())
                .max()
                .orElse(0);
        return Math.max(Math.max(most, measured), shown.now().map(Spot::value).orElse(0.0));
    }

    private void drawBand(GraphicsContext pen, List<Band> band) {
        if (band.size() < 2) {
            return;
        }
        int n = band.size();
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = across(band.get(i).volts());
            ys[i] = down(band.get(i).low());
            xs[2 * n - 1 - i] = xs[i];
            ys[2 * n - 1 - i] = down(band.get(i).high());
        }
        pen.setFill(palette.get().healthy().deriveColor(0, 1, 1, 0.22));
        pen.fillPolygon(xs, ys, 2 * n);
        pen.setStroke(palette.get().healthy());
        pen.setLineWidth(1.5);
        pen.strokePolygon(xs, ys, 2 * n);
        pen.setLineDashes(14, 5, 3, 5);
        double[] means = new double[n];
        for (int i = 0; i < n; i++) {
            means[i] = down(band.get(i).mean());
        }
        // In one stroke: the dashes would begin anew at each piece.
        pen.strokePolyline(xs, means, n);
        pen.setLineDashes();
    }

    private void drawGrid(GraphicsContext pen) {
        pen.setFont(Font.font("Inter", 16));
        pen.setFill(palette.get().ink());
        pen.setLineWidth(1);
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.setTextBaseline(VPos.CENTER);
        for (double tick : y.ticks()) {
            pen.setStroke(palette.get().faint());
            pen.strokeLine(LEFT, down(tick), wide() - RIGHT, down(tick));
            pen.fillText(y.label(tick), LEFT - 8, down(tick));
        }
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.TOP);
        for (double tick : x.ticks()) {
            pen.fillText(x.label(tick), across(tick), high() - BOTTOM + 6);
        }
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(1.5);
        pen.strokeLine(LEFT, down(0), wide() - RIGHT, down(0));
        pen.strokeLine(LEFT, TOP, LEFT, down(0));
        pen.setFont(Font.font("Inter", FontWeight.BOLD, 16));
        pen.fillText(across.getValue(), (LEFT + wide() - RIGHT) / 2, high() - 24);
        pen.setTextAlign(TextAlignment.LEFT);
        pen.fillText(up.getValue(), 6, 6);
    }

    private void drawWay(GraphicsContext pen, List<Dot> dots, Way way) {
        pen.setStroke(palette.get().measured());
        pen.setLineWidth(3);
        pen.setLineDashes(way == Way.DOWN ? new double[] {9, 6} : new double[0]);
        Optional<Spot> before = Optional.empty();
        for (Dot dot : dots) {
            // The way down begins at the last point of the way up.
            if (dot.way() == way || (way == Way.DOWN && dot.way() == Way.UP)) {
                if (before.isPresent() && dot.way() == way) {
                    Spot from = before.get();
                    pen.strokeLine(
                            across(from.volts()),
                            down(from.value()),
                            across(dot.spot().volts()),
                            down(dot.spot().value()));
                }
                before = Optional.of(dot.spot());
            }
        }
        pen.setLineDashes();
    }

    private void drawDot(GraphicsContext pen, Dot dot) {
        double cx = across(dot.spot().volts());
        double cy = down(dot.spot().value());
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(1.5);
        double high = down(dot.spot().value() + dot.half());
        double low = down(Math.max(0, dot.spot().value() - dot.half()));
        pen.strokeLine(cx, high, cx, low);
        pen.strokeLine(cx - 5, high, cx + 5, high);
        pen.strokeLine(cx - 5, low, cx + 5, low);
        switch (dot.standing()) {
            case BELOW -> triangle(pen, cx, cy, 1);
            case ABOVE -> triangle(pen, cx, cy, -1);
            case NEAR -> square(pen, cx, cy);
            case INSIDE -> inside(pen, dot.way(), cx, cy);
        }
    }

    private void inside(GraphicsContext pen, Way way, double cx, double cy) {
        pen.setFill(way == Way.UP ? palette.get().measured() : palette.get().ground());
        pen.setStroke(palette.get().measured());
        pen.setLineWidth(2.5);
        if (way == Way.AGAIN) {
            double r = 1.4 * DOT;
            double[] xs = {cx, cx + r, cx, cx - r};
            double[] ys = {cy - r, cy, cy + r, cy};
            pen.fillPolygon(xs, ys, xs.length);
            pen.strokePolygon(xs, ys, xs.length);
            return;
        }
        double r = way == Way.UP ? DOT : 0.8 * DOT;
        pen.fillOval(cx - r, cy - r, 2 * r, 2 * r);
        pen.strokeOval(cx - r, cy - r, 2 * r, 2 * r);
    }

    /** Points down for what lies below, up for what lies above. */
    private void triangle(GraphicsContext pen, double cx, double cy, int way) {
        double r = 1.7 * DOT;
        double[] xs = {cx - r, cx + r, cx};
        double[] ys = {cy - way * r, cy - way * r, cy + way * r};
        pen.setFill(palette.get().outside());
        pen.setStroke(palette.get().ink());
        pen.fillPolygon(xs, ys, xs.length);
        pen.strokePolygon(xs, ys, xs.length);
    }

    private void square(GraphicsContext pen, double cx, double cy) {
        double r = 1.2 * DOT;
        pen.setFill(palette.get().near());
        pen.setStroke(palette.get().ink());
        pen.fillRect(cx - r, cy - r, 2 * r, 2 * r);
        pen.strokeRect(cx - r, cy - r, 2 * r, 2 * r);
    }

    private void drawRing(GraphicsContext pen, Spot spot) {
        double cx = across(spot.volts());
        double cy = down(spot.value());
        pen.setStroke(palette.get().ink());
        pen.setLineWidth(3);
        pen.strokeOval(cx - RING, cy - RING, 2 * RING, 2 * RING);
        pen.setLineWidth(1);
        pen.setLineDashes(3, 5);
        pen.strokeLine(cx, cy + RING, cx, down(0));
        pen.strokeLine(LEFT, cy, cx - RING, cy);
        pen.setLineDashes();
    }

    private double across(double volts) {
        return LEFT + x.share(volts) * (wide() - LEFT - RIGHT);
    }

    private double down(double value) {
        return high() - BOTTOM - y.share(value) * (high() - TOP - BOTTOM);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 720;
    }

    @Override
    protected double computePrefHeight(double width) {
        return 460;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 320;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 220;
    }
}
