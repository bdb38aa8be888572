package org.pumpwright.host.grade.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Ramp;
import org.pumpwright.host.plan.Step;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/** Takes any plant through the steps of a plan, with a 10-bit converter, and tells what its steps read. */
final class StepRun {
    static final double PWM_HZ = 7812.5;
    static final double FREEWHEEL_VOLTS = 0.5;
    private static final double SAMPLE_SECONDS = 0.02;
    private static final long SAMPLE_NANOS = 20_000_000;
    private static final double REST_SECONDS = 1.5;
    private static final double SETTLE_SECONDS = 3;
    private static final int CONVERTER_STEP = 64;

    private final Plant plant;
    private final Plan plan;
    private final Channels channels;
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> marks = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private final MeterCount[] counts = {new MeterCount(0, 0), new MeterCount(0, 0)};
    private long nanos = 1_000_000_000;
    private double duty;

    private StepRun(Plant plant, Plan plan, Channels channels) {
        this.plant = plant;
        this.plan = plan;
        this.channels = channels;
    }

    /** A plan of these steps that judges nothing. */
    static Plan plan(UnitKind kind, Step... steps) {
        Plan.Wiring wiring = kind == UnitKind.HYDRAULIC_PUMP ? new Plan.Wiring(1, 0) : Plan.Wiring.PUMP;
        return new Plan(
                "steps", 1, "Steps", kind, false, wiring, List.of(steps), List.of(), new StopRules(40, 1, 0, 1e7, 1e5));
    }

    static Trace trace(Plant plant, Plan plan, Channels channels) {
        StepRun run = new StepRun(plant, plan, channels);
        run.carryOut();
        return new Trace(channels, run.samples, run.marks, run.stretches, run.answers);
    }

    static List<Finding> findings(Plant plant, Plan plan, Channels channels) {
        return findings(trace(plant, plan, channels), plan);
    }

    static List<Finding> findings(Trace trace, Plan plan) {
        return findings(trace, plan, PWM_HZ);
    }

    static List<Finding> findings(Trace trace, Plan plan, double pwmHz) {
        return Findings.of(new FindingInput(trace, plan, pwmHz, OptionalDouble.of(FREEWHEEL_VOLTS), UnitSystem.US));
    }

    private void carryOut() {
        long from = nanos;
        wait(REST_SECONDS, 0, 0.5);
        stretches.add(new Stretch("rest", Stretch.Kind.REST, from, nanos));
        for (Step step : plan.steps()) {
            if (step instanceof Sweep sweep) {
                sweep.points().forEach(point -> visit(sweep, point));
            } else if (step instanceof Ramp ramp) {
                ramp(ramp);
            } else if (step instanceof Hold hold) {
                hold(hold);
            } else if (step instanceof Ask ask) {
                ask.simulated().forEach(plant::adjust);
                answers.add(new Answer(
                        ask.name(), ask.question(), ask.answers().get(0).word(), nanos));
                duty = 0;
            }
        }
    }

    private void visit(Sweep sweep, PlanPoint point) {
        long set = nanos;
        wait(SETTLE_SECONDS, point.duty().fraction(), sweep.rampSeconds());
        long from = nanos;
        wait(sweep.measure().leastSeconds(), point.duty().fraction(), sweep.rampSeconds());
        marks.add(new PointMark(point.number(), point.leg(), point.duty(), set, from, nanos, true, true));
    }

    private void hold(Hold hold) {
        for (int time = 0; time < hold.times(); time++) {
            long from = nanos;
            wait(hold.seconds(), hold.duty().fraction(), hold.rampSeconds());
            stretches.add(new Stretch(hold.name(), Stretch.Kind.HOLD, from, nanos));
            wait(hold.restSeconds(), 0, hold.rampSeconds());
        }
    }

    private void ramp(Ramp ramp) {
        wait(1, ramp.from().fraction(), 0.5);
        double swing = 100 / ramp.percentPerSecond();
        double seconds = (ramp.to().percent() - ramp.from().percent()) / ramp.percentPerSecond();
        long from = nanos;
        wait(seconds, ramp.to().fraction(), swing);
        stretches.add(new Stretch(ramp.name(), Stretch.Kind.RAMP_UP, from, nanos));
        if (ramp.back()) {
            long back = nanos;
            wait(seconds, ramp.from().fraction(), swing);
            stretches.add(new Stretch(ramp.name(), Stretch.Kind.RAMP_DOWN, back, nanos));
        }
        wait(1, 0, 0.5);
    }

    private void wait(double seconds, double commanded, double fullSwingSeconds) {
        for (long i = Math.round(seconds / SAMPLE_SECONDS); i > 0; i--) {
            sample(commanded, fullSwingSeconds);
        }
    }

    private void sample(double commanded, double fullSwingSeconds) {
        double most = SAMPLE_SECONDS / fullSwingSeconds;
        duty += Math.max(-most, Math.min(most, commanded - duty));
        int drive = plan.wiring().drive();
        PlantReading reading =
                plant.step(SAMPLE_SECONDS, drive == 0 ? new double[] {duty, 0} : new double[] {0, duty}, true);
        for (int meter = 0; meter < reading.edgeOffsetsSeconds().length && meter < counts.length; meter++) {
            for (double offset : reading.edgeOffsetsSeconds()[meter]) {
                counts[meter] = new MeterCount(counts[meter].edges() + 1, nanos + Math.round(offset / 0.5e-6) * 500);
            }
        }
        nanos += SAMPLE_NANOS;
        List<AnalogReading> analogs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            analogs.add(new AnalogReading(0, 0, 0));
        }
        channels.analogs().forEach(channel -> analogs.set(channel.index(), read(channel, reading)));
        Duty now = new Duty((int) Math.round(duty * Duty.FULL_PARTS));
        samples.add(new Sample(
                nanos,
                List.of(counts[0], counts[1]),
                analogs,
                drive == 0 ? List.of(now, Duty.ZERO) : List.of(Duty.ZERO, now),
                true,
                true,
                true));
    }

    private static AnalogReading read(AnalogChannel channel, PlantReading reading) {
        double si = switch (channel.role()) {
            case VOLTS_AT_PINS -> reading.voltsAtPins();
            case SUPPLY_AMPS -> reading.amps();
            case OUTLET_PRESSURE -> reading.pressurePa();
            case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
        };
        int code = Math.round(channel.code(si) / (float) CONVERTER_STEP) * CONVERTER_STEP;
        return new AnalogReading(code, code, code);
    }
}
