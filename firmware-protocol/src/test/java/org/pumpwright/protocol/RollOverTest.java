package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class RollOverTest {
    private static final long RANGE = 1L << 32;
    private static final long HALF = 1L << 31;

    private final RollOver count = new RollOver();

    @Test
    void theFirstReadingIsTheCount() {
        assertThat(count.advance(RANGE - 1)).isEqualTo(RANGE - 1);
    }

    @Test
    void theCountGoesOnPastTheRollOver() {
        count.advance(RANGE - 1);
        assertThat(count.advance(0)).isEqualTo(RANGE);
        assertThat(count.advance(5)).isEqualTo(RANGE + 5);
    }

    @Test
    void justBelowHalfTheRangeAheadIsAhead() {
        count.advance(10);
        assertThat(count.advance(10 + HALF - 1)).isEqualTo(10 + HALF - 1);
        assertThat(count.behind()).isZero();
    }

    @Test
    void halfTheRangeAheadCountsAsBehindAndLeavesTheCount() {
        count.advance(10);
        assertThat(count.advance(10 + HALF)).isEqualTo(10);
        assertThat(count.advance(9)).isEqualTo(10);
        assertThat(count.behind()).isEqualTo(2);
        assertThat(count.advance(11)).isEqualTo(11);
    }

    @Test
    void theSameReadingAgainIsNeitherAheadNorBehind() {
        count.advance(10);
        assertThat(count.advance(10)).isEqualTo(10);
        assertThat(count.behind()).isZero();
    }

    @Test
    void afterARestartTheFirstReadingIsTheCountAgain() {
        count.advance(RANGE - 1);
        count.advance(3);
        count.restart();
        assertThat(count.advance(7)).isEqualTo(7);
    }

    @Test
    void aReadingThatIsNoU32IsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> count.advance(RANGE))
                .withMessage("reading 4294967296 is outside 0..4294967295 (u32)");
    }

    @Property(seed = "5102", tries = 500)
    void stepsBelowHalfTheRangeAddUpExactly(
            @ForAll @LongRange(max = RANGE - 1) long start,
            @ForAll @Size(max = 50) List<@LongRange(max = HALF - 1) Long> steps) {
        RollOver adding = new RollOver();
        long truth = start;
        adding.advance(truth);
        for (long step : steps) {
            truth += step;
            assertThat(adding.advance(truth & (RANGE - 1))).isEqualTo(truth);
        }
    }

    @Property(seed = "5103", tries = 500)
    void noReadingsWhateverMakeTheCountFall(@ForAll @Size(max = 50) List<@LongRange(max = RANGE - 1) Long> any) {
        RollOver rising = new RollOver();
        long before = 0;
        for (long reading : any) {
            long now = rising.advance(reading);
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void halvesAloneGoOnPastTheirOwnRollOver() {
        assertThat(count.advanceLow(0xFF00)).isEqualTo(0xFF00);
        assertThat(count.advanceLow(0x0010)).isEqualTo(0x1_0010);
        assertThat(count.advanceLow(0x0009)).isEqualTo(0x1_0010);
        assertThat(count.behind()).isEqualTo(1);
    }

    @Test
    void aWholeReadingAfterHalvesAloneIsNoJump() {
        count.advanceLow(0xFF00);
        assertThat(count.advance(0xFFFF_FF10L)).isEqualTo(0xFF10);
        assertThat(count.advance(0x10)).isEqualTo(0x1_0010);
        assertThat(count.advance(0x10 + HALF - 1)).isEqualTo(0x1_0010 + HALF - 1);
    }

    @Test
    void aHalfReadingThatIsNoU16IsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> count.advanceLow(0x10000))
                .withMessage("reading 65536 is outside 0..65535 (u16)");
    }

    @Property(seed = "5105", tries = 1000)
    void halvesAndWholeReadingsInAnyOrderAddUpExactly(
            @ForAll @LongRange(max = RANGE - 1) long start,
            @ForAll @Size(max = 50) List<@IntRange(min = -32768, max = 32767) Integer> steps) {
        RollOver adding = new RollOver();
        long truth = start;
        long first = steps.size() % 2 == 0 ? adding.advance(truth) : adding.advanceLow((int) (truth & 0xFFFF));
        for (int step : steps) {
            // The sign only picks the kind of reading.
            truth += step & 0x7FFF;
            long now = step < 0 ? adding.advanceLow((int) (truth & 0xFFFF)) : adding.advance(truth & (RANGE - 1));
            assertThat(now - first).isEqualTo(truth - start);
        }
        assertThat(adding.behind()).isZero();
    }
}
