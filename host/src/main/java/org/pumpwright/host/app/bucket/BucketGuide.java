package org.pumpwright.host.app.bucket;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.calibrate.BucketEvaluation;
import org.pumpwright.host.calibrate.BucketRefused;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;

/** Has a bucket test carried out on a stand and makes a sheet of it. Thread-safe; each test runs on the thread that asks for it. */
public final class BucketGuide {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'", Locale.ROOT);

    private final Shelf shelf;
    private final BucketStands stands;
    private final OptionalDouble byHand;
    private final Clock clock;
    private volatile @Nullable GuidedTest running;

    /**
     * @param shelf the shop's data files
     * @param stands reaches stands
     * @param clock the shop's time and zone
     */
    public BucketGuide(Shelf shelf, Stands stands, Clock clock) {
        this(shelf, new BucketStands(stands), clock, OptionalDouble.empty());
    }

    private BucketGuide(Shelf shelf, BucketStands stands, Clock clock, OptionalDouble byHand) {
        this.shelf = shelf;
        this.stands = stands;
        this.clock = clock;
        this.byHand = byHand;
    }

    /**
     * The same, but at a simulated stand a real person swings the simulated diverter and reads the simulated scale, to practise.
     *
     * @param pace simulated seconds in a second; 0 for as fast as it goes
     */
    public BucketGuide byHand(double pace) {
        return new BucketGuide(shelf, stands, clock, OptionalDouble.of(pace));
    }

    /**
     * What is to be done.
     *
     * @param stand name or file
     * @param port overrides the one of the description
     * @param bench file with scale, liquid and meter
     * @param duties in their order
     * @param runs at each
     * @param seconds least length of a run
     * @param drive that feeds the meter
     * @param meter under test
     * @param celsius of the water where the stand has no thermometer
     * @param unit which simulated unit
     * @param folder where the sheet of runs is written
     */
    public record Order(
            String stand,
            Optional<String> port,
            Path bench,
            List<Duty> duties,
            int runs,
            double seconds,
            int drive,
            int meter,
            double celsius,
            long unit,
            Path folder) {
        public Order {
            duties = List.copyOf(duties);
        }
    }

    /**
     * What came of it.
     *
     * @param sheet to be worked out
     * @param runs file with the runs
     * @param simulated whether the stand was
     */
    public record Done(Sheet sheet, Path runs, boolean simulated) {}

    /**
     * Carries a test out.
     *
     * @param scale read over a line; empty where weights are typed
     * @param person answers at a real stand
     * @param stop may be pressed from any thread
     * @throws OrderException when it can't be carried out as given
     * @throws DataFileException when a data file is wrong
     * @throws StandException when the stand can't be reached, or the test was cut short
     */
    public Done carryOut(
            Order order,
            Optional<LineScale> scale,
            Operator person,
            TestWatcher watcher,
            StopButton stop,
            UnitSystem units)
            throws OrderException, DataFileException, StandException {
        StandDescription description = shelf.stand(order.stand());
        boolean simulated = description.connection() instanceof Connection.Simulated;
        // Read before anything moves: a wrong file must not cost an afternoon of weighing.
        Sheet before = dated(SheetFile.withRuns(order.bench(), noRuns(), units), simulated);
        if (!(before.test().bench().method() instanceof Weighing weighing)) {
            throw new OrderException(
                    "%s: on a stand the bucket is weighed: method must be weighed".formatted(order.bench()));
        }
        try {
            BucketEvaluation.requireUsable(before.test());
        } catch (BucketRefused e) {
            throw BucketCalibration.refused(before, e);
        }
        BucketStands.Reached reached = byHand.isPresent()
                ? stands.reachByHand(description, order.port(), person, byHand.getAsDouble())
                : stands.reach(description, order.port(), order.unit(), order.meter());
        Path runs = order.folder()
                .resolve("runs-" + NAME.format(OffsetDateTime.now(clock).withOffsetSameInstant(ZoneOffset.UTC))
                        + ".csv");
        try (Stand stand = reached.stand()) {
            stand.open();
            GuidedTest test = new GuidedTest(
                    new GuidedTest.Order(
                            order.duties(),
                            order.runs(),
                            order.seconds(),
                            order.drive(),
                            order.meter(),
                            weighing.bucketM3(),
                            order.celsius()),
                    stand,
                    reached.person().orElse(person),
                    reached.person().isPresent() ? Optional.empty() : scale.map(ReadScale.class::cast),
                    watcher,
                    stop,
                    runs);
            running = test;
            SheetFile.Runs measured = test.carryOut();
            return new Done(dated(SheetFile.withRuns(order.bench(), measured, units), simulated), runs, simulated);
        } finally {
            running = null;
        }
    }

    /** Asks the stand for safe at once, from any thread, after the stop button was pressed. */
    public void stopNow() {
        GuidedTest test = running;
        if (test != null) {
            test.stopNow();
        }
    }

    /** A test on a real stand is of today, whatever day its bench file was written on. */
    private Sheet dated(Sheet sheet, boolean simulated) {
        return simulated ? sheet : sheet.performedOn(LocalDate.now(clock));
    }

    static SheetFile.Runs noRuns() {
        return new SheetFile.Runs(List.of(), Map.of(), SheetFile.source("no runs yet", new byte[0]));
    }
}
