package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SequenceWatchTest {
    private final SequenceWatch watch = new SequenceWatch();

    @Test
    void theFirstFrameIsTakenAsItComes() {
        assertThat(watch.observe(4711)).isZero();
        assertThat(watch.received()).isEqualTo(1);
        assertThat(watch.lost()).isZero();
    }

    @Test
    void theNumberAfter65535Is0AndNothingIsLost() {
        watch.observe(65535);
        assertThat(watch.observe(0)).isZero();
        assertThat(watch.lost()).isZero();
    }

    @Test
    void aGapAcrossTheRollOverIsCounted() {
        watch.observe(65534);
        assertThat(watch.observe(2)).isEqualTo(3);
        assertThat(watch.lost()).isEqualTo(3);
    }

    @Test
    void aNumberThatWentBackIsARestartAndNoLoss() {
        watch.observe(100);
        assertThat(watch.observe(0)).isZero();
        assertThat(watch.observe(2)).isEqualTo(1);
        assertThat(watch.lost()).isEqualTo(1);
        assertThat(watch.restarts()).isEqualTo(1);
    }

    @Test
    void theSameNumberTwiceIsARestartAndNoLoss() {
        watch.observe(8);
        assertThat(watch.observe(8)).isZero();
        assertThat(watch.restarts()).isEqualTo(1);
    }

    @Test
    void justBelowHalfTheRangeIsLossAndHalfTheRangeIsARestart() {
        watch.observe(0);
        assertThat(watch.observe(32768)).isEqualTo(32767);
        watch.restart();
        watch.observe(0);
        assertThat(watch.observe(32769)).isZero();
        assertThat(watch.restarts()).isEqualTo(1);
    }

    @Test
    void anAnnouncedRestartKeepsTheCountsAndIsNotCountedItself() {
        watch.observe(1);
        watch.observe(3);
        watch.restart();
        assertThat(watch.observe(0)).isZero();
        assertThat(watch.lost()).isEqualTo(1);
        assertThat(watch.restarts()).isZero();
        assertThat(watch.received()).isEqualTo(3);
    }

    @Test
    void aNumberThatIsNoSequenceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> watch.observe(65536))
                .withMessage("frame sequence 65536 is outside 0..65535 (u16)");
    }

    @Property(seed = "5101", tries = 500)
    void whateverIsLostIsCountedExactly(
            @ForAll @IntRange(max = 65535) int start,
            @ForAll @Size(max = 50) List<@IntRange(max = 32767) Integer> gaps) {
        SequenceWatch counting = new SequenceWatch();
        long sent = start;
        long lost = 0;
        counting.observe((int) (sent & 0xFFFF));
        for (int gap : gaps) {
            sent += gap + 1L;
            lost += gap;
            assertThat(counting.observe((int) (sent & 0xFFFF))).isEqualTo(gap);
        }
        assertThat(counting.lost()).isEqualTo(lost);
        assertThat(counting.received()).isEqualTo(gaps.size() + 1L);
        assertThat(counting.restarts()).isZero();
    }
}
