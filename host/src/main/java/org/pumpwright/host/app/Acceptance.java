package org.pumpwright.host.app;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunListener;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;

/**
 * The main job: tests one unit on a stand, from the order to the papers. Thread-safe; each test runs on the thread that
 * asks for it.
 */
public final class Acceptance {
    private static final DateTimeFormatter ID = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'", Locale.ROOT);

    private final Shelf shelf;
    private final Stands stands;
    private final RecordFolder records;
    private final Clock clock;

    /**
     * @param shelf the shop's data files
     * @param stands reaches stands
     * @param records where records are kept
     * @param clock the shop's time and zone
     */
    public Acceptance(Shelf shelf, Stands stands, RecordFolder records, Clock clock) {
        this.shelf = shelf;
        this.stands = stands;
        this.records = records;
        this.clock = clock;
    }

    /**
     * What is to be tested, and how.
     *
     * @param stand name or file of the stand
     * @param reach how it is reached this time
     * @param model name of the unit model
     * @param plan name or file of a plan; empty for the model's own
     * @param serial as read from the plate, or {@code no plate}
     * @param technician who tests
     * @param units units of the papers
     */
    public record Order(
            String stand,
            Stands.Reach reach,
            String model,
            Optional<String> plan,
            String serial,
            String technician,
            UnitSystem units) {}

    /**
     * What came of it.
     *
     * @param record the record
     * @param kept its files
     */
    public record Result(RunRecord record, RecordFolder.Kept kept) {}

    /** Everything of an order that was found on the shelf. */
    private record Bench(Order order, StandDescription description, UnitModel model, Plan plan) {}

    /**
     * Carries an order out. Whatever happens once the stand is open becomes a record; before that, nothing has moved.
     *
     * @throws OrderException when the order can't be carried out as given
     * @throws DataFileException when a data file is wrong
     * @throws StandException when the stand can't be reached
     * @throws RunRecordException when the record can't be kept
     */
    public Result carryOut(Order order, RunListener listener, StopButton stop)
            throws OrderException, DataFileException, StandException, RunRecordException {
        records.checkWritable();
        UnitModel model = shelf.model(order.model());
        Plan plan = shelf.plan(order.plan().orElse(model.plan())).withSupplyAmpsAtMost(model.ampsLimit());
        Bench bench = new Bench(order, shelf.stand(order.stand()), model, plan);
        checkFits(bench);
        // Read before the stand is opened: a wrong file must not cost a reset of the board.
        List<HealthyCurve> curves = shelf.curves();
        try (Stand stand = stands.reach(bench.description(), order.reach())) {
            StandIdentity identity = stand.open();
            Conditions conditions = conditions(bench, identity);
            HealthyCurve curve = newest(curves, conditions).orElseThrow(() -> noCurve(conditions));
            OffsetDateTime startedAt = OffsetDateTime.now(clock);
            RunOutcome outcome = new PlanRun(stand, plan, listener, stop).carryOut();
            Grade grade = grade(bench, conditions, curve, outcome);
            RunRecord record = record(bench, identity, conditions, curve, startedAt, outcome, grade);
            return new Result(record, records.keep(record, order.units()));
        }
    }

    private static void checkFits(Bench bench) throws OrderException {
        if (bench.plan().kind() != bench.model().kind()) {
            throw new OrderException(
                    "plan '%s' is for a %s, model '%s' is a %s. Choose a plan for it, or leave --plan away."
                            .formatted(
                                    bench.plan().id(),
                                    bench.plan().kind().words(),
                                    bench.model().id(),
                                    bench.model().kind().words()));
        }
    }

    private static Conditions conditions(Bench bench, StandIdentity identity) {
        return new Conditions(
                bench.model().id(),
                bench.description().driver(),
                identity.pumpPwmHz(),
                bench.description().nozzle(),
                bench.description().fluid());
    }

    private static Optional<HealthyCurve> newest(List<HealthyCurve> curves, Conditions run) {
        return curves.stream()
                .filter(curve -> curve.conditions().differences(run).isEmpty())
                .max(Comparator.comparingInt(HealthyCurve::version));
    }

    private static OrderException noCurve(Conditions run) {
        return new OrderException(String.format(
                Locale.ROOT,
                "there is no healthy curve for model %s with driver %s at %.0f Hz, nozzle %s and %s, so nothing could be"
                        + " judged. Fit the driver and nozzle of an existing curve, or have one made from known-good units.",
                run.model(),
                run.driver(),
                run.pwmHz(),
                run.nozzle(),
                run.fluid()));
    }

    private static Grade grade(Bench bench, Conditions conditions, HealthyCurve curve, RunOutcome outcome) {
        StandExpectations expected = new StandExpectations(
                bench.description().supplyVolts(), bench.description().nozzleM3PerSecondPerRootPascal());
        GradingInput input = new GradingInput(
                outcome.trace(),
                outcome.ending(),
                bench.plan(),
                Optional.of(curve),
                conditions,
                expected,
                bench.order().units());
        try {
            return Grader.grade(input);
        } catch (RuntimeException e) {
            // The run is over and cannot be had again: its record is kept, and can be graded once the fault is mended.
            return Grade.none("the program could not grade this run: " + e, "report this with the record");
        }
    }

    private static RunRecord record(
            Bench bench,
            StandIdentity identity,
            Conditions conditions,
            HealthyCurve curve,
            OffsetDateTime startedAt,
            RunOutcome outcome,
            Grade grade) {
        boolean practice = bench.model().invented()
                || bench.description().connection() instanceof Connection.Simulated
                || curve.simulated();
        return new RunRecord(
                ID.format(startedAt.withOffsetSameInstant(ZoneOffset.UTC)),
                startedAt,
                Version.text(),
                new Subject(
                        bench.model().id(),
                        bench.model().title(),
                        bench.order().serial(),
                        bench.order().technician(),
                        practice),
                new StandUsed(
                        bench.description().id(),
                        bench.description().title(),
                        identity.boardKind(),
                        identity.uniqueId(),
                        identity.firmware(),
                        identity.bootId(),
                        outcome.samplesLost()),
                conditions,
                bench.plan().label(),
                Optional.of(new CurveUsed(
                        curve.label(), curve.units(), curve.toleranceFactor(), curve.coverage(), curve.simulated())),
                outcome.ending(),
                grade,
                outcome.trace());
    }
}
