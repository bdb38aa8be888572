package org.pumpwright.host.app.bucket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.calibrate.BucketResult;
import org.pumpwright.host.calibrate.Effect;
import org.pumpwright.host.calibrate.Finding;
import org.pumpwright.host.calibrate.FittedK;
import org.pumpwright.host.calibrate.FlowPoint;
import org.pumpwright.host.calibrate.Leg;
import org.pumpwright.host.calibrate.Reading;
import org.pumpwright.host.calibrate.RunResult;
import org.pumpwright.host.calibrate.SingleK;
import org.pumpwright.host.calibrate.Stated;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.calibrate.fluid.Water;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.BudgetLine;
import org.pumpwright.host.record.BucketRecord.Check;
import org.pumpwright.host.record.BucketRecord.Fit;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.KValue;

/** Puts a worked-out bucket test into the figures of a record. Thread-safe. */
final class Recording {
    private static final double GRAMS = 1000;
    private static final double LITRES = 1000;
    private static final double CHANGE_LIMIT = 0.015;

    private final Sheet sheet;
    private final BucketResult result;

    Recording(Sheet sheet, BucketResult result) {
        this.sheet = sheet;
        this.result = result;
    }

    BucketRecord.Method method() {
        return new BucketRecord.Method(
                sheet.method(),
                result.test().bench().method().words() + ", "
                        + result.test().bench().timing().start().words(),
                fluid());
    }

    private String fluid() {
        Liquid liquid = result.test().liquid().orElse(null);
        double celsius = result.runs().get(0).run().liquidCelsius();
        if (liquid == null) {
            return result.test().liquidName();
        }
        String density = String.format(Locale.ROOT, "%.2f kg/m3 at %.1f °C", liquid.kgPerM3(celsius), celsius);
        return liquid instanceof Water
                ? "water, " + density
                : result.test().liquidName() + ", measured density " + density;
    }

    /** The flows of the main pass, then those of the other passes. */
    List<Flow> flows() {
        List<Flow> flows = new ArrayList<>();
        for (FlowPoint point : result.points()) {
            List<RunResult> runs = result.runs().stream()
                    .filter(run ->
                            run.run().leg() == Leg.MAIN && run.run().set().equals(point.set()))
                    .toList();
            flows.add(new Flow(
                    point.flow().m3PerSecond(),
                    "up",
                    runs.stream().map(Recording::run).toList(),
                    value(point.stated()),
                    point.deviationShare(),
                    point.rangeShare(),
                    point.budget().terms().stream()
                            .map(term -> new BudgetLine(
                                    term.effect().words(),
                                    term.effect() == Effect.REPEATABILITY ? "A" : "B",
                                    term.standardShare(),
                                    term.degreesOfFreedom()))
                            .toList()));
        }
        flows.addAll(otherPasses());
        return flows;
    }

    /** Runs on the way back and of the first flow once more: shown, and held against the main pass whose U they take. */
    private List<Flow> otherPasses() {
        List<Flow> flows = new ArrayList<>();
        for (Leg leg : List.of(Leg.BACK, Leg.FIRST_AGAIN)) {
            for (FlowPoint point : result.points()) {
                List<RunResult> runs = result.runs().stream()
                        .filter(run -> run.run().leg() == leg && run.run().set().equals(point.set()))
                        .toList();
                if (runs.stream().anyMatch(run -> run.run().counts())) {
                    flows.add(otherPass(leg, point, runs));
                }
            }
        }
        return flows;
    }

    private static Flow otherPass(Leg leg, FlowPoint main, List<RunResult> runs) {
        List<RunResult> counting =
                runs.stream().filter(run -> run.run().counts()).toList();
        DoubleSummaryStatistics k =
                counting.stream().mapToDouble(run -> run.k().pulsesPerM3()).summaryStatistics();
        double squares = 0;
        for (RunResult run : counting) {
            double off = run.k().pulsesPerM3() - k.getAverage();
            squares += off * off;
        }
        double spread = counting.size() < 2 ? 0 : Math.sqrt(squares / (counting.size() - 1)) / k.getAverage();
        Stated u = main.stated();
        return new Flow(
                counting.stream()
                        .mapToDouble(run -> run.flow().m3PerSecond())
                        .average()
                        .orElseThrow(),
                leg == Leg.BACK ? "down" : "repeat",
                runs.stream().map(Recording::run).toList(),
                new KValue(k.getAverage(), u.standardShare(), u.degreesOfFreedom(), u.coverage()),
                spread,
                (k.getMax() - k.getMin()) / k.getAverage(),
                List.of());
    }

    /** Runs of the other passes: they are held against the main pass and have no budget of their own. */
    List<Check> passes() {
        return result.passes().stream()
                .map(pass -> new Check(
                        pass.leg() == Leg.BACK ? "same K on the way back" : "same K when repeated at the end",
                        !pass.shows(),
                        String.format(
                                Locale.ROOT,
                                "%+.2f %% at %s; chance alone explains %.2f %%",
                                100 * pass.differenceShare(),
                                pass.set().print(result.test().units()),
                                100 * pass.chanceShare())))
                .toList();
    }

    private static BucketRecord.Run run(RunResult run) {
        return new BucketRecord.Run(
                Math.round(run.run().pulses()),
                run.volume().m3(),
                run.run().seconds(),
                reading(run.run().reading()),
                run.k().pulsesPerM3(),
                run.run().excludedBecause());
    }

    private static String reading(Reading reading) {
        if (reading instanceof Reading.Weights weights) {
            return weights.tareKg() == 0
                    ? String.format(Locale.ROOT, "%.1f g net", weights.netKg() * GRAMS)
                    : String.format(Locale.ROOT, "%.1f - %.1f g", weights.grossKg() * GRAMS, weights.tareKg() * GRAMS);
        }
        if (reading instanceof Reading.Level level) {
            return String.format(Locale.ROOT, "%.3f L", level.m3() * LITRES);
        }
        return String.format(Locale.ROOT, "%.0f master pulses", ((Reading.MasterPulses) reading).pulses());
    }

    BucketRecord.Result result(boolean overridden) {
        SingleK single = result.single();
        List<Check> checks = checks();
        return new BucketRecord.Result(
                value(single.asCalibrated()),
                singleWords(),
                result.test().declared().range().least().m3PerSecond(),
                result.test().declared().range().most().m3PerSecond(),
                Math.abs(single.worst().share()),
                single.inService().expandedShare(),
                fit(),
                checks,
                overridden || checks.stream().allMatch(Check::holds));
    }

    private String singleWords() {
        return "for work at "
                + String.join(
                        ", ",
                        result.single().working().stream()
                                .map(flow -> flow.flow().print(result.test().units()))
                                .toList());
    }

    private Optional<Fit> fit() {
        if (!(result.curve() instanceof FittedK fit)) {
            return Optional.empty();
        }
        Stated high = fit.kAtHighFlow();
        return Optional.of(new Fit(
                high.k().pulsesPerM3(),
                high.standardShare() * high.k().pulsesPerM3(),
                fit.loss().m3PerSecond(),
                fit.lossStandardM3PerSecond(),
                fit.residualShares()));
    }

    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        FlowPoint widest = result.points().stream()
                .max(Comparator.comparingDouble(
                        point -> point.rangeShare() / point.gate().limitShare()))
                .orElseThrow();
        checks.add(new Check(
                "runs agree (repeatability gate)",
                result.gatePassed(),
                String.format(
                        Locale.ROOT,
                        "range at most %.2f %% of K, at %s; allowed %.2f %%",
                        100 * widest.rangeShare(),
                        widest.set().print(result.test().units()),
                        100 * widest.gate().limitShare())));
        SingleK single = result.single();
        checks.add(new Check(
                "one K over the range",
                single.acceptance() != SingleK.Acceptance.TABLE_NEEDED,
                String.format(
                        Locale.ROOT,
                        "%+.2f %% at %s, %s",
                        100 * single.worst().share(),
                        single.worst().flow().print(result.test().units()),
                        single.acceptance().words())));
        result.changeShare()
                .ifPresent(change -> checks.add(new Check(
                        "change since the previous K",
                        Math.abs(change) <= CHANGE_LIMIT,
                        String.format(Locale.ROOT, "%+.2f %%; allowed 1.5 %%, else explain", 100 * change))));
        checks.addAll(passes());
        findings(Finding.Kind.BEYOND_FLOWS, "tested over the whole range", checks);
        findings(Finding.Kind.NEAR_START, "lowest flow well above where the rotor starts", checks);
        findings(Finding.Kind.UNIT_MIX, "K in the right unit", checks);
        return checks;
    }

    private void findings(Finding.Kind kind, String rule, List<Check> checks) {
        result.findings().stream()
                .filter(finding -> finding.kind() == kind)
                .forEach(finding -> checks.add(new Check(rule, false, finding.sentence())));
    }

    /** What was left out, and which rule was overridden and why; both must stand on the paper. */
    List<String> deviations(Optional<String> override) {
        List<String> deviations = new ArrayList<>(sheet.deviations());
        for (RunResult run : result.runs()) {
            run.run()
                    .excludedBecause()
                    .ifPresent(why -> deviations.add(
                            "Run %d was left out: %s.".formatted(run.run().number(), why)));
        }
        if (override.isPresent()) {
            checks().stream()
                    .filter(check -> !check.holds())
                    .forEach(check -> deviations.add("The rule '%s' does not hold (%s). It was overridden by %s: %s."
                            .formatted(check.name(), check.words(), sheet.job().technician(), override.get())));
        }
        return deviations;
    }

    /** What the evaluation wants a reader to know, as the program's opinion. */
    List<String> opinions() {
        List<String> opinions = new ArrayList<>(sheet.opinions());
        Map<String, Finding> once = new LinkedHashMap<>();
        result.findings().stream()
                .filter(finding -> finding.kind() != Finding.Kind.RUN_LEFT_OUT)
                .forEach(finding -> once.put(finding.sentence(), finding));
        once.keySet().forEach(sentence -> opinions.add(capital(sentence) + "."));
        return opinions;
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    static KValue value(Stated stated) {
        return new KValue(
                stated.k().pulsesPerM3(), stated.standardShare(), stated.degreesOfFreedom(), stated.coverage());
    }
}
