package org.pumpwright.host.ui.control;

import javafx.scene.paint.Color;

/**
 * How a line looks, so that it is known without colour. Thread-safe.
 *
 * @param color of the line
 * @param pixels how thick
 * @param dash pixels drawn, then as many left out; 0 for a whole line
 */
public record Stroke(Color color, int pixels, int dash) {
    private static final int THICKEST = 20;
    private static final double FULL = 255;

    public Stroke {
        if (pixels < 1 || pixels > THICKEST) {
            throw new IllegalArgumentException("a line of %d pixels; 1 to %d can be drawn".formatted(pixels, THICKEST));
        }
        if (dash < 0) {
            throw new IllegalArgumentException("a dash of %d pixels".formatted(dash));
        }
    }

    boolean draws(int column) {
        return dash == 0 || column / dash % 2 == 0;
    }

    /** Alpha, red, green, blue with eight bits each; the colour is taken as opaque. */
    int argb() {
        return 0xff000000 | part(color.getRed()) << 16 | part(color.getGreen()) << 8 | part(color.getBlue());
    }

    private static int part(double share) {
        return (int) Math.round(share * FULL);
    }
}
