package org.pumpwright.host.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Sample;

/** Holds one try against what is demanded. */
final class Judge {
    private static final double SAMPLE_SECONDS = 0.02;
    private static final double WATCHED_SECONDS = 3;
    /** A sample on its way, one in the making, and the 0.1 s that a board in lockstep may be ahead of its host. */
    private static final double MISSING_AT_MOST_SECONDS = 0.16;

    private Judge() {}

    static void judge(Fault fault, Seen seen) {
        if (!fault.bound().mustNotStop()) {
            assertThat(seen.drivenMillis())
                    .as("driven after the fault, ms; stated: %s", fault.bound().words())
                    .isLessThanOrEqualTo(fault.bound().millis());
        }
        assertThat(seen.cameBack()).as("came back by itself").isFalse();
        assertThat(seen.watchedSeconds()).isGreaterThan(WATCHED_SECONDS);
        assertThat(seen.testimony()).as("the board's own events").matches(fault.boardSays());
        if (fault.verdicts().isEmpty()) {
            assertThat(seen.record()).as("record of a killed host").isEmpty();
        } else {
            assertThat(seen.record())
                    .as("record; the host said: %s", seen.said())
                    .isPresent();
            judge(fault, seen, seen.record().orElseThrow());
        }
    }

    private static void judge(Fault fault, Seen seen, RunRecord record) {
        assertThat(record.grade().verdict()).as(says(record)).isIn(fault.verdicts());
        assertThat(says(record)).containsPattern(fault.recordSays());
        assertThat(record.ending().completed())
                .as("completed: %s", record.ending())
                .isEqualTo(fault.bound().mustNotStop());
        List<Sample> samples = record.trace().samples();
        if (!samples.isEmpty()) {
            judgeSamplesLost(fault, record, samples);
        }
        if (seen.drivenBeforeSeconds() > MISSING_AT_MOST_SECONDS) {
            judgeTrace(seen, samples);
        }
    }

    /** From the board's times alone: what should be between the first and the last sample and is not. */
    private static void judgeSamplesLost(Fault fault, RunRecord record, List<Sample> samples) {
        double span =
                samples.get(samples.size() - 1).boardSeconds() - samples.get(0).boardSeconds();
        long lost = Math.round(span / SAMPLE_SECONDS) + 1 - samples.size();
        assertThat(record.stand().samplesLost()).as("samples lost").isEqualTo(lost);
        assertThat(lost > 0).as("%d samples lost between others", lost).isEqualTo(fault.losesSamples());
    }

    private static void judgeTrace(Seen seen, List<Sample> samples) {
        double firstDriven = samples.stream()
                .filter(sample -> sample.applied().get(0).parts() > 0)
                .mapToDouble(Sample::boardSeconds)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing driven in the trace"));
        double kept = samples.get(samples.size() - 1).boardSeconds() - firstDriven;
        assertThat(kept)
                .as("seconds of driving that the trace keeps")
                .isGreaterThan(seen.drivenBeforeSeconds() - MISSING_AT_MOST_SECONDS);
    }

    /** The verdict, and how the run ended or, where it was carried through, the weightiest reason. */
    static String says(RunRecord record) {
        String how = record.ending().reason();
        int after = how.indexOf("; after it");
        String ending = record.ending().completed()
                ? record.grade().reasons().get(0) + (after < 0 ? "" : how.substring(after))
                : how;
        return record.grade().verdict() + ": " + ending;
    }
}
