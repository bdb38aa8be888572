package org.pumpwright.host.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.grade.BudgetTerm;
import org.pumpwright.host.grade.ComplaintAnswer;
import org.pumpwright.host.grade.Correction;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Guard;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.Limits;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.record.RunRecord.StandUsed;
import org.pumpwright.host.record.RunRecord.Subject;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;

/** Records of invented runs, one for each verdict, with figures of the size that a 5 gal/min pump gives. */
public final class SampleRecords {
    private static final Conditions CONDITIONS = new Conditions("demo-pump", "shop-7k8", 7812, "n-0.60", "water");
    private static final String RULE =
            "passes when inside the healthy range by more than the guard, fails when outside by"
                    + " more; guard 1.645 u, so at most 5 % risk at a limit; between: inconclusive";
    private static final CurveUsed CURVE =
            new CurveUsed("demo-pump-n060 v2", 10, 3.39, "95 % of healthy units, 95 % confidence", true);

    private SampleRecords() {}

    public static RunRecord pass() {
        SampleSweep sweep = SampleSweep.healthy();
        return run(
                sweep,
                Optional.of(CURVE),
                grade(
                        Verdict.PASS,
                        List.of("all 6 judged features lie inside their limits"),
                        sweep.judge(),
                        List.of(),
                        ""));
    }

    /** One chamber of three not pumping. */
    public static RunRecord fail() {
        SampleSweep sweep = SampleSweep.of(
                new double[] {0.69, 0.70, 0.73, 0.76, 0.79}, new double[] {0.87, 0.82, 0.60, 0.58, 0.57});
        List<FeatureJudgement> features = sweep.judge();
        List<Cause> causes = List.of(
                new Cause(
                        "one chamber not pumping (debris under a valve or a torn diaphragm)",
                        "flow is down by 30 to 21 % and motor amps by 18 to 43 %, amps more than flow at high drive",
                        "run at 25 % and listen for a beat once a turn; open the head, look for debris, photograph before"
                                + " cleaning"),
                new Cause(
                        "recirculation valve on the stand not closed",
                        "the same pattern, but pressure would be low at every point",
                        "close the recirculation valve fully and run again"),
                new Cause(
                        "air in the suction",
                        "flow and amps both down, but amps by less than here",
                        "look at the sight tube; swap the suction hose"));
        List<String> reasons = List.of(
                "flow at 50 %: 1.50 gal/min, at least 1.88 needed (-27 %)",
                "flow at 30 % and at 100 % are low too", "motor amps at 50 % and at 100 %: below the healthy range");
        return run(
                sweep,
                Optional.of(CURVE),
                grade(
                        Verdict.FAIL,
                        reasons,
                        features,
                        causes,
                        "open the head, look for debris under a valve; photograph before cleaning."));
    }

    /** As much on one paper as can be: every judged feature fails, long words everywhere, more checks. */
    public static RunRecord crowded() {
        RunRecord run = fail();
        Grade grade = run.grade();
        List<String> reasons = new ArrayList<>();
        grade.features().stream()
                .filter(FeatureJudgement::judged)
                .forEach(f -> reasons.add(f.feature().words() + ": 1.49 gal/min, at least 1.91 needed (-27 %)"));
        List<Cause> causes = grade.causes().stream()
                .map(c -> new Cause(
                        c.name(),
                        c.because() + "; at 30, 50 and 100 % the figures are -30, -27 and -21 % for"
                                + " flow and -18, -40 and -43 % for amps",
                        c.nextTest() + ", then run the plan again"))
                .toList();
        List<StandCheck> checks = new ArrayList<>(checks());
        checks.add(held("master pump", "checked 3 days ago, 0.4 % from its own mean, at most 1.5 %"));
        checks.add(held("water", "20.4 degrees, allowed are 10 to 30 degrees at the meter"));
        checks.add(held("samples", "none lost of 810, at most 1 in 100"));
        return withGrade(
                run,
                new Grade(
                        Verdict.FAIL,
                        reasons,
                        checks,
                        grade.features(),
                        causes,
                        grade.nextTest() + " Then run the whole plan again under a new record.",
                        grade.rule(),
                        true));
    }

    public static RunRecord inconclusive() {
        SampleSweep sweep =
                SampleSweep.of(new double[] {0.92, 0.93, 0.918, 0.93, 0.925}, new double[] {1, 1, 1, 0.99, 0.99});
        return run(
                sweep,
                Optional.of(CURVE),
                grade(
                        Verdict.INCONCLUSIVE,
                        List.of("flow at 50 %: 1.89 gal/min, the limit is 1.89 and the guard 0.03"),
                        sweep.judge(),
                        List.of(new Cause(
                                "worn valves or slip",
                                "flow is down by 7 to 8 % at every point, amps are as they should be",
                                "open the outlet and repeat: slip then recovers")),
                        "new prime, same set-up, once more."));
    }

    /** The supply was too low. */
    public static RunRecord invalid() {
        SampleSweep sweep =
                SampleSweep.of(new double[] {0.9, 0.9, 0.9, 0.9, 0.9}, new double[] {0.95, 0.95, 0.95, 0.95, 0.95});
        List<StandCheck> checks = new ArrayList<>(checks());
        checks.set(
                0,
                new StandCheck(
                        "supply at rest",
                        false,
                        "12.02 V, allowed are 13.39 to 14.21 V",
                        "charge the battery or set the supply to 13.8 V"));
        checks.set(
                3,
                new StandCheck(
                        "volts at the pins",
                        false,
                        "11.46 V at 100 %, allowed are 12.70 to 14.90 V",
                        "put the supply right, then look at lead and plugs"));
        Grade grade = new Grade(
                Verdict.INVALID,
                List.of("supply at rest is 12.02 V, allowed are 13.39 to 14.21 V"),
                checks,
                sweep.judge(),
                List.of(),
                "charge the battery or set the supply to 13.8 V, then run again.",
                RULE,
                false);
        return run(sweep, Optional.of(CURVE), grade);
    }

    /** Stopped at once: there is no point and no feature. */
    public static RunRecord stoppedByBoard() {
        List<StandCheck> checks = List.of(new StandCheck(
                "end of the run",
                false,
                "the board made itself safe: emergency stop pressed",
                "release the stop, run again"));
        Grade grade = new Grade(
                Verdict.INVALID,
                List.of("the board made itself safe: emergency stop pressed"),
                checks,
                List.of(),
                List.of(),
                "release the stop, run again",
                RULE,
                false);
        return with(
                pass(),
                new Ending(Ending.Kind.STOPPED_BY_BOARD, "emergency stop pressed"),
                grade,
                new Trace(SampleSweep.CHANNELS, List.of(), List.of()));
    }

    /** A good run on a stand that has no curve for the unit. */
    public static RunRecord withoutCurve() {
        Grade grade = new Grade(
                Verdict.NOT_TESTED,
                List.of("there is no healthy curve for demo-pump on this stand"),
                checks(),
                List.of(),
                List.of(),
                "make a healthy curve from known-good units, then grade this record again",
                "",
                false);
        return run(SampleSweep.healthy(), Optional.empty(), grade);
    }

    /** A run of a plan that judges nothing, with one finding of each kind. */
    public static RunRecord readings() {
        Grade grade = new Grade(
                Verdict.NOT_TESTED,
                List.of("this plan judges nothing; its readings are below"),
                checks(),
                List.of(),
                findings(),
                List.of(),
                "look at the readings; a verdict needs a plan that judges",
                "",
                false);
        RunRecord run = withPlan(run(SampleSweep.healthy(), Optional.empty(), grade), "full-12v-pump v1");
        return with(
                run,
                run.ending(),
                grade,
                new Trace(SampleSweep.CHANNELS, run.trace().samples(), List.of()));
    }

    /** The same, driven by hand. */
    public static RunRecord manual() {
        return withPlan(readings(), "manual v1");
    }

    /** The failed run as the second of a unit that surges, judged by the shop's rules too, with the numbers of each feature. */
    public static RunRecord traced() {
        RunRecord run = fail();
        List<FeatureJudgement> features = new ArrayList<>();
        run.grade().features().forEach(feature -> features.add(withNumbers(feature)));
        Uncertain start = Uncertain.of(0.262, 0.003);
        features.add(new FeatureJudgement(
                Feature.reading("threshold", "start duty", FindingUnit.SHARE),
                OptionalDouble.empty(),
                start,
                new Limits(
                        "rules pump-12v v1",
                        0.08,
                        OptionalDouble.empty(),
                        0.24,
                        new Source("rules/pump-12v.yaml", 1, 44),
                        "it starts turning at a duty at which a healthy pump does not"),
                new Guard(1.645, 1.645 * 0.003, new Source("rules/pump-12v.yaml", 1, 10)),
                FeatureJudgement.Decision.HIGH,
                Role.JUDGED));
        Grade was = run.grade();
        Grade grade = new Grade(
                was.verdict(),
                was.reasons(),
                was.standChecks(),
                features,
                was.findings(),
                was.causes(),
                was.nextTest(),
                was.rule(),
                was.advisory(),
                new ComplaintAnswer(ComplaintAnswer.Answer.YES, "the flow is below that of a healthy unit"),
                2);
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                grade,
                run.trace(),
                Intake.NONE.complaining("low").after(List.of("20260401-161210-11ab")),
                Optional.of("pump-12v v1"),
                Optional.empty());
    }

    private static FeatureJudgement withNumbers(FeatureJudgement feature) {
        double value = feature.measured().value();
        double u = feature.measured().standardUncertainty();
        return new FeatureJudgement(
                feature.feature(),
                feature.effectiveVolts(),
                value,
                List.of(
                        new Correction("zero", 0, 0, true, "no pulse came at rest"),
                        new Correction(
                                "volts", 0.04 * value, 0.002 * value, false, "13.20 V at the pins against 13.80 V")),
                feature.measured(),
                List.of(
                        new BudgetTerm("scatter and counting", 0.6 * u, ""),
                        new BudgetTerm("meter K", 0.8 * u, "meter K")),
                feature.limits(),
                feature.guard(),
                feature.decision(),
                feature.role(),
                "");
    }

    private static List<Finding> findings() {
        return List.of(
                figure(
                        "standstill",
                        "resistance at rest",
                        0.4841,
                        0.0239,
                        FindingUnit.OHMS,
                        "3 of 3 pulses, 0.478 to 0.489 ohm"),
                figure(
                        "ramp",
                        "start duty",
                        0.1520,
                        0.0029,
                        FindingUnit.SHARE,
                        "at 1 % a second; first pulses 0.21 s apart"),
                figure(
                        "ramp",
                        "stop duty",
                        0.0871,
                        0.0029,
                        FindingUnit.SHARE,
                        "at 1 % a second; last pulses 0.30 s apart"),
                new Finding(
                        "starts",
                        "starts",
                        new Finding.Word("10 of 10"),
                        "with 95 % confidence at least 74 % of such starts succeed"),
                figure(
                        "starts",
                        "time to run",
                        0.412,
                        0.016,
                        FindingUnit.SECONDS,
                        "from the command to lasting pulses, mean of 10, longest 0.44 s"),
                figure("soak", "drift of the flow", -0.0104, 0.0014, FindingUnit.SHARE, "in 10 minutes, from 590 s"),
                figure(
                        "soak",
                        "drift of the amps",
                        0.0002,
                        0.0031,
                        FindingUnit.SHARE,
                        "in 10 minutes, from 590 s, 6.21 A on average"),
                new Finding("soak", "thermal trip", new Finding.Word("none"), "in 600 s at 75 %"),
                figure(
                        "dead-head",
                        "pressure, outlet closed",
                        413_685,
                        3_000,
                        FindingUnit.PASCALS,
                        "readings from 59.1 psi to 60.9 psi"),
                figure("dead-head", "supply amps, outlet closed", 9.41, 0.06, FindingUnit.AMPS, "at 100 %"),
                figure(
                        "off",
                        "flow at zero command",
                        0,
                        7.3e-6,
                        FindingUnit.M3_PER_SECOND,
                        "0 pulses in 10.0 s; the meter is good from 0.20 gal/min"),
                figure(
                        "fuse-holder",
                        "resistance",
                        0.00312,
                        0.00021,
                        FindingUnit.OHMS,
                        "volts over amps from 3 loads, 10.1 A apart"),
                figure("sweep", "K at 70 %, up", 792_516, 4_000, FindingUnit.PULSES_PER_M3, "master: 3.51 gal/min"),
                figure(
                        "hot",
                        "winding temperature",
                        71.2,
                        6.1,
                        FindingUnit.CELSIUS,
                        "brushes and leads make it seem too cool"));
    }

    private static Finding figure(
            String step, String name, double value, double uncertainty, FindingUnit unit, String note) {
        return new Finding(step, name, new Finding.Figure(Uncertain.of(value, uncertainty), unit), note);
    }

    private static RunRecord withPlan(RunRecord run, String plan) {
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                plan,
                run.curve(),
                run.ending(),
                run.grade(),
                run.trace());
    }

    /** The same run with a serial number of one's choice. */
    public static RunRecord withSerial(RunRecord run, String serial) {
        Subject was = run.subject();
        Subject subject = new Subject(was.model(), was.modelTitle(), serial, was.technician(), was.practice());
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                subject,
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                run.grade(),
                run.trace());
    }

    /** The same run as one of a real unit. */
    public static RunRecord real(RunRecord run) {
        Subject was = run.subject();
        Subject subject = new Subject(was.model(), was.modelTitle(), was.serial(), was.technician(), false);
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                subject,
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                run.grade(),
                run.trace());
    }

    /** The same run with another judgement. */
    public static RunRecord withGrade(RunRecord run, Grade grade) {
        return with(run, run.ending(), grade, run.trace());
    }

    private static RunRecord with(RunRecord run, Ending ending, Grade grade, Trace trace) {
        return new RunRecord(
                run.id(),
                run.startedAt(),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                ending,
                grade,
                trace);
    }

    private static RunRecord run(SampleSweep sweep, Optional<CurveUsed> curve, Grade grade) {
        return new RunRecord(
                "20260402-081530-7f3a",
                OffsetDateTime.parse("2026-04-02T08:15:30-05:00"),
                "Pumpwright 0.1.0",
                new Subject("demo-pump", "Demo 5 gal/min diaphragm pump", "D-10442", "A. Tester", true),
                new StandUsed(
                        "simulated", "Simulated stand", "simulated", "00a1b2c3d4e5f607", "0.1.0", 3_735_928_559L, 0),
                CONDITIONS,
                "quick-12v-pump v1",
                curve,
                new Ending(Ending.Kind.COMPLETED, "every point was visited"),
                grade,
                sweep.trace());
    }

    private static Grade grade(
            Verdict verdict, List<String> reasons, List<FeatureJudgement> features, List<Cause> causes, String next) {
        return new Grade(verdict, reasons, checks(), features, causes, next, RULE, false);
    }

    private static List<StandCheck> checks() {
        return List.of(
                held("supply at rest", "13.79 V, allowed are 13.39 to 14.21 V"),
                held("zero current at rest", "0.01 A, at most 0.30 A"),
                held("no pulses at rest", "0 in 2.0 s"),
                held("volts at the pins", "13.15 to 13.76 V, allowed are 12.70 to 14.90 V"),
                held("supply lead", "0.050 ohm, at most 0.100 ohm"),
                held("nozzle", "0.603 gal/min per root psi, within 10 % of 0.600"),
                held("meter range", "lowest judged flow 1.04 gal/min, at least 0.40"),
                held("air", "no sign: pulse spread 1.6 %, lag-1 0.04"),
                held("curve and conditions", "model, driver, PWM frequency, nozzle and fluid agree"),
                held("curve's reach", "3.7 to 13.2 V asked, 2.1 to 13.4 V held"),
                held("end of the run", "every point was visited"));
    }

    private static StandCheck held(String name, String finding) {
        return new StandCheck(name, true, finding, "");
    }
}
