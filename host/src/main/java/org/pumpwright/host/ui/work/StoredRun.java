package org.pumpwright.host.ui.work;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.record.OnRecord.Seal;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Entry;

/**
 * A run or a bucket test on record that is looked at. Thread-safe.
 *
 * @param entry its entry
 * @param run the run itself; empty for a bucket test, and where its samples are gone
 * @param test the bucket test; empty for a run, and where its readings are gone
 * @param seal what its signature says
 * @param others runs of the same unit, the newest first
 */
public record StoredRun(
        Entry entry, Optional<RunRecord> run, Optional<BucketRecord> test, Seal seal, List<Entry> others) {
    public StoredRun {
        others = List.copyOf(others);
    }

    /** Its sweep: flow, or motor current, over effective volts; nothing where it has none. */
    public SweepView sweep(Feature.Kind kind) {
        return run.map(each -> RunCurve.of(each, kind)).orElse(SweepView.EMPTY);
    }

    /** Whether its samples or readings are there, so that papers can be made of it. */
    public boolean whole() {
        return run.isPresent() || test.isPresent();
    }

    /** Whether it has a sweep to draw; a run that ended before its first point has none. */
    public boolean drawn() {
        return Arrays.stream(Feature.Kind.values())
                .anyMatch(kind -> !sweep(kind).dots().isEmpty());
    }

    /** That it was only practice; {@link Word#NONE} when everything was real. */
    public Word pretence() {
        return Pretence.recorded(run.map(each -> each.subject().practice())
                .or(() -> test.map(BucketRecord::practice))
                .orElse(false));
    }

    /** Whether it belongs to a claim. */
    public boolean hasClaim() {
        return entry.finder().claim().isPresent();
    }

    /** Which unit. */
    public Word subject() {
        return Word.of(
                "ui.history.subject",
                entry.finder().serial().orElse("-"),
                run.map(each -> each.subject().modelTitle())
                        .or(() -> entry.finder().model())
                        .orElse("-"));
    }

    /** Its verdict, and when. */
    public Word verdict() {
        return Word.of("ui.history.of_day", VerdictWords.word(entry), HistoryRows.day(entry));
    }

    /** How that stands. */
    public Mark mark() {
        return VerdictWords.mark(entry);
    }
}
