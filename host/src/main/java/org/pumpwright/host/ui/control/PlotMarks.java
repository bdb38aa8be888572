package org.pumpwright.host.ui.control;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.pumpwright.host.ui.control.CurvePicture.Band;
import org.pumpwright.host.ui.control.CurvePicture.Dot;
import org.pumpwright.host.ui.control.CurvePicture.Spot;
import org.pumpwright.host.ui.control.CurvePicture.Standing;
import org.pumpwright.host.ui.control.CurvePicture.Way;

/** What lies inside the axes: the healthy range, runs, their points, and the ring of the moment. JavaFX thread only. */
final class PlotMarks {
    private static final double DOT = 7;
    private static final double RING = 15;

    private final GraphicsContext pen;
    private final PlotFrame frame;
    private final Palette palette;

    PlotMarks(GraphicsContext pen, PlotFrame frame, Palette palette) {
        this.pen = pen;
        this.frame = frame;
        this.palette = palette;
    }

    /** A run: its way up, its way down, and its points. */
    void run(List<Dot> dots) {
        way(dots, Way.UP);
        way(dots, Way.DOWN);
        inDrawingOrder(dots).forEach(this::dot);
    }

    /** What matters most is drawn last and so lies on top. */
    private static List<Dot> inDrawingOrder(List<Dot> dots) {
        return dots.stream()
                .sorted(Comparator.comparing((Dot dot) -> dot.standing() != Standing.INSIDE)
                        .thenComparing(dot -> dot.way() == Way.UP))
                .toList();
    }

    void band(List<Band> band) {
        if (band.size() < 2) {
            return;
        }
        int n = band.size();
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = frame.across(band.get(i).volts());
            ys[i] = frame.down(band.get(i).low());
            xs[2 * n - 1 - i] = xs[i];
            ys[2 * n - 1 - i] = frame.down(band.get(i).high());
        }
        pen.setFill(palette.healthy().deriveColor(0, 1, 1, 0.22));
        pen.fillPolygon(xs, ys, 2 * n);
        pen.setStroke(palette.healthy());
        pen.setLineWidth(1.5);
        pen.strokePolygon(xs, ys, 2 * n);
        pen.setLineDashes(14, 5, 3, 5);
        double[] means = new double[n];
        for (int i = 0; i < n; i++) {
            means[i] = frame.down(band.get(i).mean());
        }
        // In one stroke: the dashes would begin anew at each piece.
        pen.strokePolyline(xs, means, n);
        pen.setLineDashes();
    }

    /** The way up of a run before, hollow squares on a dotted line: it never looks like the run that is shown. */
    void earlier(List<Dot> earlier) {
        List<Dot> up = earlier.stream().filter(dot -> dot.way() == Way.UP).toList();
        pen.setStroke(palette.ink());
        pen.setLineWidth(2.5);
        pen.setLineDashes(3, 7);
        for (int i = 1; i < up.size(); i++) {
            Spot from = up.get(i - 1).spot();
            Spot to = up.get(i).spot();
            pen.strokeLine(
                    frame.across(from.volts()),
                    frame.down(from.value()),
                    frame.across(to.volts()),
                    frame.down(to.value()));
        }
        pen.setLineDashes();
        for (Dot dot : up) {
            double cx = frame.across(dot.spot().volts());
            double cy = frame.down(dot.spot().value());
            pen.setFill(palette.ground());
            pen.fillRect(cx - DOT, cy - DOT, 2 * DOT, 2 * DOT);
            pen.strokeRect(cx - DOT, cy - DOT, 2 * DOT, 2 * DOT);
        }
    }

    private void way(List<Dot> dots, Way way) {
        pen.setStroke(palette.measured());
        pen.setLineWidth(3);
        pen.setLineDashes(way == Way.DOWN ? new double[] {9, 6} : new double[0]);
        Optional<Spot> before = Optional.empty();
        for (Dot dot : dots) {
            // The way down begins at the last point of the way up.
            if (dot.way() == way || (way == Way.DOWN && dot.way() == Way.UP)) {
                if (before.isPresent() && dot.way() == way) {
                    Spot from = before.get();
                    pen.strokeLine(
                            frame.across(from.volts()),
                            frame.down(from.value()),
                            frame.across(dot.spot().volts()),
                            frame.down(dot.spot().value()));
                }
                before = Optional.of(dot.spot());
            }
        }
        pen.setLineDashes();
    }

    private void dot(Dot dot) {
        double cx = frame.across(dot.spot().volts());
        double cy = frame.down(dot.spot().value());
        pen.setStroke(palette.ink());
        pen.setLineWidth(1.5);
        double high = frame.down(dot.spot().value() + dot.half());
        double low = frame.down(Math.max(0, dot.spot().value() - dot.half()));
        pen.strokeLine(cx, high, cx, low);
        pen.strokeLine(cx - 5, high, cx + 5, high);
        pen.strokeLine(cx - 5, low, cx + 5, low);
        switch (dot.standing()) {
            case BELOW -> triangle(cx, cy, 1);
            case ABOVE -> triangle(cx, cy, -1);
            case NEAR -> square(cx, cy);
            case INSIDE -> inside(dot.way(), cx, cy);
        }
    }

    private void inside(Way way, double cx, double cy) {
        pen.setFill(way == Way.UP ? palette.measured() : palette.ground());
        // Edged in ink: it stands out from its line and from the range in black and white too.
        pen.setStroke(palette.ink());
        pen.setLineWidth(2);
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
    private void triangle(double cx, double cy, int way) {
        double r = 1.7 * DOT;
        double[] xs = {cx - r, cx + r, cx};
        double[] ys = {cy - way * r, cy - way * r, cy + way * r};
        pen.setFill(palette.outside());
        pen.setStroke(palette.ink());
        pen.fillPolygon(xs, ys, xs.length);
        pen.strokePolygon(xs, ys, xs.length);
    }

    private void square(double cx, double cy) {
        double r = 1.2 * DOT;
        pen.setFill(palette.near());
        pen.setStroke(palette.ink());
        pen.fillRect(cx - r, cy - r, 2 * r, 2 * r);
        pen.strokeRect(cx - r, cy - r, 2 * r, 2 * r);
    }

    /** Where the unit is now: a ring around a dot, on a bright halo, with lines to both axes. */
    void now(Spot spot) {
        double cx = frame.across(spot.volts());
        double cy = frame.down(spot.value());
        pen.setStroke(palette.ink());
        pen.setLineWidth(1.5);
        pen.setLineDashes(3, 5);
        pen.strokeLine(cx, cy + RING, cx, frame.down(0));
        pen.strokeLine(PlotFrame.LEFT, cy, cx - RING, cy);
        pen.setLineDashes();
        ring(cx, cy, 9, palette.ground());
        ring(cx, cy, 4, palette.ink());
        pen.setFill(palette.ink());
        pen.fillOval(cx - DOT / 2, cy - DOT / 2, DOT, DOT);
        frame.drawTags(pen, palette, spot);
    }

    private void ring(double cx, double cy, double wide, Color color) {
        pen.setStroke(color);
        pen.setLineWidth(wide);
        pen.strokeOval(cx - RING, cy - RING, 2 * RING, 2 * RING);
    }
}
