package org.pumpwright.host.stand.simulated;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.pumpwright.protocol.PulseIntervals;
import org.pumpwright.protocol.PulseWindow;

final class PulseStatisticsTest {
    private static final long MASK_U32 = 0xFFFF_FFFFL;

    @Property(tries = 500, seed = "71")
    void sumsAreThoseOfTheIntervalsWhateverTheRollOver(
            @ForAll @Size(min = 2, max = 60) List<@IntRange(min = 1, max = 40_000) Integer> intervals,
            @ForAll @IntRange(min = 0, max = 100_000) int beforeRollOver) {
        long start = -beforeRollOver & MASK_U32;
        PulseStatistics statistics = new PulseStatistics(1);
        statistics.begin(start);
        statistics.edge(start);
        statistics.end(start);
        long time = start;
        long sum = 0;
        long squares = 0;
        long lagged = 0;
        for (int i = 0; i < intervals.size(); i++) {
            long interval = intervals.get(i);
            time = (time + interval) & MASK_U32;
            statistics.edge(time);
            sum += interval;
            squares += interval * interval;
            lagged += i == 0 ? 0 : interval * intervals.get(i - 1);
        }

        PulseWindow window = statistics.end(time);

        PulseIntervals told = window.intervals();
        assertThat(window.edges()).isEqualTo(intervals.size());
        assertThat(told.count()).isEqualTo(intervals.size());
        assertThat(told.sum()).isEqualTo(sum);
        assertThat(told.squares()).isEqualTo(squares);
        assertThat(told.lagged()).isEqualTo(lagged);
        assertThat(told.least())
                .isEqualTo(intervals.stream().mapToInt(Integer::intValue).min().orElseThrow());
        assertThat(told.most())
                .isEqualTo(intervals.stream().mapToInt(Integer::intValue).max().orElseThrow());
        assertThat(told.reference()).isZero();
        assertThat(told.tooLong() + told.tooShort()).isZero();
    }

    @Property(tries = 200, seed = "72")
    void intervalsAreLongOrShortAgainstTheWindowBefore(@ForAll @IntRange(min = 1, max = 4000) int interval) {
        PulseStatistics statistics = new PulseStatistics(0);
        statistics.begin(0);
        statistics.edge(0);
        statistics.edge(1000);
        statistics.end(1000);

        statistics.edge(1000 + interval);
        PulseIntervals told = statistics.end(2000 + interval).intervals();

        assertThat(told.reference()).isEqualTo(1000);
        assertThat(told.tooLong()).isEqualTo(interval > 1600 ? 1 : 0);
        assertThat(told.tooShort()).isEqualTo(interval < 500 ? 1 : 0);
    }
}
