package org.pumpwright.host.app.bucket;

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
 * @param places file and line of what is no run, by its key, for messages
 * @param source the sheet's text
 */
public record Sheet(
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
        Map<String, String> places,
        BucketRecord.Source source) {
    public Sheet {
        equipment = List.copyOf(equipment);
        conditions = List.copyOf(conditions);
        deviations = List.copyOf(deviations);
        opinions = List.copyOf(opinions);
        lines = Map.copyOf(lines);
        places = Map.copyOf(places);
    }

    /** The meter with the K of a test before or after its adjustment. */
    public Sheet withOtherState(double pulsesPerM3) {
        BucketRecord.Meter with = new BucketRecord.Meter(
                meter.serial(),
                meter.model(),
                meter.condition(),
                meter.state(),
                meter.previousK(),
                OptionalDouble.of(pulsesPerM3));
        return new Sheet(
                test, invented, job, with, method, equipment, conditions, deviations, opinions, lines, places, source);
    }

    /** The same test of another meter on the same bench, and by whom. */
    public Sheet of(String serial, String technician) {
        BucketRecord.Meter other = new BucketRecord.Meter(
                serial, meter.model(), meter.condition(), meter.state(), meter.previousK(), meter.otherState());
        BucketRecord.Job by = new BucketRecord.Job(
                job.customer(), job.place(), job.received(), job.performed(), technician, job.signer());
        return new Sheet(
                test, invented, by, other, method, equipment, conditions, deviations, opinions, lines, places, source);
    }

    /** The same test on another day. */
    Sheet performedOn(LocalDate day) {
        BucketTest then = new BucketTest(
                day,
                test.bench(),
                test.liquidName(),
                test.liquid(),
                test.declared(),
                test.runs(),
                test.rules(),
                test.units());
        BucketRecord.Job on =
                new BucketRecord.Job(job.customer(), job.place(), job.received(), day, job.technician(), job.signer());
        return new Sheet(
                then, invented, on, meter, method, equipment, conditions, deviations, opinions, lines, places, source);
    }

    LocalDate day() {
        return test.day();
    }

    /** Where a complaint belongs, e.g. {@code sheet.yaml:42}; the sheet alone where it is about all of it. */
    String place(String field) {
        return runNumber(field)
                .map(lines::get)
                .map(line -> source.name() + ":" + line)
                .or(() -> Optional.ofNullable(places.get(field.split("\\.", -1)[0])))
                .orElse(source.name());
    }

    private static Optional<Integer> runNumber(String field) {
        String[] words = field.split(" ", -1);
        return words.length > 1 && words[0].equals("run") && words[1].matches("\\d{1,5}")
                ? Optional.of(Integer.valueOf(words[1]))
                : Optional.empty();
    }
}
