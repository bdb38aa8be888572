package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.ui.work.SweepView.Dot;
import org.pumpwright.host.ui.work.SweepView.Healthy;
import org.pumpwright.host.ui.work.SweepView.Lies;
import org.pumpwright.host.ui.work.SweepView.Spot;

/** Puts the picture of a sweep together while it is made. JavaFX thread only. */
final class SweepSketch {
    private static final int BAND_POINTS = 60;

    /** The error bar is this many standard uncertainties (JCGM 100, 6.2.1), about 95 % coverage. */
    private static final double COVERAGE_FACTOR = 2;

    private final List<Healthy> band = new ArrayList<>();
    private final List<Dot> dots = new ArrayList<>();
    private List<Duty> judged = List.of();
    private @Nullable HealthyCurve curve;
    private Optional<Spot> now = Optional.empty();

    void begin(Plan plan, Optional<HealthyCurve> against) {
        band.clear();
        dots.clear();
        now = Optional.empty();
        judged = plan.judged();
        curve = against.orElse(null);
        against.ifPresent(this::sampleBand);
    }

    private void sampleBand(HealthyCurve healthy) {
        List<CurvePoint> points = healthy.points();
        double first = points.get(0).effectiveVolts();
        double last = points.get(points.size() - 1).effectiveVolts();
        for (int i = 0; i <= BAND_POINTS; i++) {
            double volts = first + (last - first) * i / BAND_POINTS;
            Band flow = healthy.flow(volts);
            band.add(new Healthy(volts, flow.low(), flow.centre(), flow.high()));
        }
    }

    void live(Duty duty, LiveValues values) {
        now = duty.equals(Duty.ZERO) ? Optional.empty() : Optional.of(spot(duty, values));
    }

    void rest() {
        now = Optional.empty();
    }

    void done(PlanPoint point, LiveValues mean) {
        Spot spot = spot(point.duty(), mean);
        double share = mean.flowUncertainty();
        double half = share < 1 ? COVERAGE_FACTOR * share * spot.flow() : 0;
        boolean counts = point.leg() == Leg.UP && judged.contains(point.duty());
        dots.add(new Dot(spot, half, point.leg(), counts ? lies(spot, half) : Lies.INSIDE));
    }

    private Lies lies(Spot spot, double half) {
        HealthyCurve healthy = curve;
        if (healthy == null) {
            return Lies.INSIDE;
        }
        Band flow = healthy.flow(spot.volts());
        if (spot.flow() + half < flow.low()) {
            return Lies.BELOW;
        }
        if (spot.flow() - half > flow.high()) {
            return Lies.ABOVE;
        }
        return spot.flow() - half < flow.low() || spot.flow() + half > flow.high() ? Lies.NEAR : Lies.INSIDE;
    }

    private Spot spot(Duty duty, LiveValues values) {
        double freewheel = curve == null ? 0 : curve.freewheelVolts();
        double volts = duty.fraction() * values.voltsAtPins() - (1 - duty.fraction()) * freewheel;
        return new Spot(volts, values.flow().m3PerSecond());
    }

    SweepView view() {
        return new SweepView(band, dots, now);
    }
}
