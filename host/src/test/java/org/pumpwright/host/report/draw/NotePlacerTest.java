package org.pumpwright.host.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.report.draw.NotePlacer.Box;
import org.pumpwright.host.report.draw.NotePlacer.Place;

class NotePlacerTest {
    private static final String WORDS = "50 % LOW";

    private static NotePlacer placer() {
        return new NotePlacer(40, 20, 430, 166);
    }

    private static Box ink(Place place) {
        return new Box(place.x(), place.y() - 8, place.x() + 7 * WORDS.length(), place.y() + 2);
    }

    @Test
    void withAllTheRoomANoteStandsCloseToItsPointOnTheSideAskedFor() {
        Place below = placer().place(200, 90, true, WORDS);
        Place above = placer().place(200, 90, false, WORDS);
        assertThat(below.y()).isBetween(95.0, 105.0);
        assertThat(above.y()).isBetween(75.0, 85.0);
    }

    @Property(seed = "20260402", tries = 500)
    void notesStayInTheFrame(
            @ForAll @IntRange(min = 40, max = 430) int x, @ForAll @IntRange(min = 20, max = 166) int y) {
        Box ink = ink(placer().place(x, y, (x + y) % 2 == 0, WORDS));
        assertThat(ink.x1()).isGreaterThanOrEqualTo(40);
        assertThat(ink.x2()).isLessThanOrEqualTo(430);
        assertThat(ink.y1()).isGreaterThanOrEqualTo(20);
        assertThat(ink.y2()).isLessThanOrEqualTo(166);
    }

    @Property(seed = "20260402", tries = 300)
    void notesOfARisingLineNeitherLieOnItNorOnEachOther(@ForAll long seed) {
        Random random = new Random(seed);
        double rise = 20 + random.nextInt(80);
        NotePlacer placer = placer();
        placer.avoidLine(80, 140, 400, 140 - rise);
        List<Box> notes = new ArrayList<>();
        for (double share : new double[] {0.9, 0.55, 0.2}) {
            notes.add(ink(placer.place(80 + share * 320, 140 - share * rise, false, WORDS)));
        }
        for (int i = 0; i < notes.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(notes.get(i).meets(notes.get(j))).isFalse();
            }
            for (int step = 0; step <= 320; step++) {
                double y = 140 - rise * step / 320;
                assertThat(notes.get(i).meets(new Box(80 + step, y, 80.1 + step, y + 0.1)))
                        .isFalse();
            }
        }
    }
}
