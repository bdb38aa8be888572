package org.pumpwright.host.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plant.Fault;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.run.PlanRun;
import org.pumpwright.host.run.RunOutcome;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import org.pumpwright.host.trace.Journal;

/** The papers of units of every kind, healthy and with every fault that a run can show, leave nothing in English. */
final class SpanishRecordsTest {
    private static final Shelf SHELF = new Shelf(Firmware.root().resolve("fixtures"));
    private static final List<String> COMPLAINTS =
            Stream.of(Complaint.values()).map(Complaint::word).toList();
    private static final int MODERATE = 2;

    private static List<String> plans(UnitKind kind) {
        return switch (kind) {
            case PUMP_12V ->
                List.of(
                        "quick-12v-pump",
                        "full-12v-pump",
                        "wiggle-12v-pump",
                        "self-prime-12v-pump",
                        "zero-flow-12v-pump",
                        "restart-12v-pump",
                        "dead-head-12v-pump");
            case HYDRAULIC_PUMP -> List.of("valve-sweep", "override-split");
            case DRIVER -> List.of("driver-loads");
            case METER -> List.of("meter-check");
            case HARNESS -> List.of("harness-drop");
        };
    }

    @ParameterizedTest
    @EnumSource(UnitKind.class)
    void nothingOfARecordStaysInEnglish(UnitKind kind) throws Exception {
        Map<String, String> left = new TreeMap<>();
        List<Fault> faults = new ArrayList<>(CauseUnits.faults(kind));
        faults.add(0, PracticeUnit.faults(kind).get(0));
        for (int number = 0; number < faults.size(); number++) {
            Fault fault = faults.get(number);
            for (String plan : plans(kind, number)) {
                Interpreter in = new Interpreter(Texts.in(Language.ES));
                HtmlReport.page(record(SHELF.plan(plan), fault, number), UnitSystem.US, in);
                in.leftInEnglish().forEach(sentence -> left.putIfAbsent(sentence, plan + " " + fault.word()));
            }
        }
        assertThat(left).isEmpty();
    }

    /** A healthy unit goes through every plan, one with a fault through the usual one and one of the others in turn. */
    private static List<String> plans(UnitKind kind, int number) {
        List<String> all = plans(kind);
        return number == 0 || all.size() == 1 ? all : List.of(all.get(0), all.get(1 + number % (all.size() - 1)));
    }

    private static RunRecord record(Plan plan, Fault fault, int number) throws Exception {
        Plant plant = new CauseUnits(plan.kind(), 2026).plant(fault, MODERATE, number);
        Intake intake = Intake.NONE.complaining(COMPLAINTS.get(number % COMPLAINTS.size()));
        UnitModel model = SHELF.model(
                plan.kind() == UnitKind.PUMP_12V
                        ? "demo-pump"
                        : "demo-" + plan.kind().word());
        StandDescription stand = TestStands.described("simulated");
        StandDescription.Nozzle nozzle = stand.nozzleBehind(plan.wiring().meter());
        Optional<HealthyCurve> curve =
                plan.judged().isEmpty() ? Optional.empty() : Optional.of(SHELF.curve("demo-pump"));
        Conditions conditions = curve.map(HealthyCurve::conditions)
                .orElse(new Conditions(model.id(), stand.driver(), SimulatedBoard.PWM_HZ, nozzle.id(), stand.fluid()));
        RunOutcome outcome = run(plan, plant, stand);
        Grade grade = Grader.grade(new GradingInput(
                        outcome.trace(),
                        outcome.ending(),
                        plan,
                        curve,
                        conditions,
                        new StandExpectations(stand.supplyVolts(), nozzle.m3PerSecondPerRootPascal()),
                        UnitSystem.US)
                .by(SHELF.rules(model).orElseThrow())
                .of(model.nominal())
                .knowing(intake));
        RunRecord sample = SampleRecords.pass();
        return new RunRecord(
                sample.id(),
                sample.startedAt(),
                sample.software(),
                sample.subject(),
                sample.stand(),
                conditions,
                plan.id(),
                curve.map(CurveChoice::used),
                outcome.ending(),
                grade,
                outcome.trace(),
                intake,
                Optional.of(SHELF.rules(model).orElseThrow().label()),
                Optional.empty());
    }

    private static RunOutcome run(Plan plan, Plant plant, StandDescription description) throws Exception {
        try (CoarseStand stand = new CoarseStand(description, plant)) {
            stand.open();
            SimulatedPerson person = new SimulatedPerson(plant, Map.of());
            return new PlanRun(stand, plan, event -> {}, new StopButton(), person, Journal.NONE).carryOut();
        }
    }
}
