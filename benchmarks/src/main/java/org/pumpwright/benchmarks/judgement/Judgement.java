package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.Limits;
import org.pumpwright.host.grade.PointReading;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.trace.Leg;

/**
 * What the program said of a run, beside what is true. The recording itself is not kept: there are thousands. Thread-safe.
 *
 * @param unit what it truly is
 * @param kelvins winding temperature while each of {@link Feature#JUDGED} was measured; empty unless all were
 * @param curve by which it was graded
 * @param verdict on it
 * @param readings of the judged features, in the order of {@link Feature#JUDGED}; empty unless all of them were read
 * @param causes the likeliest first
 * @param tied how many of them are said to be tied, the first one included; 1 without a tie
 * @param failedChecks names of the checks of the stand that did not hold
 * @param fullFlow flow at full duty as measured, m3/s; empty when the run did not come so far
 */
record Judgement(
        PumpParameters unit,
        List<Double> kelvins,
        HealthyCurve curve,
        Verdict verdict,
        List<Reading> readings,
        List<String> causes,
        int tied,
        List<String> failedChecks,
        Optional<Double> fullFlow) {
    /**
     * A measured feature.
     *
     * @param feature which
     * @param value as measured
     * @param u its stated standard uncertainty
     * @param limits at the measured effective volts
     */
    record Reading(Feature feature, double value, double u, Band limits) {
        double deviation() {
            return value / limits.centre() - 1;
        }

        /** Standard uncertainty as a share of the centre. */
        double share() {
            return u / limits.centre();
        }
    }

    private static final String TIED = "tied with ";
    private static final double SAME_DUTY = 1e-3;

    static Judgement of(TestStand stand, UnitRun run, HealthyCurve curve) {
        Grade grade = stand.grade(run, curve);
        List<String> failed = grade.standChecks().stream()
                .filter(check -> !check.ok())
                .map(StandCheck::name)
                .toList();
        return new Judgement(
                run.unit(),
                run.kelvins(Feature.JUDGED),
                curve,
                grade.verdict(),
                readings(grade),
                grade.causes().stream().map(Cause::name).toList(),
                (int) Math.max(
                        1,
                        grade.causes().stream()
                                .filter(cause -> cause.because().startsWith(TIED))
                                .count()),
                failed,
                fullFlow(run));
    }

    private static List<Reading> readings(Grade grade) {
        List<Reading> readings = new ArrayList<>();
        for (Feature feature : Feature.JUDGED) {
            grade.features().stream()
                    .filter(f -> f.judged() && f.feature().onTheWayUp())
                    .filter(f -> Math.abs(f.feature().duty().fraction() - feature.duty()) < SAME_DUTY)
                    .filter(f ->
                            feature.flow() == (f.feature().quantity() == org.pumpwright.host.grade.Feature.Kind.FLOW))
                    .map(f -> new Reading(
                            feature, f.measured().value(), f.measured().standardUncertainty(), band(f.limits())))
                    .findFirst()
                    .ifPresent(readings::add);
        }
        return readings.size() == Feature.JUDGED.size() ? readings : List.of();
    }

    private static Band band(Limits limits) {
        return new Band(limits.low(), limits.centre().orElseThrow(), limits.high());
    }

    private static Optional<Double> fullFlow(UnitRun run) {
        return PointReading.all(run.trace()).stream()
                .filter(point ->
                        point.mark().leg() == Leg.UP && point.mark().commanded().fraction() > 0.999)
                .map(point -> point.flow().value())
                .findFirst();
    }

    /** True values of the judged features at the temperatures of the run, less the centre, as a share of it. */
    double[] trueDeviations() {
        return readings.stream().mapToDouble(this::trueDeviation).toArray();
    }

    private double trueDeviation(Reading reading) {
        Feature.True is = is(reading);
        return is.value() / reading.feature().limits(curve, is.volts()).centre() - 1;
    }

    private Feature.True is(Reading reading) {
        Feature feature = reading.feature();
        return feature.trueOf(unit, kelvins.get(Feature.JUDGED.indexOf(feature)));
    }

    /**
     * How far outside its healthy range the worst judged feature truly lies, in its stated standard uncertainties; below 0 inside
     * all ranges. Not a number when features are missing.
     */
    double outside() {
        double worst = Double.NEGATIVE_INFINITY;
        for (Reading reading : readings) {
            Feature.True is = is(reading);
            Band limits = reading.feature().limits(curve, is.volts());
            worst = Math.max(worst, Math.max(limits.low() - is.value(), is.value() - limits.high()) / reading.u());
        }
        return readings.isEmpty() ? Double.NaN : worst;
    }

    /** Whether every reading lies inside its range, guards left aside. */
    boolean simplyInside() {
        return readings.stream()
                .allMatch(r ->
                        r.value() >= r.limits().low() && r.value() <= r.limits().high());
    }
}
