package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.Conditions;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Measure;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Settle;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Trace;

/** The stand, plan and conditions that the grading tests share. */
final class Bench {
    static final double SUPPLY_VOLTS = 13.8;
    static final double FREEWHEEL_VOLTS = 0.5;
    static final double NOZZLE = FlowRate.ofGallonsPerMinute(0.60).m3PerSecond() / Math.sqrt(Pressure.PASCALS_PER_PSI);
    static final Conditions CONDITIONS = new Conditions("demo-pump", "shop-7k8", 7812, "n-0.60", "water");
    static final StandExpectations STAND = new StandExpectations(SUPPLY_VOLTS, NOZZLE);
    static final Ending COMPLETED = new Ending(Ending.Kind.COMPLETED, "every step of the plan was carried out");
    static final List<Integer> DUTY_PERCENT = List.of(20, 30, 50, 75, 100);

    private Bench() {}

    static Channels channels() {
        return new Channels(List.of(meter()), List.of(volts(), amps(), pressure()));
    }

    static Channels channelsWithoutPressure() {
        return new Channels(List.of(meter()), List.of(volts(), amps()));
    }

    private static MeterChannel meter() {
        return new MeterChannel(
                0,
                KCurve.constant(KFactor.ofPulsesPerUsGallon(3000)),
                0.005,
                FlowRate.ofGallonsPerMinute(0.2),
                Certificate.undated("none: simulated"));
    }

    private static AnalogChannel volts() {
        return AnalogChannel.straight(ChannelRole.VOLTS_AT_PINS, 0, 0, 20, 0.001, 0.010, "none: simulated");
    }

    private static AnalogChannel amps() {
        return AnalogChannel.straight(ChannelRole.SUPPLY_AMPS, 1, 0, 40, 0.005, 0.03, "none: simulated");
    }

    private static AnalogChannel pressure() {
        double psi = Pressure.PASCALS_PER_PSI;
        return AnalogChannel.straight(
                ChannelRole.OUTLET_PRESSURE, 2, -18.75 * psi, 187.5 * psi, 0, 0.75 * psi, "none: simulated");
    }

    /** The quick sweep: up, down, the first point again; 30, 50 and 100 % are judged. */
    static Plan plan() {
        List<PlanPoint> points = new ArrayList<>();
        DUTY_PERCENT.forEach(d -> points.add(new PlanPoint(points.size() + 1, Leg.UP, Duty.ofPercent(d))));
        for (int i = DUTY_PERCENT.size() - 2; i > 0; i--) {
            points.add(new PlanPoint(points.size() + 1, Leg.DOWN, Duty.ofPercent(DUTY_PERCENT.get(i))));
        }
        points.add(new PlanPoint(points.size() + 1, Leg.REPEAT, Duty.ofPercent(DUTY_PERCENT.get(0))));
        Sweep sweep = new Sweep("sweep", points, 0.5, new Settle(2, 10, 0.005), new Measure(5, 200, 1, 20));
        return new Plan(
                "quick-12v-pump",
                1,
                "Quick acceptance sweep for a 12 V pump",
                UnitKind.PUMP_12V,
                false,
                Plan.Wiring.PUMP,
                List.of(sweep),
                Stream.of(30, 50, 100).map(Duty::ofPercent).toList(),
                new StopRules(28, 0.2, 9, 120 * Pressure.PASCALS_PER_PSI, 300));
    }

    static GradingInput input(Trace trace, HealthyCurve curve) {
        return input(trace, COMPLETED, Optional.of(curve));
    }

    static GradingInput input(Trace trace, Ending ending, Optional<HealthyCurve> curve) {
        return new GradingInput(trace, ending, plan(), curve, CONDITIONS, STAND, UnitSystem.US);
    }
}
