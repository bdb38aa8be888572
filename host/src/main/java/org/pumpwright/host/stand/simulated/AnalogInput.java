package org.pumpwright.host.stand.simulated;

import java.util.OptionalInt;
import org.pumpwright.protocol.AnalogWindow;

/** One analogue channel of ten bits, with the window since it was last asked. Confined to the run thread. */
final class AnalogInput {
    private static final int CONVERTER_STEP = 64;
    private static final int HIGHEST_READING = 1023;

    private OptionalInt held = OptionalInt.empty();
    private long sum;
    private int readings;
    private int min = Integer.MAX_VALUE;
    private int max;
    private int last;

    /** Reads a left-justified code of sixteen bits with the ten it has. */
    void convert(int code) {
        int nearest = (held.orElse(code) + CONVERTER_STEP / 2) / CONVERTER_STEP;
        last = Math.min(HIGHEST_READING, nearest) * CONVERTER_STEP;
        sum += last;
        readings++;
        min = Math.min(min, last);
        max = Math.max(max, last);
    }

    int last() {
        return last;
    }

    void hold(OptionalInt code) {
        held = code;
    }

    AnalogWindow takeWindow() {
        AnalogWindow window = readings == 0
                ? AnalogWindow.NONE
                : new AnalogWindow((int) Math.round((double) sum / readings), min, max);
        sum = 0;
        readings = 0;
        min = Integer.MAX_VALUE;
        max = 0;
        return window;
    }
}
