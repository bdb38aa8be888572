package org.pumpwright.host.cli;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.curve.LimitSet;
import org.pumpwright.host.curve.SpreadParts;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;

/** What a healthy curve says of itself, for a terminal of 80 columns. Thread-safe. */
final class CurvePage {
    private static final int NAME = 18;

    private final StringBuilder text = new StringBuilder();
    private final UnitSystem units;

    private CurvePage(UnitSystem units) {
        this.units = units;
    }

    static String of(HealthyCurve curve, UnitSystem units) {
        CurvePage page = new CurvePage(units);
        page.head(curve);
        page.table(curve);
        curve.limitSets().forEach(page::limitSet);
        return page.text.toString();
    }

    private void head(HealthyCurve curve) {
        line(WrappedText.of(curve.label() + ": " + curve.title(), 2));
        row(
                "belongs to",
                "model %s, driver %s at %.0f Hz, nozzle %s, %s"
                        .formatted(
                                curve.conditions().model(),
                                curve.conditions().driver(),
                                curve.conditions().pwmHz(),
                                curve.conditions().nozzle(),
                                curve.conditions().fluid()));
        row("units", curve.units() + (curve.simulated() ? " simulated, for practice only" : " known-good"));
        curve.basis().ifPresent(basis -> {
            row(
                    "runs",
                    "%d, %s to %s, plan %s".formatted(basis.runs(), basis.firstRun(), basis.lastRun(), basis.plan()));
            row("declared good by", basis.knownGoodBy());
        });
        row("limits", String.format(Locale.ROOT, "mean +- %.3f s: %s", curve.toleranceFactor(), curve.coverage()));
        row("made", curve.made() + " by " + curve.author());
        row("approved", curve.approval().map(a -> a.on() + " by " + a.by()).orElseGet(() -> unapproved(curve)));
        if (curve.fewUnits()) {
            row("PROVISIONAL", "fewer than %d units: advice only".formatted(HealthyCurve.LEAST_UNITS));
        }
    }

    private static String unapproved(HealthyCurve curve) {
        return curve.awaitsApproval() ? "NO: advice only until another person approves it" : "not recorded";
    }

    private void table(HealthyCurve curve) {
        boolean parts =
                curve.points().stream().anyMatch(point -> point.flowParts().isPresent());
        line("   volts  %9s  spread%s     amps  spread%s"
                .formatted(
                        units == UnitSystem.METRIC ? "L/min" : "gal/min",
                        parts ? "   unit    run" : "",
                        parts ? "   unit    run" : ""));
        for (CurvePoint point : curve.points()) {
            FlowRate flow = new FlowRate(point.flowM3PerSecond());
            double shown = units == UnitSystem.METRIC ? flow.litresPerMinute() : flow.gallonsPerMinute();
            line(String.format(
                    Locale.ROOT,
                    "%8.2f  %9.3f %s%s %8.2f %s%s",
                    point.effectiveVolts(),
                    shown,
                    percent(point.flowSpread()),
                    parts(point.flowParts()),
                    point.motorAmps(),
                    percent(point.motorAmpsSpread()),
                    parts(point.motorAmpsParts())));
        }
    }

    private static String parts(Optional<SpreadParts> parts) {
        return parts.map(p -> percent(p.unitSpread()) + percent(p.runSpread())).orElse("");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%6.2f%%", 100 * share);
    }

    private void limitSet(LimitSet set) {
        line(WrappedText.of(
                "Limits \"%s\", set by %s, from %s; guard %s u"
                        .formatted(set.name(), set.setBy(), set.source(), set.guardFactor()),
                2));
        for (LimitSet.Limit limit : set.limits()) {
            row(
                    limit.quantity().word(),
                    String.format(
                            Locale.ROOT,
                            "%s to %s at %.2f V",
                            limit.low().isPresent() ? print(limit, limit.low().getAsDouble()) : "open",
                            limit.high().isPresent() ? print(limit, limit.high().getAsDouble()) : "open",
                            limit.effectiveVolts()));
        }
    }

    private String print(LimitSet.Limit limit, double value) {
        return limit.quantity() == LimitSet.Quantity.FLOW
                ? new FlowRate(value).print(units)
                : String.format(Locale.ROOT, "%.2f A", value);
    }

    private void row(String name, String value) {
        line(WrappedText.of(name + " ".repeat(Math.max(1, NAME - name.length())) + value, NAME));
    }

    private void line(String line) {
        text.append(line).append(System.lineSeparator());
    }
}
