package org.pumpwright.benchmarks.window;

import javafx.scene.Node;

/** A chart that is fed with 8 series at once. JavaFX thread only. */
interface FedChart {
    /** Names it in the table. */
    String name();

    /** The chart, with what it was fed so far. */
    Node node();

    /** One value more of one series. */
    void add(double second, int series, double value);

    /** All values of one frame are there: they are to be seen. */
    void show();
}
