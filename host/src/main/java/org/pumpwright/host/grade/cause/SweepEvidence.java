package org.pumpwright.host.grade.cause;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseHealth;
import org.pumpwright.host.trace.Leg;

/** What the points of a sweep tell. Thread-safe. */
final class SweepEvidence {
    /** Less flow or current than this share of a healthy unit's is as good as none. */
    private static final double LEAST_SHARE = 0.1;

    /** How far beyond the ends of a curve a point may lie, as a share of the end's effective volts. */
    private static final double BEYOND_TOP = 0.08;

    private static final double BEYOND_BOTTOM = 0.02;

    /** Below this many times its uncertainty a pressure says nothing of the nozzle. */
    private static final double SURE = 20;

    /** Less current than this tells nothing of the supply's lead, A. */
    private static final double LEAST_AMPS = 2;

    /** Scatter of the current below this may be the stand's own sensor and tells nothing of the unit. */
    private static final double SENSOR_NOISE_AMPS = 0.1;

    /** Flow that falls off the curve by less than this share may be chance; 3 % (assumed). */
    private static final double KNEE = 0.03;

    private static final int LEAST_FOR_KNEE = 4;

    private final CauseInput input;
    private final List<SweptPoint> up;

    SweepEvidence(CauseInput input) {
        this.input = input;
        up = input.points().stream().filter(point -> point.leg() == Leg.UP).toList();
    }

    void into(Map<String, Observation> all) {
        if (up.isEmpty()) {
            return;
        }
        up.forEach(point -> againstHealthy(all, point));
        knee(all);
        waysApart(all);
        nozzle(all);
        supply(all);
        evenness(all);
    }

    private void againstHealthy(Map<String, Observation> all, SweptPoint point) {
        Optional<HealthyCurve> curve = input.curve();
        if (curve.isEmpty()) {
            put(all, "flow", point, Observation.figure(flow(point), point.flow().standardUncertainty(), 1e-5));
            put(all, "amps", point, amps(point.supplyAmps(), 0.1));
            return;
        }
        double volts = point.effectiveVolts(curve.get().freewheelVolts());
        if (inRange(curve.get(), volts)) {
            CurvePoint healthy = curve.get().at(volts);
            put(all, "flow", point, ratio(point.flow(), healthy.flowM3PerSecond()));
            put(all, "amps", point, ratio(point.motorAmps(), healthy.motorAmps()));
        }
    }

    private static double flow(SweptPoint point) {
        return point.flow().value();
    }

    private static Observation amps(Uncertain amps, double scale) {
        return Observation.figure(amps.value(), amps.standardUncertainty(), scale);
    }

    private static Observation ratio(Uncertain measured, double healthy) {
        return Observation.ratio(measured.value() / healthy, measured.standardUncertainty() / healthy, LEAST_SHARE);
    }

    private static boolean inRange(HealthyCurve curve, double volts) {
        double bottom = curve.points().get(0).effectiveVolts();
        double top = curve.points().get(curve.points().size() - 1).effectiveVolts();
        return volts >= bottom * (1 - BEYOND_BOTTOM) && volts <= top * (1 + BEYOND_TOP);
    }

    private void knee(Map<String, Observation> all) {
        List<Double> flows = up.stream()
                .map(point -> all.get("flow@" + percent(point.percent())))
                .filter(Objects::nonNull)
                .map(Observation::value)
                .toList();
        if (input.curve().isPresent()) {
            knee(flows).ifPresent(fallen -> all.put("knee", new Observation(fallen, 0)));
        }
    }

    /**
     * By how much flow falls off the healthy curve from one set point of the upper half to the next, where it fell or rose by
     * less than half of that before.
     *
     * @param flows logarithms of the ratio to the curve, from the lowest set point to the highest
     */
    static Optional<Double> knee(List<Double> flows) {
        for (int i = Math.max(2, flows.size() / 2); i < flows.size() && flows.size() >= LEAST_FOR_KNEE; i++) {
            double before = Math.abs(flows.get(i - 2) - flows.get(i - 1));
            double fallen = flows.get(i - 1) - flows.get(i);
            if (fallen > KNEE && fallen > 2 * before) {
                return Optional.of(fallen);
            }
        }
        return Optional.empty();
    }

    /** How much more flow comes on the way down, and how current and flow of the first point have moved. */
    private void waysApart(Map<String, Observation> all) {
        double full = up.stream().mapToDouble(SweepEvidence::flow).max().orElseThrow();
        for (SweptPoint point : up) {
            at(Leg.DOWN, point.percent())
                    .filter(down -> full > 0)
                    .ifPresent(down ->
                            put(all, "gap", point, Observation.figure((flow(down) - flow(point)) / full, 0.002, 0.02)));
        }
        SweptPoint first = up.get(0);
        at(Leg.REPEAT, first.percent())
                .filter(again -> first.supplyAmps().value() > 0.1)
                .ifPresent(again -> {
                    double ratio =
                            again.supplyAmps().value() / first.supplyAmps().value();
                    all.put("amps again", Observation.ratio(ratio, 0.005, LEAST_SHARE));
                });
    }

    private Optional<SweptPoint> at(Leg leg, double percent) {
        return input.points().stream()
                .filter(point -> point.leg() == leg && Math.abs(point.percent() - percent) < 0.01)
                .findFirst();
    }

    private void nozzle(Map<String, Observation> all) {
        up.stream()
                .filter(point -> point.pressure().filter(SweepEvidence::sure).isPresent())
                .max(Comparator.comparingDouble(
                        point -> point.pressure().orElseThrow().value()))
                .ifPresent(point -> {
                    Uncertain pressure = point.pressure().orElseThrow();
                    double passes = flow(point) / Math.sqrt(pressure.value());
                    double ratio = passes / input.nozzleM3PerSecondPerRootPascal();
                    double u = Math.hypot(point.flow().relative(), pressure.relative() / 2);
                    all.put("nozzle", Observation.ratio(ratio, ratio * u, LEAST_SHARE));
                });
    }

    private static boolean sure(Uncertain pressure) {
        return pressure.value() > SURE * pressure.standardUncertainty();
    }

    private void supply(Map<String, Observation> all) {
        if (input.restVolts().isEmpty()) {
            return;
        }
        double rest = input.restVolts().getAsDouble();
        all.put("volts at rest", new Observation(rest / input.supplyVolts() - 1, 0.001));
        SweptPoint most = up.stream()
                .max(Comparator.comparingDouble(point -> point.supplyAmps().value()))
                .orElseThrow();
        if (most.supplyAmps().value() > LEAST_AMPS) {
            double ohms =
                    (rest - most.voltsAtPins().value()) / most.supplyAmps().value();
            all.put("lead", Observation.figure(ohms, 0.002, 0.02));
        }
    }

    private void evenness(Map<String, Observation> all) {
        List<SweptPoint> flowing = up.stream()
                .filter(point -> point.pulses().intervals() >= PulseHealth.LEAST_INTERVALS)
                .toList();
        flowing.stream()
                .mapToDouble(p -> p.pulses().variation())
                .average()
                .ifPresent(mean -> all.put("pulse variation", Observation.ratio(mean, 0, 0.002)));
        flowing.stream()
                .mapToDouble(p -> p.pulses().lagOne())
                .average()
                .ifPresent(mean -> all.put("pulse lag one", new Observation(mean, 0)));
        int half = up.size() / 2;
        unevenAmps(all, "amps uneven, low", up.subList(0, half));
        unevenAmps(all, "amps uneven, high", up.subList(half, up.size()));
    }

    /** The current's own scatter, A over A: averaged, so that a plan with other set points can be held against it. */
    private static void unevenAmps(Map<String, Observation> all, String key, List<SweptPoint> points) {
        points.stream()
                .filter(point -> point.supplyAmps().value() > LEAST_SHARE)
                .mapToDouble(point -> point.ampsVariation() * point.supplyAmps().value())
                .average()
                .ifPresent(mean -> all.put(key, Observation.ratio(mean, 0, SENSOR_NOISE_AMPS)));
    }

    private static void put(Map<String, Observation> all, String name, SweptPoint point, Observation observation) {
        all.put(String.format(Locale.ROOT, "%s@%s", name, percent(point.percent())), observation);
    }

    private static String percent(double percent) {
        return Math.abs(percent - Math.rint(percent)) < 0.05
                ? String.format(Locale.ROOT, "%.0f", percent)
                : String.format(Locale.ROOT, "%.1f", percent);
    }
}
