package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableValue;

/**
 * One lane of a {@link StripChart}. JavaFX thread only.
 *
 * @param title what it shows, with its unit
 * @param latest the value of the moment as a person reads it
 * @param series what is drawn
 * @param stroke how
 * @param leastTop the scale reaches at least up to here
 */
public record StripLane(
        ObservableValue<String> title,
        ObservableValue<String> latest,
        TimeSeries series,
        Stroke stroke,
        double leastTop) {}
