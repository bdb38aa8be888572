package org.pumpwright.host.ui.control;

import java.nio.IntBuffer;
import java.util.Arrays;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/**
 * Lines painted straight into the pixels of a picture: a frame costs the columns, not the values behind them. Its ground is
 * transparent. JavaFX thread only.
 */
final class TraceImage {
    private final int width;
    private final int height;
    private final int[] pixels;
    private final PixelBuffer<IntBuffer> buffer;
    private final WritableImage image;

    TraceImage(int width, int height) {
        this.width = width;
        this.height = height;
        pixels = new int[width * height];
        buffer = new PixelBuffer<>(width, height, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance());
        image = new WritableImage(buffer);
    }

    Image image() {
        return image;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    void clear() {
        Arrays.fill(pixels, 0);
    }

    /**
     * Paints a line.
     *
     * @param line its columns, from the left edge on
     * @param lane where it goes
     */
    void paint(Decimation line, Lane lane, Stroke stroke) {
        int argb = stroke.argb();
        for (int column = 0; column < Math.min(line.columns(), width); column++) {
            double high = line.high(column);
            if (!Double.isNaN(high) && stroke.draws(column)) {
                paint(column, lane.row(high), lane.row(line.low(column)), lane, stroke.pixels(), argb);
            }
        }
    }

    private void paint(int column, double upper, double lower, Lane lane, int thickness, int argb) {
        int from = Math.max(lane.top(), (int) Math.round(upper - thickness / 2.0));
        int to = Math.min(lane.bottom(), Math.max((int) Math.round(lower + thickness / 2.0), from + thickness));
        for (int row = Math.max(from, 0); row < Math.min(to, height); row++) {
            pixels[row * width + column] = argb;
        }
    }

    /** Makes visible what was painted. */
    void show() {
        buffer.updateBuffer(changed -> null);
    }

    /**
     * Rows of the picture that belong to one scale.
     *
     * @param top first row
     * @param bottom the row below the last
     * @param least value at the bottom
     * @param most value at the top, above least
     */
    record Lane(int top, int bottom, double least, double most) {
        double row(double value) {
            return bottom - (value - least) / (most - least) * (bottom - top);
        }
    }
}
