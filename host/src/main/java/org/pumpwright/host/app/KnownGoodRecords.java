package org.pumpwright.host.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.pumpwright.host.curve.KnownGoodList;
import org.pumpwright.host.curve.KnownGoodRun;
import org.pumpwright.host.curve.KnownGoodUnit;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.trace.Leg;

/**
 * The records that a healthy curve is made from: whole runs of units that a person has declared good, all under the same
 * conditions and by the same plan. Everything that will not do is told at once. Thread-safe.
 *
 * @param records in the order given
 */
record KnownGoodRecords(List<RunRecord> records) {
    KnownGoodRecords {
        records = List.copyOf(records);
    }

    /**
     * Reads and checks the records.
     *
     * @param paths record files, or folders in which they lie
     * @throws RunRecordException when one can't be read
     * @throws OrderException naming everything that keeps records from being used
     */
    static KnownGoodRecords read(List<Path> paths, KnownGoodList list) throws OrderException, RunRecordException {
        List<RunRecord> records = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Path file : RecordSearch.files(paths)) {
            RunRecord record = RunRecordFile.read(file);
            // A run that was judged again is still one run.
            if (record.regradedFrom().isEmpty() && ids.add(record.id())) {
                records.add(record);
                problem(record, list, records.get(0)).ifPresent(problem -> problems.add(file + ": " + problem));
            }
        }
        if (!problems.isEmpty()) {
            throw new OrderException("no curve was made:\n  " + String.join("\n  ", problems));
        }
        return new KnownGoodRecords(records);
    }

    RunRecord first() {
        return records.get(0);
    }

    List<String> ids() {
        return records.stream().map(RunRecord::id).sorted().toList();
    }

    LocalDate firstDay() {
        return days().min(LocalDate::compareTo).orElseThrow();
    }

    LocalDate lastDay() {
        return days().max(LocalDate::compareTo).orElseThrow();
    }

    /** What the runs measured on the way up, by unit. */
    List<KnownGoodRun> runs(double freewheelVolts) throws OrderException {
        List<KnownGoodRun> runs = new ArrayList<>();
        for (RunRecord record : records) {
            try {
                runs.add(new KnownGoodRun(serial(record), new KnownGoodUnit(points(record, freewheelVolts))));
            } catch (IllegalArgumentException e) {
                throw new OrderException("run %s of unit %s can't be used: %s. Leave it out, or run the unit again."
                        .formatted(record.id(), serial(record), e.getMessage()));
            }
        }
        return runs;
    }

    /** What a person should know about them before approving. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        TreeMap<String, List<LocalDate>> units = new TreeMap<>();
        for (RunRecord record : records) {
            units.computeIfAbsent(serial(record), serial -> new ArrayList<>())
                    .add(record.startedAt().toLocalDate());
            if (record.grade().verdict() == Verdict.FAIL) {
                notes.add("unit %s was graded FAIL in run %s, and is used because it is declared good"
                        .formatted(serial(record), record.id()));
            }
        }
        long once = units.values().stream().filter(days -> days.size() == 1).count();
        if (once > 0) {
            notes.add("%d of %d units were run only once; run each twice, on different days"
                    .formatted(once, units.size()));
        }
        long sameDay = units.values().stream()
                .filter(days -> days.size() > 1 && Set.copyOf(days).size() == 1)
                .count();
        if (sameDay > 0) {
            notes.add(
                    "%d of %d units had all their runs on one day; the spread between runs leaves out what changes from"
                                    .formatted(sameDay, units.size())
                            + " day to day");
        }
        return notes;
    }

    private Stream<LocalDate> days() {
        return records.stream().map(record -> record.startedAt().toLocalDate());
    }

    private static String serial(RunRecord record) {
        return record.subject().serial().strip();
    }

    private static Optional<String> problem(RunRecord record, KnownGoodList list, RunRecord first) {
        String serial = serial(record);
        if (!EarlierRuns.isSerial(serial)) {
            return Optional.of("has no serial number, so its unit can't be told from others");
        }
        if (!list.holds(serial)) {
            return Optional.of("unit %s is not declared good; a unit that only passed here is not known to be good"
                    .formatted(serial));
        }
        if (!record.subject().model().equals(list.model())) {
            return Optional.of("is a %s, the declared units are %s"
                    .formatted(record.subject().model(), list.model()));
        }
        if (!record.ending().completed() || record.grade().verdict() == Verdict.INVALID) {
            return Optional.of("is no whole, valid run; run the unit again");
        }
        return difference(record, first);
    }

    private static Optional<String> difference(RunRecord record, RunRecord first) {
        List<String> differences = new ArrayList<>(first.conditions().differences(record.conditions()));
        if (!record.plan().equals(first.plan())) {
            differences.add("plan %s instead of %s".formatted(record.plan(), first.plan()));
        }
        if (record.subject().practice() != first.subject().practice()) {
            differences.add("a simulated run among real ones, or the other way about");
        }
        return differences.isEmpty()
                ? Optional.empty()
                : Optional.of("was not run as run %s was: %s".formatted(first.id(), String.join(", ", differences)));
    }

    /**
     * Points that did not settle are left out. Those below the meter's range stay: the limits must reach every set point, the
     * meter's doubt is in their spread, and grading widens its guard there.
     */
    private static List<KnownGoodUnit.Point> points(RunRecord record, double freewheelVolts) {
        return PointReading.all(record.trace()).stream()
                .filter(point -> point.mark().leg() == Leg.UP && point.duty() > 0)
                .filter(point -> point.mark().settled())
                .map(point -> new KnownGoodUnit.Point(
                        point.effectiveVolts(freewheelVolts).value(),
                        point.flow().value(),
                        point.motorAmps().value()))
                .toList();
    }
}
