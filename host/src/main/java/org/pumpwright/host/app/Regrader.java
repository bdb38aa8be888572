package org.pumpwright.host.app;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.catalog.Nominal;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Grader;
import org.pumpwright.host.grade.GradingInput;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.stand.StandDescription;

/**
 * Judges stored runs by what is on the shelf now. The shelf is read once, so all runs are judged by the same. Thread-safe.
 */
public final class Regrader {
    private final List<Plan> plans;
    private final List<StandDescription> stands;
    private final Map<String, UnitModel> models = new HashMap<>();
    private final Map<String, Optional<GradingRules>> rules = new HashMap<>();
    private final Optional<GradingRules> chosenRules;
    private final List<HealthyCurve> curves;
    private final boolean curveChosen;
    private final UnitSystem units;

    /**
     * Reads the shelf.
     *
     * @param curve name or file of the one curve to hold against; empty for the newest of each run's conditions
     * @param chosen name or file of the one set of rules to judge by; empty for those of each run's model
     * @param units of the words in the grade
     * @throws OrderException when there is no such curve, or the shelf can't be read
     * @throws DataFileException when a data file is wrong
     */
    public Regrader(Shelf shelf, Optional<String> curve, Optional<String> chosen, UnitSystem units)
            throws OrderException, DataFileException {
        plans = shelf.plans();
        stands = shelf.stands();
        for (UnitModel model : shelf.models()) {
            models.put(model.id(), model);
            rules.put(model.id(), shelf.rules(model));
        }
        chosenRules = chosen.isPresent() ? Optional.of(shelf.rules(chosen.get())) : Optional.empty();
        curves = curve.isPresent() ? List.of(shelf.curve(curve.get())) : shelf.curves();
        curveChosen = curve.isPresent();
        this.units = units;
    }

    /**
     * A run as it is judged now.
     *
     * @param record with an id of its own
     * @param ofTheCurvesOwn whether the run is one of those that its curve was made from
     */
    public record Again(RunRecord record, boolean ofTheCurvesOwn) {}

    /**
     * Judges a run again; the run's record is not touched.
     *
     * @param now decides the new id
     * @throws OrderException when the run can't be judged by what is on the shelf, with what to do
     */
    public Again judge(RunRecord run, Instant now) throws OrderException {
        Plan plan = plan(run);
        Optional<HealthyCurve> curve = curve(run, plan);
        Optional<GradingRules> by = rules(run, plan);
        Grade grade = grade(run, plan, curve, by);
        boolean own = curve.flatMap(HealthyCurve::basis)
                .map(basis -> basis.runIds().contains(run.id()))
                .orElse(false);
        return new Again(again(run, curve, by, grade, now), own);
    }

    private Grade grade(RunRecord run, Plan plan, Optional<HealthyCurve> curve, Optional<GradingRules> by)
            throws OrderException {
        GradingInput input = new GradingInput(
                run.trace(),
                run.ending(),
                plan,
                curve,
                run.conditions(),
                expected(run, plan),
                units,
                by,
                run.intake(),
                nominal(run));
        try {
            return Grader.grade(input);
        } catch (RuntimeException e) {
            // One run that trips the program must not keep ten thousand others from being judged.
            throw new OrderException("trips the program: %s. Report this with the record.".formatted(e));
        }
    }

    /** What the run's model should do, as far as the shelf still holds the model. */
    private Nominal nominal(RunRecord run) {
        return Optional.ofNullable(models.get(run.conditions().model()))
                .map(UnitModel::nominal)
                .orElse(Nominal.UNKNOWN);
    }

    private static RunRecord again(
            RunRecord run, Optional<HealthyCurve> curve, Optional<GradingRules> by, Grade grade, Instant now) {
        return new RunRecord(
                RecordId.again(run.id(), now),
                run.startedAt(),
                Version.text(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                curve.map(CurveChoice::used),
                run.ending(),
                grade,
                run.trace(),
                run.intake(),
                by.map(GradingRules::label),
                Optional.of(run.id()));
    }

    /** Exactly the plan by which it was run: another version may visit other points, or judge others. */
    private Plan plan(RunRecord run) throws OrderException {
        Plan plan = plans.stream()
                .filter(each -> each.label().equals(run.plan()))
                .findFirst()
                .orElseThrow(() -> noPlan(run));
        UnitModel model = models.get(run.conditions().model());
        return model == null ? plan : plan.withSupplyAmpsAtMost(model.ampsLimit());
    }

    private Optional<GradingRules> rules(RunRecord run, Plan plan) throws OrderException {
        if (chosenRules.isEmpty()) {
            return rules.getOrDefault(run.conditions().model(), Optional.empty());
        }
        GradingRules by = chosenRules.get();
        if (by.kind() != plan.kind()) {
            throw new OrderException(
                    "is the run of a %s, rules %s are for a %s. Leave --rules away, or choose rules of its kind."
                            .formatted(
                                    plan.kind().words(), by.label(), by.kind().words()));
        }
        return chosenRules;
    }

    private OrderException noPlan(RunRecord run) {
        String id = run.plan().replaceFirst(" v\\d+$", "");
        String there = plans.stream()
                .filter(plan -> plan.id().equals(id))
                .map(Plan::label)
                .sorted()
                .collect(Collectors.joining(", "));
        return new OrderException(
                "was run by plan %s; the shelf has %s. Put the file of %s beside the others in fixtures/plans, under any name."
                        .formatted(run.plan(), there.isEmpty() ? "no plan of that name" : there, run.plan()));
    }

    private Optional<HealthyCurve> curve(RunRecord run, Plan plan) throws OrderException {
        if (curveChosen) {
            HealthyCurve chosen = curves.get(0);
            List<String> differences = chosen.conditions().differences(run.conditions());
            if (!differences.isEmpty()) {
                throw new OrderException(
                        "does not go with curve %s: %s. Leave --curve away, or choose the curve of its conditions."
                                .formatted(chosen.label(), String.join(", ", differences)));
            }
        }
        return CurveChoice.newest(plan, curves, run.conditions());
    }

    private StandExpectations expected(RunRecord run, Plan plan) throws OrderException {
        StandDescription stand = stands.stream()
                .filter(each -> each.id().equals(run.stand().id()))
                .findFirst()
                .orElseThrow(() -> noStand(run));
        StandDescription.Nozzle nozzle = stand.nozzleBehind(plan.wiring().meter());
        if (!nozzle.id().equals(run.conditions().nozzle())) {
            throw new OrderException(
                    "was run with nozzle %s; the file of stand %s now names nozzle %s. Grade it with the stand's file of that time."
                            .formatted(run.conditions().nozzle(), stand.id(), nozzle.id()));
        }
        return new StandExpectations(stand.supplyVolts(), nozzle.m3PerSecondPerRootPascal())
                .on(run.startedAt().toLocalDate());
    }

    private OrderException noStand(RunRecord run) {
        String there = stands.stream().map(StandDescription::id).sorted().collect(Collectors.joining(", "));
        return new OrderException(
                "was run on stand %s; the shelf has %s. Put that stand's file into fixtures/stands, under any name."
                        .formatted(run.stand().id(), there));
    }
}
