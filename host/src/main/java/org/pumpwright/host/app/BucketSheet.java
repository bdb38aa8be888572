package org.pumpwright.host.app;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.calibrate.BucketTest;
import org.pumpwright.host.record.BucketRecord;

/**
 * A bucket test as it stands on a sheet: what was read, and what the papers say beside it. Thread-safe.
 *
 * @param test what is worked out
 * @param invented whether the sheet says that its figures are invented
 * @param job for whom, when and where
 * @param meter what was calibrated
 * @param method short name of the method
 * @param equipment what it was calibrated with
 * @param conditions what influenced it
 * @param deviations from the method, in the sheet's words
 * @param opinions of whoever filled the sheet in
 * @param lines of the sheet by the numbers of the runs, for messages
 * @param source the sheet's text
 */
public record BucketSheet(
        BucketTest test,
        boolean invented,
        BucketRecord.Job job,
        BucketRecord.Meter meter,
        String method,
        List<BucketRecord.Equipment> equipment,
        List<BucketRecord.Condition> conditions,
        List<String> deviations,
        List<String> opinions,
        Map<Integer, Integer> lines,
        BucketRecord.Source source) {
    public BucketSheet {
        equipment = List.copyOf(equipment);
        conditions = List.copyOf(conditions);
        deviations = List.copyOf(deviations);
        opinions = List.copyOf(opinions);
        lines = Map.copyOf(lines);
    }

    /** The meter with the K of a test before or after its adjustment. */
    public BucketSheet withOtherState(double pulsesPerM3) {
        BucketRecord.Meter with = new BucketRecord.Meter(
                meter.serial(),
                meter.model(),
                meter.condition(),
                meter.state(),
                meter.previousK(),
                OptionalDouble.of(pulsesPerM3));
        return new BucketSheet(
                test, invented, job, with, method, equipment, conditions, deviations, opinions, lines, source);
    }

    LocalDate day() {
        return test.day();
    }

    /** Where a complaint about a run belongs, e.g. {@code sheet.yaml:42}; the sheet alone where it is about no run. */
    String place(String field) {
        return runNumber(field)
                .map(lines::get)
                .map(line -> source.name() + ":" + line)
                .orElse(source.name());
    }

    private static Optional<Integer> runNumber(String field) {
        String[] words = field.split(" ", -1);
        return words.length > 1 && words[0].equals("run") && words[1].matches("\\d{1,5}")
                ? Optional.of(Integer.valueOf(words[1]))
                : Optional.empty();
    }
}
