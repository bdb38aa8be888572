package org.pumpwright.host.curve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.pumpwright.host.quantity.FlowRate;

/**
 * Writes a healthy curve as YAML. The same curve always gives the same text, and a text that is read gives the same text
 * again. Thread-safe.
 */
final class CurveText {
    /** Six digits: well below the uncertainty of any stand, and short enough to read. */
    private static final MathContext DIGITS = new MathContext(6);

    private final StringBuilder text = new StringBuilder();

    private CurveText() {}

    static String of(HealthyCurve curve) {
        CurveText writer = new CurveText();
        writer.head(curve);
        writer.conditions(curve.conditions());
        writer.population(curve);
        curve.points().forEach(writer::point);
        return writer.text.toString();
    }

    private void head(HealthyCurve curve) {
        line("# Healthy curve: mean and spread of known-good units over effective volts.");
        line("# Written by a program; a new version is a new file with a higher version number.");
        if (curve.simulated()) {
            line("# The units behind it are simulated: all numbers are invented, for practice only.");
        }
        line("curve: " + quoted(curve.id()));
        line("version: " + curve.version());
        line("title: " + quoted(curve.title()));
        line("origin: " + (curve.simulated() ? "simulated" : "measured"));
    }

    private void conditions(Conditions conditions) {
        line("conditions:");
        line("  model: " + quoted(conditions.model()));
        line("  driver: " + quoted(conditions.driver()));
        line("  pwm_hz: " + number(conditions.pwmHz()));
        line("  nozzle: " + quoted(conditions.nozzle()));
        line("  fluid: " + quoted(conditions.fluid()));
    }

    private void population(HealthyCurve curve) {
        line("units: " + curve.units());
        line("tolerance_factor: " + number(curve.toleranceFactor()));
        line("coverage: " + quoted(curve.coverage()));
        line("freewheel_volts: " + number(curve.freewheelVolts()));
        line("author: " + quoted(curve.author()));
        line("made: " + quoted(curve.made()));
        extras(curve);
        line("points:");
    }

    private void point(CurvePoint point) {
        line("  - effective_volts: " + number(point.effectiveVolts()));
        line("    flow_gpm: " + number(new FlowRate(point.flowM3PerSecond()).gallonsPerMinute()));
        line("    flow_spread_percent: " + number(point.flowSpread() * 100));
        line("    motor_amps: " + number(point.motorAmps()));
        line("    motor_amps_spread_percent: " + number(point.motorAmpsSpread() * 100));
        point.flowParts().ifPresent(parts -> parts("flow", parts));
        point.motorAmpsParts().ifPresent(parts -> parts("motor_amps", parts));
    }

    private void parts(String quantity, SpreadParts parts) {
        line("    %s_parts:".formatted(quantity));
        line("      unit_percent: " + number(parts.unitSpread() * 100));
        line("      run_percent: " + number(parts.runSpread() * 100));
        line("      mean_uncertainty_percent: " + number(parts.meanUncertainty() * 100));
        line("      degrees_of_freedom: " + number(parts.degreesOfFreedom()));
        line("      own_tolerance_factor: " + number(parts.toleranceFactor()));
    }

    private void extras(HealthyCurve curve) {
        if (curve.interpolation() != Interpolation.LINEAR) {
            line("interpolation: " + curve.interpolation().word());
        }
        curve.basis().ifPresent(this::basis);
        curve.approval().ifPresent(approval -> {
            line("approval:");
            line("  by: " + quoted(approval.by()));
            line("  on: " + quoted(approval.on().toString()));
        });
        if (!curve.limitSets().isEmpty()) {
            line("limit_sets:");
            curve.limitSets().forEach(this::limitSet);
        }
    }

    private void basis(Basis basis) {
        line("basis:");
        line("  plan: " + quoted(basis.plan()));
        line("  runs: " + basis.runs());
        line("  first_run: " + quoted(basis.firstRun().toString()));
        line("  last_run: " + quoted(basis.lastRun().toString()));
        line("  known_good_by: " + quoted(basis.knownGoodBy()));
        line("  joint_features: " + basis.jointFeatures());
        if (!basis.runIds().isEmpty()) {
            line("  run_ids:");
            basis.runIds().forEach(id -> line("    - " + quoted(id)));
        }
    }

    private void limitSet(LimitSet set) {
        line("  - name: " + quoted(set.name()));
        line("    source: " + quoted(set.source()));
        line("    set_by: " + quoted(set.setBy()));
        line("    guard_factor: " + number(set.guardFactor()));
        line("    limits:");
        set.limits().forEach(this::limit);
    }

    private void limit(LimitSet.Limit limit) {
        boolean flow = limit.quantity() == LimitSet.Quantity.FLOW;
        line("      - quantity: " + limit.quantity().word());
        line("        effective_volts: " + number(limit.effectiveVolts()));
        limit.low().ifPresent(low -> line("        low_" + end(low, flow)));
        limit.high().ifPresent(high -> line("        high_" + end(high, flow)));
    }

    private static String end(double value, boolean flow) {
        return flow ? "gpm: " + number(new FlowRate(value).gallonsPerMinute()) : "amps: " + number(value);
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    private static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }

    /** Text in double quotes; what cannot be seen on paper is written as its code point. */
    private static String quoted(String value) {
        StringBuilder out = new StringBuilder("\"");
        value.codePoints().forEach(c -> out.append(escaped(c)));
        return out.append('"').toString();
    }

    private static String escaped(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> String.format(Locale.ROOT, "\\U%08x", codePoint);
            default -> (codePoint == '"' || codePoint == '\\' ? "\\" : "") + Character.toString(codePoint);
        };
    }
}
