package org.pumpwright.host.ui.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.paint.Color;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.ui.Saying;
import org.pumpwright.host.ui.control.Palette;
import org.pumpwright.host.ui.control.ShownUnits;
import org.pumpwright.host.ui.control.StripChart;
import org.pumpwright.host.ui.control.StripLane;
import org.pumpwright.host.ui.control.Stroke;
import org.pumpwright.host.ui.control.TimeSeries;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.StripSample;

/** Flow, volts, amps and pressure of a run over the time, in the units of the moment. JavaFX thread only. */
final class RunStrip {
    private final Saying saying;
    private final RunModel model;
    private final List<Lane> lanes = new ArrayList<>();
    private final StripChart chart;
    private int shown;

    /** One quantity: where it comes from and how it is said. */
    private record Lane(
            TimeSeries series,
            StringProperty latest,
            BiFunction<StripSample, UnitSystem, Double> value,
            BiFunction<Double, UnitSystem, String> words) {}

    RunStrip(Saying saying, RunModel model, ObservableBooleanValue dark) {
        this.saying = saying;
        this.model = model;
        chart = new StripChart(List.of(
                lane(
                        saying.text("ui.run.strip.flow"),
                        Palette.LIGHT.measured(),
                        1,
                        (one, units) -> ShownUnits.flow(one.flow(), units),
                        (value, units) -> ShownUnits.fixed("%.2f ", value) + ShownUnits.flow(units)),
                lane(
                        saying.text("ui.run.strip.volts"),
                        Palette.LIGHT.healthy(),
                        14,
                        (one, units) -> one.volts(),
                        (value, units) -> ShownUnits.fixed("%.2f V", value)),
                lane(
                        saying.text("ui.run.strip.amps"),
                        Palette.LIGHT.outside(),
                        1,
                        (one, units) -> one.amps(),
                        (value, units) -> ShownUnits.fixed("%.2f A", value)),
                lane(
                        saying.text("ui.run.strip.pressure"),
                        Palette.LIGHT.near(),
                        10,
                        (one, units) -> ShownUnits.pressure(one.pascals(), units),
                        (value, units) -> ShownUnits.fixed(units == UnitSystem.US ? "%.1f " : "%.0f ", value)
                                + ShownUnits.pressure(units))));
        chart.paletteProperty().bind(Palette.of(dark));
        model.view().stripSizeProperty().addListener((observed, old, now) -> follow());
        saying.unitsProperty().addListener((observed, old, now) -> anew());
        anew();
    }

    private StripLane lane(
            ObservableValue<String> title,
            Color color,
            double leastTop,
            BiFunction<StripSample, UnitSystem, Double> value,
            BiFunction<Double, UnitSystem, String> words) {
        Lane lane = new Lane(new TimeSeries(), new SimpleStringProperty(""), value, words);
        lanes.add(lane);
        return new StripLane(title, lane.latest(), lane.series(), new Stroke(color, 3, 0), leastTop);
    }

    StripChart chart() {
        return chart;
    }

    private void anew() {
        shown = 0;
        lanes.forEach(lane -> {
            lane.series().clear();
            lane.latest().set("");
        });
        follow();
    }

    private void follow() {
        int size = model.view().stripSizeProperty().get();
        if (size < shown) {
            anew();
            return;
        }
        UnitSystem units = saying.unitsProperty().get();
        List<StripSample> samples = model.view().strip();
        for (; shown < size; shown++) {
            StripSample sample = samples.get(shown);
            for (Lane lane : lanes) {
                double value = lane.value().apply(sample, units);
                lane.series().add(sample.second(), value);
                lane.latest().set(lane.words().apply(value, units));
            }
        }
        chart.redraw();
    }
}
