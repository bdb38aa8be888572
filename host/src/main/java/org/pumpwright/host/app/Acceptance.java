package org.pumpwright.host.app;

import java.time.Clock;
import java.time.LocalDate;
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
import org.pumpwright.host.record.JournalFile;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.PlanRun;
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
     * @param manual one duty held by hand in the place of a plan; then the model need not be one of the shelf's
     */
    public record Order(
            String stand,
            Stands.Reach reach,
            String model,
            Optional<String> plan,
            String serial,
            String technician,
            UnitSystem units,
            Optional<ManualDrive> manual) {
        /** An order by a plan. */
        public Order(
                String stand,
                Stands.Reach reach,
                String model,
                Optional<String> plan,
                String serial,
                String technician,
                UnitSystem units) {
            this(stand, reach, model, plan, serial, technician, units, Optional.empty());
        }

        /** The same with one duty held by hand in the place of a plan. */
        public Order byHand(ManualDrive held) {
            return new Order(stand, reach, model, Optional.empty(), serial, technician, units, Optional.of(held));
        }
    }

    /**
     * What came of it.
     *
     * @param record the record
     * @param kept its files
     */
    public record Result(RunRecord record, RecordFolder.Kept kept) {}

    /** Everything of an order that was found on the shelf. */
    private record Bench(Order order, StandDescription description, UnitModel model, Plan plan) {}

    /** Everything that is known of a run before it begins. */
    private record Setting(
            Bench bench,
            StandIdentity identity,
            Conditions conditions,
            Optional<HealthyCurve> curve,
            OffsetDateTime startedAt) {}

    /**
     * Carries an order out. Whatever happens once the stand is open becomes a record; before that, nothing has moved.
     *
     * @param watcher hears how it goes
     * @param stop may be pressed from any thread
     * @param person answers the plan's questions; on a simulated stand the program answers them itself
     * @throws OrderException when the order can't be carried out as given
     * @throws DataFileException when a data file is wrong
     * @throws StandException when the stand can't be reached
     * @throws RunRecordException when the record can't be kept
     */
    public Result carryOut(Order order, RunWatcher watcher, StopButton stop, Operator person)
            throws OrderException, DataFileException, StandException, RunRecordException {
        records.checkWritable();
        Bench bench = bench(order);
        Plan plan = bench.plan();
        BeforeTheRun.check(plan, bench.model(), bench.description(), LocalDate.now(clock));
        // Read before the stand is opened: a wrong file must not cost a reset of the board.
        List<HealthyCurve> curves = shelf.curves();
        Stands.Reached reached = stands.reach(bench.description(), order.reach(), plan.kind());
        try (Stand stand = reached.stand()) {
            StandIdentity identity = stand.open();
            Conditions conditions = conditions(bench, identity);
            Setting setting = new Setting(
                    bench, identity, conditions, curve(plan, curves, conditions), OffsetDateTime.now(clock));
            watcher.begins(plan, setting.curve(), expected(setting));
            return carryOut(setting, stand, watcher, stop, reached.person().orElse(person));
        }
    }

    private Bench bench(Order order) throws OrderException, DataFileException {
        StandDescription stand = shelf.stand(order.stand());
        Optional<ManualDrive> manual = order.manual();
        UnitModel model = manual.isPresent() && order.model().equals(ManualDrive.PLAN)
                ? manual.get().anyUnit()
                : shelf.model(order.model());
        Plan plan = manual.isPresent()
                ? manual.get().plan(model.kind())
                : shelf.plan(order.plan().orElse(model.plan()));
        return new Bench(order, stand, model, plan.withSupplyAmpsAtMost(model.ampsLimit()));
    }

    private Result carryOut(Setting setting, Stand stand, RunWatcher watcher, StopButton stop, Operator person)
            throws RunRecordException {
        Plan plan = setting.bench().plan();
        RunOutcome cutShort = RunOutcome.cutShort(
                stand.description().channels().withFlowMeter(plan.wiring().meter()));
        RunRecord begun = record(
                setting,
                cutShort,
                Grade.none(cutShort.ending().reason(), "look why the program ended, then run again"));
        try (JournalFile journal = records.begin(begun)) {
            RunOutcome outcome = new PlanRun(stand, plan, watcher, stop, person, journal).carryOut();
            RunRecord record = record(setting, outcome, grade(setting, outcome));
            RecordFolder.Kept kept =
                    records.keep(record, setting.bench().order().units());
            journal.discard();
            return new Result(record, kept);
        }
    }

    private static Conditions conditions(Bench bench, StandIdentity identity) {
        return new Conditions(
                bench.model().id(),
                bench.description().driver(),
                identity.pumpPwmHz(),
                bench.description().nozzleBehind(bench.plan().wiring().meter()).id(),
                bench.description().fluid());
    }

    /** A plan that judges nothing needs no curve. */
    private static Optional<HealthyCurve> curve(Plan plan, List<HealthyCurve> curves, Conditions run)
            throws OrderException {
        Optional<HealthyCurve> newest = curves.stream()
                .filter(curve -> curve.conditions().differences(run).isEmpty())
                .max(Comparator.comparingInt(HealthyCurve::version));
        if (newest.isEmpty() && !plan.judged().isEmpty()) {
            throw noCurve(run);
        }
        return newest;
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

    private static Grade grade(Setting setting, RunOutcome outcome) {
        Optional<ManualDrive> manual = setting.bench().order().manual();
        if (manual.isPresent()) {
            return manual.get().grade(outcome.ending());
        }
        GradingInput input = new GradingInput(
                outcome.trace(),
                outcome.ending(),
                setting.bench().plan(),
                setting.curve(),
                setting.conditions(),
                expected(setting),
                setting.bench().order().units());
        try {
            return Grader.grade(input);
        } catch (RuntimeException e) {
            // The run is over and cannot be had again: its record is kept, and can be graded once the fault is mended.
            return Grade.none("the program could not grade this run: " + e, "report this with the record");
        }
    }

    private static StandExpectations expected(Setting setting) {
        StandDescription stand = setting.bench().description();
        return new StandExpectations(
                        stand.supplyVolts(),
                        stand.nozzleBehind(setting.bench().plan().wiring().meter())
                                .m3PerSecondPerRootPascal())
                .on(setting.startedAt().toLocalDate());
    }

    private static RunRecord record(Setting setting, RunOutcome outcome, Grade grade) {
        Bench bench = setting.bench();
        StandIdentity identity = setting.identity();
        boolean practice = bench.model().invented()
                || bench.description().connection() instanceof Connection.Simulated
                || setting.curve().map(HealthyCurve::simulated).orElse(false);
        return new RunRecord(
                ID.format(setting.startedAt().withOffsetSameInstant(ZoneOffset.UTC)),
                setting.startedAt(),
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
                setting.conditions(),
                bench.plan().label(),
                setting.curve()
                        .map(curve -> new CurveUsed(
                                curve.label(),
                                curve.units(),
                                curve.toleranceFactor(),
                                curve.coverage(),
                                curve.simulated())),
                outcome.ending(),
                grade,
                outcome.trace());
    }
}
