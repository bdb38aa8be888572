package org.pumpwright.host.ui.control;

import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.pumpwright.host.report.draw.Axis;

/**
 * What several quantities were over the last time, one lane above the other, each with its own scale and with the value of the moment
 * beside it. {@link #redraw} draws it anew; whoever feeds it calls that once for each frame at most. JavaFX thread only.
 */
public final class StripChart extends Region {
    private static final double LEFT = 64;
    private static final double RIGHT = 132;
    private static final double FOOT = 26;
    private static final double LANE_GAP = 8;
    private static final double TITLE = 20;
    private static final double TICK_GAP = 8;
    private static final int SCALE_STEPS = 2;
    private static final int TIME_STEPS = 6;
    private static final double LEAST_SECONDS = 10;
    private static final Font FIGURE = Font.font("Inter", FontWeight.BOLD, 25);
    private static final double FIGURE_DROP = 9;
    private static final double UNIT_GAP = 5;

    private final List<StripLane> lanes;
    private final Canvas scales = new Canvas();
    private final TypeScale type = new TypeScale(this::redraw);
    private final ImageView traces = new ImageView();
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);
    private final DoubleProperty span = new SimpleDoubleProperty(120);
    private TraceImage image = new TraceImage(1, 1);
    private Decimation columns = new Decimation(1);

    /** A chart of these lanes, from the top on. */
    public StripChart(List<StripLane> lanes) {
        this.lanes = List.copyOf(lanes);
        getStyleClass().add("strip-chart");
        traces.setManaged(false);
        scales.setManaged(false);
        getChildren().addAll(scales, traces, type);
        palette.addListener((was, old, now) -> redraw());
        span.addListener((was, old, now) -> redraw());
        lanes.forEach(lane -> lane.title().addListener((was, old, now) -> redraw()));
    }

    /** Its colours. */
    public ObjectProperty<Palette> paletteProperty() {
        return palette;
    }

    /** How many seconds it shows; {@link Double#POSITIVE_INFINITY} for all there is. */
    public DoubleProperty spanProperty() {
        return span;
    }

    @Override
    protected void layoutChildren() {
        redraw();
    }

    /** Draws what the series hold now. */
    public void redraw() {
        double scale = type.scale();
        double width = getWidth() / scale;
        double height = getHeight() / scale;
        if (width <= LEFT + RIGHT || height <= FOOT + lanes.size() * LANE_GAP) {
            return;
        }
        fit(width, height, scale);
        Time time = time();
        GraphicsContext pen = scales.getGraphicsContext2D();
        pen.setTransform(scale, 0, 0, scale, 0, 0);
        pen.clearRect(0, 0, width, height);
        image.clear();
        double each = (height - FOOT) / lanes.size();
        drawTimes(pen, time, height);
        for (int i = 0; i < lanes.size(); i++) {
            drawLane(pen, lanes.get(i), i * each, each - LANE_GAP, time);
        }
        image.show();
    }

    private void fit(double width, double height, double scale) {
        int columnsNow = Math.max(1, (int) ((width - LEFT - RIGHT) * scale));
        int rows = Math.max(1, (int) ((height - FOOT) * scale));
        scales.setWidth(getWidth());
        scales.setHeight(getHeight());
        if (image.width() != columnsNow || image.height() != rows) {
            image = new TraceImage(columnsNow, rows);
            columns = new Decimation(columnsNow);
            traces.setImage(image.image());
            traces.relocate(LEFT * scale, 0);
        }
    }

    /** The time that is shown, in seconds. */
    private record Time(double from, double to) {}

    private Time time() {
        double last = 0;
        double first = Double.POSITIVE_INFINITY;
        for (StripLane lane : lanes) {
            TimeSeries series = lane.series();
            if (series.size() > 0) {
                last = Math.max(last, series.second(series.size() - 1));
                first = Math.min(first, series.second(0));
            }
        }
        double begin = Double.isFinite(first) ? Math.max(first, last - span.get()) : 0;
        return new Time(begin, Math.max(last, begin + LEAST_SECONDS));
    }

    private void drawLane(GraphicsContext pen, StripLane lane, double top, double height, Time time) {
        columns.take(lane.series(), time.from(), time.to());
        Axis scale = Axis.toCover(Math.max(lane.leastTop(), highest()), SCALE_STEPS);
        double ceiling = top + TITLE;
        double pixels = type.scale();
        TraceImage.Lane rows = new TraceImage.Lane(
                (int) (ceiling * pixels), (int) ((top + height) * pixels), scale.from(), scale.to());
        drawScale(pen, scale, rows);
        drawWords(pen, lane, top, height);
        image.paint(columns, rows, lane.stroke());
    }

    private double traceWidth() {
        return image.width() / type.scale();
    }

    private double highest() {
        double most = 0;
        for (int column = 0; column < columns.columns(); column++) {
            if (columns.high(column) > most) {
                most = columns.high(column);
            }
        }
        return most;
    }

    private void drawScale(GraphicsContext pen, Axis scale, TraceImage.Lane rows) {
        pen.setFont(Font.font("Inter", 14));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.setTextBaseline(VPos.CENTER);
        pen.setLineWidth(1);
        for (double tick : scale.ticks()) {
            double y = (Math.round(rows.row(tick)) - 0.5) / type.scale();
            pen.setStroke(palette.get().faint());
            pen.strokeLine(LEFT, y, LEFT + traceWidth(), y);
            pen.setFill(palette.get().ink());
            pen.fillText(scale.label(tick), LEFT - TICK_GAP, y);
        }
    }

    private void drawWords(GraphicsContext pen, StripLane lane, double top, double height) {
        pen.setFill(palette.get().ink());
        pen.setTextAlign(TextAlignment.LEFT);
        pen.setTextBaseline(VPos.TOP);
        pen.setFont(Font.font("Inter", FontWeight.BOLD, 14));
        pen.fillText(lane.title().getValue(), LEFT, top);
        pen.setTextBaseline(VPos.CENTER);
        double x = LEFT + traceWidth() + TICK_GAP;
        drawLatest(pen, lane.latest().getValue(), x, top + TITLE + (height - TITLE) / 2);
    }

    /** The figure large, its unit beside it. */
    private static void drawLatest(GraphicsContext pen, String latest, double x, double y) {
        int space = latest.indexOf(' ');
        String figure = space < 0 ? latest : latest.substring(0, space);
        pen.setTextBaseline(VPos.BASELINE);
        pen.setFont(FIGURE);
        pen.fillText(figure, x, y + FIGURE_DROP);
        Text measured = new Text(figure);
        measured.setFont(FIGURE);
        double unitX = x + measured.getLayoutBounds().getWidth() + UNIT_GAP;
        pen.setFont(Font.font("Inter", 14));
        pen.fillText(space < 0 ? "" : latest.substring(space + 1), unitX, y + FIGURE_DROP);
    }

    private void drawTimes(GraphicsContext pen, Time time, double height) {
        double length = time.to() - time.from();
        Axis axis = Axis.toCover(length, TIME_STEPS);
        pen.setFont(Font.font("Inter", 14));
        pen.setFill(palette.get().ink());
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.BOTTOM);
        for (double ago : axis.ticks()) {
            if (ago <= length) {
                double x = LEFT + (1 - ago / length) * traceWidth();
                pen.fillText(ago == 0 ? "0 s" : "\u2212" + axis.label(ago) + " s", x, height - 2);
            }
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return 640;
    }

    @Override
    protected double computePrefHeight(double width) {
        return FOOT + lanes.size() * 90.0;
    }

    @Override
    protected double computeMinWidth(double height) {
        return LEFT + RIGHT + 100;
    }

    @Override
    protected double computeMinHeight(double width) {
        return FOOT + lanes.size() * 48.0;
    }
}
