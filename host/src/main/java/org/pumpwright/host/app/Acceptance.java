package org.pumpwright.host.app;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.Handling;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.JournalFile;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.rule.DecisionNumbers;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.trace.Ending;

/**
 * The main job: tests one unit on a stand, from the order to the papers. Thread-safe; each test runs on the thread that
 * asks for it.
 */
public final class Acceptance {
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
     * @param job why the unit is here, and whether it was before
     */
    public record Order(
            String stand,
            Stands.Reach reach,
            String model,
            Optional<String> plan,
            String serial,
            String technician,
            UnitSystem units,
            Optional<ManualDrive> manual,
            Job job) {
        /** An order by a plan. */
        public Order(
                String stand,
                Stands.Reach reach,
                String model,
                Optional<String> plan,
                String serial,
                String technician,
                UnitSystem units) {
            this(stand, reach, model, plan, serial, technician, units, Optional.empty(), Job.PLAIN);
        }

        /** The same in a job. */
        public Order within(Job which) {
            return new Order(stand, reach, model, plan, serial, technician, units, manual, which);
        }

        /** The same with one duty held by hand in the place of a plan. */
        public Order byHand(ManualDrive held) {
            return new Order(stand, reach, model, Optional.empty(), serial, technician, units, Optional.of(held), job);
        }
    }

    /**
     * Why the unit is here, and whether it was before.
     *
     * @param complaint what the customer says; empty where nothing was said
     * @param begins whether a new job begins, in which earlier runs of the unit do not count
     * @param decision who lets the unit be tested once more than is allowed without one
     * @param claim number of the claim or job
     * @param handling what it has pumped, and whether it is clean
     */
    public record Job(
            Optional<Complaint> complaint,
            boolean begins,
            Optional<Decision> decision,
            Optional<String> claim,
            Handling handling) {
        /** No complaint, no claim, and earlier runs count. */
        public static final Job PLAIN = new Job(Optional.empty(), false, Optional.empty());

        /** A job without a claim. */
        public Job(Optional<Complaint> complaint, boolean begins, Optional<Decision> decision) {
            this(complaint, begins, decision, Optional.empty());
        }

        /** A job of which nobody has said what the unit has pumped. */
        public Job(Optional<Complaint> complaint, boolean begins, Optional<Decision> decision, Optional<String> claim) {
            this(complaint, begins, decision, claim, Handling.UNKNOWN);
        }

        /** The same with what the customer says, where that was not given. */
        public Job complaining(Optional<Complaint> noted) {
            return new Job(complaint.or(() -> noted), begins, decision, claim, handling);
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
    private record Bench(
            Order order, StandDescription description, UnitModel model, Plan plan, Optional<GradingRules> rules) {}

    /** Everything that is known of a run before it begins. */
    private record Setting(
            Bench bench,
            StandIdentity identity,
            Conditions conditions,
            Optional<HealthyCurve> curve,
            EarlierRuns earlier,
            OffsetDateTime startedAt) {
        Intake intake() {
            Intake first = bench.order()
                    .job()
                    .complaint()
                    .map(complaint -> Intake.NONE.complaining(complaint.word()))
                    .orElse(Intake.NONE);
            Intake claimed = bench.order().job().claim().map(first::claiming).orElse(first);
            Intake now =
                    claimed.after(earlier.ids()).handled(bench.order().job().handling());
            return earlier.decision().map(now::decided).orElse(now);
        }

        /** Simulated or invented in any part of it. */
        boolean practice() {
            return isPractice(bench, curve);
        }
    }

    private static boolean isPractice(Bench bench, Optional<HealthyCurve> curve) {
        return bench.model().invented()
                || bench.description().connection() instanceof Connection.Simulated
                || curve.map(HealthyCurve::simulated).orElse(false);
    }

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
            Optional<HealthyCurve> curve = CurveChoice.newest(plan, curves, conditions);
            Setting setting =
                    new Setting(bench, identity, conditions, curve, earlier(bench, curve), OffsetDateTime.now(clock));
            watcher.begins(plan, setting.curve(), expected(setting));
            watcher.counts(setting.earlier());
            return carryOut(setting, stand, watcher, stop, reached.person().orElse(person));
        }
    }

    /** Looked up before the stand is armed: a retest too many must not move anything. */
    private EarlierRuns earlier(Bench bench, Optional<HealthyCurve> curve) throws OrderException {
        Order order = bench.order();
        int most = 1
                + bench.rules()
                        .map(GradingRules::decision)
                        .orElse(DecisionNumbers.STANDARD)
                        .mostRetests();
        if (order.manual().isPresent() || order.job().begins()) {
            return EarlierRuns.none(most);
        }
        EarlierRuns.Unit unit = new EarlierRuns.Unit(
                order.serial(), bench.model().id(), bench.plan().id(), isPractice(bench, curve));
        return EarlierRuns.of(unit, most, records, clock.instant())
                .allowed(order.serial(), order.job().decision());
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
        Optional<GradingRules> rules = manual.isPresent() ? Optional.empty() : shelf.rules(model);
        return new Bench(order, stand, model, plan.withSupplyAmpsAtMost(model.ampsLimit()), rules);
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
            RunOutcome outcome =
                    explained(new PlanRun(stand, plan, watcher, stop, person, journal).carryOut(), watcher);
            RunRecord record = record(setting, outcome, grade(setting, outcome));
            RecordFolder.Kept kept =
                    records.keep(record, setting.bench().order().units());
            journal.discard();
            return new Result(record, kept);
        }
    }

    private static RunOutcome explained(RunOutcome outcome, RunWatcher watcher) {
        Ending ending = outcome.ending();
        if (ending.kind() != Ending.Kind.STOPPED_BY_PERSON) {
            return outcome;
        }
        return watcher.whyStopped()
                .map(why -> new Ending(ending.kind(), ending.reason() + ": " + why))
                .map(told -> new RunOutcome(outcome.trace(), told, outcome.safe(), outcome.samplesLost()))
                .orElse(outcome);
    }

    private static Conditions conditions(Bench bench, StandIdentity identity) {
        return new Conditions(
                bench.model().id(),
                bench.description().driver(),
                identity.pumpPwmHz(),
                bench.description().nozzleBehind(bench.plan().wiring().meter()).id(),
                bench.description().fluid());
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
                setting.bench().order().units(),
                setting.bench().rules(),
                setting.intake(),
                setting.bench().model().nominal());
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
        return new RunRecord(
                RecordId.of(setting.startedAt()),
                setting.startedAt(),
                Version.text(),
                new Subject(
                        bench.model().id(),
                        bench.model().title(),
                        bench.order().serial(),
                        bench.order().technician(),
                        setting.practice()),
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
                setting.curve().map(CurveChoice::used),
                outcome.ending(),
                grade,
                outcome.trace(),
                setting.intake(),
                bench.rules().map(GradingRules::label),
                Optional.empty());
    }
}
