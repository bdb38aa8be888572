package org.pumpwright.host.campaign;

import java.util.Locale;
import java.util.Random;

/**
 * When a fault is struck.
 *
 * @param stage in which part of the run
 * @param time which time this part comes, from 1
 * @param afterMillis so long after its beginning, by the board's time
 */
record Moment(Stage stage, int time, int afterMillis) {
    private static final int POINTS = 3;

    static Moment drawn(Stage stage, Random random) {
        int time = stage.comesForEachPoint() ? 1 + random.nextInt(POINTS) : 1;
        return new Moment(stage, time, random.nextInt(stage.longestMillis() + 1));
    }

    @Override
    public String toString() {
        String which = stage.comesForEachPoint() ? " " + time : "";
        return stage.name().toLowerCase(Locale.ROOT) + which + " + " + afterMillis + " ms";
    }
}
