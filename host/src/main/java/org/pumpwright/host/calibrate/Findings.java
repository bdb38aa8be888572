package org.pumpwright.host.calibrate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.pumpwright.host.calibrate.Finding.Kind;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;

/** What a reader of a result must know, in sentences. */
final class Findings {
    private static final double FALLEN = -0.01;
    private static final double CHANGED = 0.015;
    private static final double NEAR_START = 2;
    /** A flow that was set by hand may miss the end of the range by this share. */
    private static final double NEAR_TESTED = 0.05;

    private static final double LEAST_PULSES = 1000;
    private static final double LEAST_FLYING_SECONDS = 30;
    private static final double LEAST_STANDING_SECONDS = 180;
    private static final double COARSE_SCALE = 0.001;

    private final BucketResult result;
    private final List<Finding> findings = new ArrayList<>();

    private Findings(BucketResult result) {
        this.result = result;
    }

    static List<Finding> of(BucketResult result) {
        Findings findings = new Findings(result);
        findings.leftOut();
        result.points().forEach(findings::scatter);
        result.points().forEach(findings::length);
        result.passes().forEach(findings::pass);
        findings.curve();
        findings.fallOff();
        findings.beyond();
        findings.start();
        findings.single();
        findings.expected();
        return findings.findings;
    }

    private void leftOut() {
        for (RunResult run : result.runs()) {
            run.run()
                    .excludedBecause()
                    .ifPresent(reason -> add(
                            Kind.RUN_LEFT_OUT,
                            "run %d was left out: %s",
                            run.run().number(),
                            reason));
        }
    }

    private void scatter(FlowPoint point) {
        if (!point.gate().passed()) {
            add(
                    Kind.GATE_FAILED,
                    "at %s the %d runs lie %.2f %% apart, allowed is %.2f %%",
                    flow(point.set()),
                    point.runs().size(),
                    100 * point.rangeShare(),
                    100 * point.gate().limitShare());
        }
        point.outlier()
                .ifPresent(outlier -> add(
                        Kind.OUTLIER_QUESTION,
                        "run %d at %s lies %.2f standard deviations off, more than %.2f (Grubbs, 5 %%): was anything wrong with it?"
                                + " It counts unless a reason is written down",
                        outlier.run().run().number(),
                        flow(point.set()),
                        outlier.statistic(),
                        outlier.critical()));
    }

    private void length(FlowPoint point) {
        Start start = result.test().bench().timing().start();
        double least = start == Start.FLYING ? LEAST_FLYING_SECONDS : LEAST_STANDING_SECONDS;
        if (point.meanSeconds() < least) {
            add(
                    Kind.SHORT_RUN,
                    "runs at %s take %.0f s, with %s at least %.0f s are needed",
                    flow(point.set()),
                    point.meanSeconds(),
                    start.words(),
                    least);
        }
        double pulses = Means.of(point.runs(), run -> run.run().pulses()).mean();
        if (pulses < LEAST_PULSES) {
            add(
                    Kind.FEW_PULSES,
                    "runs at %s have %.0f pulses, better are %.0f or more",
                    flow(point.set()),
                    pulses,
                    LEAST_PULSES);
        }
        double scale = Math.hypot(
                Math.hypot(
                        point.budget().change(Effect.SCALE_CERTIFICATE),
                        point.budget().change(Effect.SCALE_LINEARITY)),
                Math.hypot(
                        point.budget().change(Effect.SCALE_RESOLUTION),
                        point.budget().change(Effect.SCALE_DRIFT)));
        if (scale > COARSE_SCALE) {
            add(
                    Kind.COARSE_SCALE,
                    "at %s the scale alone makes K uncertain by %.2f %% (standard): catch more, or take a finer scale",
                    flow(point.set()),
                    100 * scale);
        }
    }

    private void pass(PassComparison pass) {
        if (pass.shows()) {
            boolean back = pass.leg() == Leg.BACK;
            add(
                    back ? Kind.HYSTERESIS : Kind.FIRST_FLOW_MOVED,
                    "at %s K is %+.2f %% %s, more than the %.2f %% that chance explains",
                    flow(pass.set()),
                    100 * pass.differenceShare(),
                    back ? "on the way back" : "when repeated at the end",
                    100 * pass.chanceShare());
        }
    }

    private void curve() {
        FittedK fit = result.fit();
        if (!fit.fits()) {
            add(
                    Kind.NOT_FITTED,
                    "K = K_inf (1 - b/Q) does not describe the points (chi-squared %.1f with %d degrees of freedom, by chance"
                            + " %.2f %%): the table with straight lines between the flows is used instead",
                    fit.chiSquared(),
                    fit.degreesOfFreedom(),
                    100 * fit.chance());
        }
    }

    private void fallOff() {
        FlowPoint lowest = result.points().get(0);
        double off = lowest.k().pulsesPerM3() / result.single().k().pulsesPerM3() - 1;
        if (off < FALLEN) {
            add(
                    Kind.FALLS_OFF,
                    "K falls off at low flow: at %s it is %.1f %% below the single K%s",
                    flow(lowest.set()),
                    -100 * off,
                    leastGood());
        }
    }

    /** From where on the law stays within 1 % of the single K: {@code Q = b / (1 - 0.99 K / K_inf)}. */
    private String leastGood() {
        if (!(result.curve() instanceof FittedK fit)) {
            return "";
        }
        double share = 1
                - (1 + FALLEN)
                        * result.single().k().pulsesPerM3()
                        / fit.kAtHighFlow().k().pulsesPerM3();
        double least = fit.loss().m3PerSecond() / share;
        return share > 0 && least > 0 ? "; from " + flow(new FlowRate(least)) + " up it is within 1 %" : "";
    }

    /** Beyond the flows that were tested nothing speaks for the formula or the table. */
    private void beyond() {
        FlowRate least = result.points().get(0).flow();
        FlowRate most = result.points().get(result.points().size() - 1).flow();
        FlowRange tested = new FlowRange(least, most);
        Declared declared = result.test().declared();
        Stream.concat(
                        Stream.of(declared.range().least(), declared.range().most()),
                        declared.working().stream().map(WorkingFlow::flow))
                .filter(flow -> !tested.holds(flow, NEAR_TESTED))
                .mapToDouble(FlowRate::m3PerSecond)
                .distinct()
                .sorted()
                .forEach(flow -> add(
                        Kind.BEYOND_FLOWS,
                        "%s was not tested, the flows were %s to %s: test there too, or declare a shorter range",
                        flow(new FlowRate(flow)),
                        flow(least),
                        flow(most)));
    }

    private void start() {
        Declared declared = result.test().declared();
        declared.startFlow()
                .filter(start -> declared.range().least().m3PerSecond() < NEAR_START * start.m3PerSecond())
                .ifPresent(start -> add(
                        Kind.NEAR_START,
                        "the range begins at %s, less than twice the %s at which the rotor starts",
                        flow(declared.range().least()),
                        flow(start)));
    }

    private void single() {
        SingleK single = result.single();
        if (single.acceptance() != SingleK.Acceptance.WITHIN_ONE_PERCENT) {
            add(
                    Kind.RANGE_TOO_WIDE,
                    "one K is off by %+.1f %% at %s: %s",
                    100 * single.worst().share(),
                    flow(single.worst().flow()),
                    single.acceptance().words());
        }
    }

    private void expected() {
        Declared declared = result.test().declared();
        declared.previous().ifPresent(k -> compare("the previous K", k));
        declared.nominal().ifPresent(k -> compare("the nominal K", k));
        result.changeShare()
                .filter(change -> Math.abs(change) > CHANGED)
                .ifPresent(change -> add(
                        Kind.CHANGED,
                        "K has changed by %+.1f %% since the previous test, more than 1.5 %%: explain it",
                        100 * change));
    }

    private void compare(String what, KFactor expected) {
        double k = result.single().k().pulsesPerM3();
        UnitMix.between(k, expected.pulsesPerM3())
                .ifPresent(mix -> add(
                        Kind.UNIT_MIX,
                        "K is %.3f times %s, the ratio of %s: one of the two is in another unit",
                        k / expected.pulsesPerM3(),
                        what,
                        mix.words()));
    }

    private String flow(FlowRate flow) {
        return flow.print(result.test().units());
    }

    private void add(Kind kind, String format, Object... values) {
        findings.add(new Finding(kind, String.format(Locale.ROOT, format, values)));
    }
}
