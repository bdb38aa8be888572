package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.StopRules;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.signal.SettleDetector;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Trace;

/** Takes a simulated unit through a plan, with a 10-bit converter and nothing between plant and trace but this class. */
final class PlantRun {
    private static final double SAMPLE_SECONDS = 0.02;
    private static final long SAMPLE_NANOS = 20_000_000;
    private static final double REST_SECONDS = 0.5;

    private final Plant plant;
    private final Sweep sweep;
    private final StopRules stop;
    private final Channels channels;
    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> marks = new ArrayList<>();
    private long nanos = 1_000_000_000;
    private MeterCount count = new MeterCount(0, 0);
    private double duty;
    private double overAmpsSeconds;

    private PlantRun(Plant plant, Plan plan, Channels channels) {
        this.plant = plant;
        sweep = (Sweep) plan.steps().get(0);
        stop = plan.stop();
        this.channels = channels;
    }

    record Outcome(Trace trace, Ending ending) {}

    static Outcome of(Plant plant, Plan plan, Channels channels) {
        PlantRun run = new PlantRun(plant, plan, channels);
        Ending ending = run.carryOut();
        return new Outcome(new Trace(channels, run.samples, run.marks), ending);
    }

    private Ending carryOut() {
        for (double t = 0; t < REST_SECONDS; t += SAMPLE_SECONDS) {
            sample(0);
        }
        for (PlanPoint point : sweep.points()) {
            if (!visit(point)) {
                return new Ending(Ending.Kind.UNIT_OUT_OF_BOUNDS, "the unit drew more than 28 A for 0.2 s");
            }
        }
        return Bench.COMPLETED;
    }

    private boolean visit(PlanPoint point) {
        long set = nanos;
        SettleDetector detector = new SettleDetector(sweep.settle().flowChangeShare());
        boolean settled = false;
        while (!settled && nanos - set < 1e9 * (sweep.settle().giveUpSeconds() + sweep.rampSeconds())) {
            if (!sample(point.duty().fraction())) {
                return false;
            }
            detector.addEdges(nanos, count.edges(), count.lastEdgeNanos());
            settled = detector.settled() && nanos - set >= 1e9 * (sweep.settle().leastSeconds() + sweep.rampSeconds());
        }
        long from = nanos;
        long edges = count.edges();
        while (nanos - from < 1e9 * sweep.measure().leastSeconds()
                || count.edges() - edges < sweep.measure().leastPulses()
                        && count.edges() > edges
                        && nanos - from < 1e9 * sweep.measure().mostSeconds()) {
            if (!sample(point.duty().fraction())) {
                return false;
            }
        }
        boolean enough = count.edges() - edges >= sweep.measure().leastPulses();
        marks.add(new PointMark(point.number(), point.leg(), point.duty(), set, from, nanos, settled, enough));
        return true;
    }

    /** One sample of the board; false once the stop rule for current has tripped. */
    private boolean sample(double commanded) {
        double most = SAMPLE_SECONDS / sweep.rampSeconds();
        duty += Math.max(-most, Math.min(most, commanded - duty));
        PlantReading reading = plant.step(SAMPLE_SECONDS, new double[] {duty}, true);
        for (double offset : reading.edgeOffsetsSeconds()[0]) {
            long ticks = Math.round(offset / 0.5e-6);
            count = new MeterCount(count.edges() + 1, nanos + ticks * 500);
        }
        nanos += SAMPLE_NANOS;
        List<AnalogReading> analogs = new ArrayList<>(List.of(zero(), zero(), zero(), zero()));
        channels.analogs().forEach(channel -> analogs.set(channel.index(), read(channel, reading)));
        int parts = (int) Math.round(duty * Duty.FULL_PARTS);
        samples.add(new Sample(nanos, List.of(count), analogs, List.of(new Duty(parts)), true, true, true));
        overAmpsSeconds = reading.amps() > stop.supplyAmpsAbove() ? overAmpsSeconds + SAMPLE_SECONDS : 0;
        return overAmpsSeconds < stop.forSeconds();
    }

    private static AnalogReading zero() {
        return new AnalogReading(0, 0, 0);
    }

    private static AnalogReading read(AnalogChannel channel, PlantReading reading) {
        double si = switch (channel.role()) {
            case VOLTS_AT_PINS -> reading.voltsAtPins();
            case SUPPLY_AMPS -> reading.amps();
            case OUTLET_PRESSURE -> reading.pressurePa();
            case WATER_TEMPERATURE -> reading.waterTemperatureKelvin();
        };
        int code = channel.code(si) / 64 * 64;
        return new AnalogReading(code, code, code);
    }
}
