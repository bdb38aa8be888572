package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.calibrate.fluid.Buoyancy;
import org.pumpwright.host.calibrate.fluid.Liquid;

/** Puts the budget of the mean K at one flow together (JCGM 100, 4.2 and 4.3). */
final class BudgetAssembly {
    private static final double ROOT_6 = Math.sqrt(6);

    private final Bench bench;
    private final List<RunResult> runs;
    private final List<BudgetTerm> terms = new ArrayList<>();

    private BudgetAssembly(Bench bench, List<RunResult> runs) {
        this.bench = bench;
        this.runs = runs;
    }

    /**
     * The budget of the mean K.
     *
     * @param runs that count, two or more
     */
    static FlowBudget of(BucketTest test, List<RunResult> runs) {
        BudgetAssembly budget = new BudgetAssembly(test.bench(), runs);
        Method method = test.bench().method();
        if (method instanceof Weighing weighing) {
            budget.weighing(weighing, test.liquid().orElseThrow());
        } else if (method instanceof Measuring vessel) {
            budget.measuring(vessel);
        } else if (method instanceof Comparing master) {
            budget.comparing(master);
        }
        budget.common();
        return new FlowBudget(budget.terms);
    }

    private void weighing(Weighing weighing, Liquid liquid) {
        Scale scale = weighing.scale();
        double net = mean(run -> run.weighed().orElseThrow().netKg());
        double density = mean(run -> run.weighed().orElseThrow().liquidKgPerM3());
        double air = weighing.air().kgPerM3();
        standard(
                Effect.SCALE_CERTIFICATE,
                -scale.expandedKg() / scale.coverage() / net,
                basis("U = %.3g g, k = %.3g, in %.0f g", scale.expandedKg() * 1000, scale.coverage(), net * 1000));
        halfWidth(Effect.SCALE_LINEARITY, -scale.linearityKg() / net, grams(scale.linearityKg()));
        standard(
                Effect.SCALE_RESOLUTION,
                -scale.resolutionKg() / ROOT_6 / net,
                basis("step %.3g g, tare and gross", scale.resolutionKg() * 1000));
        halfWidth(Effect.SCALE_DRIFT, -scale.driftKg() / net, grams(scale.driftKg()));
        halfWidth(Effect.SPLASH, -weighing.splashKg() / net, grams(weighing.splashKg()));
        double kelvin = bench.thermometer().halfWidthKelvin();
        halfWidth(
                Effect.TEMPERATURE,
                liquid.kgPerM3PerKelvin(mean(run -> run.run().liquidCelsius())) * kelvin / density,
                basis("±%.3g K", kelvin));
        halfWidth(
                Effect.LIQUID_DENSITY,
                liquid.halfWidthKgPerM3() / density,
                basis("±%.3g kg/m3 in %.2f kg/m3", liquid.halfWidthKgPerM3(), density));
        halfWidth(
                Effect.BUOYANCY,
                -weighing.airHalfWidthKgPerM3() * (1 / (density - air) - 1 / (Buoyancy.WEIGHTS_KG_PER_M3 - air)),
                basis("air %.3f ± %.3g kg/m3", air, weighing.airHalfWidthKgPerM3()));
    }

    private void measuring(Measuring vessel) {
        double m3 = mean(run -> run.volume().m3());
        standard(
                Effect.VESSEL_MARKS,
                -vessel.marksShare() / vessel.coverage(),
                basis("U = %.3g %%, k = %.3g", 100 * vessel.marksShare(), vessel.coverage()));
        halfWidth(Effect.LEVEL, -vessel.levelM3() / m3, millilitres(vessel.levelM3()));
        halfWidth(Effect.RESIDUE, -vessel.residueM3() / m3, millilitres(vessel.residueM3()));
        double kelvin = bench.thermometer().halfWidthKelvin();
        halfWidth(Effect.VESSEL_TEMPERATURE, -vessel.expansionPerKelvin() * kelvin, basis("±%.3g K", kelvin));
    }

    private void comparing(Comparing master) {
        standard(
                Effect.MASTER_CERTIFICATE,
                master.expandedShare() / master.coverage(),
                basis("U = %.3g %%, k = %.3g", 100 * master.expandedShare(), master.coverage()));
        halfWidth(Effect.MASTER_DRIFT, master.driftShare(), basis("±%.3g %%", 100 * master.driftShare()));
        double counted = mean(run -> ((Reading.MasterPulses) run.run().reading()).pulses());
        standard(Effect.MASTER_PULSE, -1 / ROOT_6 / counted, basis("one in %.0f", counted));
    }

    private void common() {
        double m3 = mean(run -> run.volume().m3());
        double seconds = mean(run -> run.run().seconds());
        double pulses = mean(run -> run.run().pulses());
        Means k = Means.of(runs, run -> run.k().pulsesPerM3());
        halfWidth(Effect.LINE_VOLUME, -bench.lineHalfWidthM3() / m3, millilitres(bench.lineHalfWidthM3()));
        double half = bench.timing().switchHalfWidthSeconds();
        halfWidth(
                Effect.SWITCHING,
                Math.sqrt(2) * half / seconds,
                basis("±%.3g ms twice in %.1f s", half * 1000, seconds));
        standard(
                Effect.PULSE,
                bench.pulseStep() / ROOT_6 / pulses,
                basis("±%.3g in %.0f pulses", bench.pulseStep(), pulses));
        terms.add(new BudgetTerm(
                Effect.REPEATABILITY,
                k.deviation() / k.mean() / Math.sqrt(k.count()),
                k.count() - 1.0,
                basis("s = %.3f %% of %d runs", 100 * k.deviation() / k.mean(), k.count())));
    }

    private double mean(ToDoubleFunction<RunResult> what) {
        return Means.of(runs, what).mean();
    }

    private void standard(Effect effect, double change, String basis) {
        terms.add(BudgetTerm.standard(effect, change, basis));
    }

    private void halfWidth(Effect effect, double change, String basis) {
        terms.add(BudgetTerm.halfWidth(effect, change, basis));
    }

    private static String grams(double kg) {
        return basis("±%.3g g", kg * 1000);
    }

    private static String millilitres(double m3) {
        return basis("±%.3g mL", m3 * 1e6);
    }

    private static String basis(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
