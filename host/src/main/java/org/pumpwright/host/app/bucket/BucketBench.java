package org.pumpwright.host.app.bucket;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.calibrate.BucketEvaluation;
import org.pumpwright.host.calibrate.Gate;
import org.pumpwright.host.calibrate.Run;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.UnitSystem;

/**
 * A bench that buckets are weighed on, as its file describes it: scale, liquid and meter. Thread-safe.
 *
 * @param file its file
 * @param sheet what the file says, without runs
 */
public record BucketBench(Path file, Sheet sheet) {
    /**
     * Every bench of a folder that a guided test can be made on: it weighs, and its file holds no runs. A file that can't be read is left
     * out; it is told when somebody asks for it by name.
     *
     * @throws OrderException when the folder can't be read
     */
    public static List<BucketBench> in(Path folder) throws OrderException {
        List<BucketBench> benches = new ArrayList<>();
        for (Path file : Shelf.files(folder)) {
            filledIn(file)
                    .filter(bench -> bench.sheet().test().bench().method() instanceof Weighing)
                    .ifPresent(benches::add);
        }
        return benches;
    }

    /** A sheet that is still to be filled in lies in the folder too. */
    private static Optional<BucketBench> filledIn(Path file) {
        try {
            return Optional.of(read(file));
        } catch (DataFileException e) {
            return Optional.empty();
        }
    }

    /**
     * The bench that a file describes.
     *
     * @throws DataFileException when it is absent or can't be used
     */
    public static BucketBench read(Path file) throws DataFileException {
        return new BucketBench(file, SheetFile.withRuns(file, BucketGuide.noRuns(), UnitSystem.US));
    }

    /** Its name: that of its file, without the ending. */
    public String name() {
        return Shelf.name(file);
    }

    /** K of one run, by the bench's scale, air and liquid. */
    public KFactor k(Run run) {
        return BucketEvaluation.alone(run, sheet.test()).k();
    }

    /** How far so many runs at one flow may lie apart, as a share of their mean. */
    public double gateShare(int runs) {
        return Gate.of(sheet.test().rules().grade(), runs, 0).limitShare();
    }
}
