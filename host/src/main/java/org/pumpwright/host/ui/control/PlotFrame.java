package org.pumpwright.host.ui.control;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.ui.control.CurvePicture.Spot;

/**
 * The axes of a plot: where a value lies, the grid with its ticks, the titles with their units. JavaFX thread only.
 *
 * @param x effective volts
 * @param y the other quantity
 * @param wide width of the plot, in the type's own pixels
 * @param high its height
 */
record PlotFrame(Axis x, Axis y, double wide, double high) {
    static final double LEFT = 66;
    static final double RIGHT = 18;
    static final double TOP = 34;
    static final double BOTTOM = 58;
    private static final double TICK = 7;
    private static final double TYPE = 16;
    private static final double TAG_HIGH = 22;

    /** Whether anything can be drawn in so little room. */
    static boolean fits(double wide, double high) {
        return wide > LEFT + RIGHT && high > TOP + BOTTOM;
    }

    double across(double volts) {
        return LEFT + x.share(volts) * (wide - LEFT - RIGHT);
    }

    double down(double value) {
        return high - BOTTOM - y.share(value) * (high - TOP - BOTTOM);
    }

    void drawGrid(GraphicsContext pen, Palette palette) {
        pen.setLineWidth(1);
        pen.setStroke(palette.faint());
        y.ticks().forEach(tick -> pen.strokeLine(LEFT, down(tick), wide - RIGHT, down(tick)));
        x.ticks().forEach(tick -> pen.strokeLine(across(tick), TOP, across(tick), down(0)));
    }

    void drawAxes(GraphicsContext pen, Palette palette, String acrossTitle, String upTitle) {
        pen.setStroke(palette.ink());
        pen.setFill(palette.ink());
        pen.setLineWidth(2);
        pen.strokeLine(LEFT, down(0), wide - RIGHT, down(0));
        pen.strokeLine(LEFT, TOP, LEFT, down(0));
        pen.setFont(Font.font("Inter", TYPE));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.setTextBaseline(VPos.CENTER);
        for (double tick : y.ticks()) {
            pen.strokeLine(LEFT - TICK, down(tick), LEFT, down(tick));
            pen.fillText(y.label(tick), LEFT - TICK - 5, down(tick));
        }
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.TOP);
        for (double tick : x.ticks()) {
            pen.strokeLine(across(tick), down(0), across(tick), down(0) + TICK);
            pen.fillText(x.label(tick), across(tick), down(0) + TICK + 2);
        }
        pen.setFont(Font.font("Inter", FontWeight.BOLD, TYPE));
        pen.fillText(acrossTitle, (LEFT + wide - RIGHT) / 2, high - 23);
        pen.setTextAlign(TextAlignment.LEFT);
        pen.fillText(upTitle, 6, 6);
    }

    /** Where the unit is now, in figures on both axes. */
    void drawTags(GraphicsContext pen, Palette palette, Spot now) {
        pen.setFont(Font.font("Inter", FontWeight.BOLD, TYPE));
        pen.setTextBaseline(VPos.CENTER);
        pen.setTextAlign(TextAlignment.CENTER);
        tag(pen, palette, String.format(Locale.ROOT, "%.2f", now.value()), LEFT / 2 - 2, down(now.value()), LEFT - 10);
        tag(
                pen,
                palette,
                String.format(Locale.ROOT, "%.1f", now.volts()),
                across(now.volts()),
                down(0) + TICK + 2 + TAG_HIGH / 2,
                46);
    }

    private static void tag(GraphicsContext pen, Palette palette, String figure, double cx, double cy, double across) {
        pen.setFill(palette.ink());
        pen.fillRect(cx - across / 2, cy - TAG_HIGH / 2, across, TAG_HIGH);
        pen.setFill(palette.ground());
        pen.fillText(figure, cx, cy);
    }
}
