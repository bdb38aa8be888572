package org.pumpwright.host.ui.control;

import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import org.pumpwright.host.report.draw.Axis;
import org.pumpwright.host.ui.control.CurvePicture.Band;
import org.pumpwright.host.ui.control.CurvePicture.Dot;
import org.pumpwright.host.ui.control.CurvePicture.Spot;

/**
 * A sweep while it is made: the healthy range, its mean, each measured point with its uncertainty, and a ring where the unit is now.
 * Ways and standings are told by shape, colour only repeats them. JavaFX thread only.
 */
public final class LivePlot extends Region {
    private static final double LEAST_VOLTS = 14;
    private static final int STEPS_ACROSS = 8;
    private static final int STEPS_UP = 6;

    private final Canvas canvas = new Canvas();
    private final TypeScale type = new TypeScale(this::redraw);
    private final ObservableValue<String> across;
    private final ObservableValue<String> up;
    private final ObjectProperty<CurvePicture> picture = new SimpleObjectProperty<>(CurvePicture.EMPTY);
    private final ObjectProperty<Palette> palette = new SimpleObjectProperty<>(Palette.LIGHT);

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
        double scale = type.scale();
        double wide = getWidth() / scale;
        double high = getHeight() / scale;
        if (!PlotFrame.fits(wide, high)) {
            return;
        }
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        CurvePicture shown = picture.get();
        Palette colours = palette.get();
        PlotFrame frame = new PlotFrame(
                Axis.toCover(Math.max(LEAST_VOLTS, widest(shown)), STEPS_ACROSS),
                Axis.toCover(highest(shown), STEPS_UP),
                wide,
                high);
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.setTransform(scale, 0, 0, scale, 0, 0);
        pen.clearRect(0, 0, wide, high);
        PlotMarks marks = new PlotMarks(pen, frame, colours);
        frame.drawGrid(pen, colours);
        marks.band(shown.band());
        frame.drawAxes(pen, colours, across.getValue(), up.getValue());
        marks.earlier(shown.earlier());
        marks.run(shown.dots());
        shown.now().ifPresent(marks::now);
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
