package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.plan.Measure;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Settle;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.run.RunEvent.Phase;
import org.pumpwright.host.run.RunEvent.Where;
import org.pumpwright.host.signal.SettleDetector;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;

/** Carries one sweep out: each point is driven, settled, measured and marked. Confined to the run thread. */
final class Sweeping {
    /** How often, in samples, it is worth asking whether the flow is known well enough. */
    private static final int LOOK_EVERY = 5;

    private final Recorder recorder;
    private final Asking asking;
    private final Sweep sweep;
    private final double secondsAfter;
    private int visited;

    Sweeping(Recorder recorder, Asking asking, Sweep sweep, double secondsAfter) {
        this.recorder = recorder;
        this.asking = asking;
        this.sweep = sweep;
        this.secondsAfter = secondsAfter;
    }

    void carryOut() throws StandException, RunEnded {
        for (PlanPoint point : sweep.points()) {
            asking.pauseIfWanted();
            visit(point);
            visited++;
        }
    }

    private void visit(PlanPoint point) throws StandException, RunEnded {
        Sample before = recorder.last();
        recorder.drive(point.duty(), sweep.rampSeconds());
        boolean settled = settle(point, before.boardNanos());
        int measuredFrom = recorder.place();
        boolean enough = measure(point, measuredFrom);
        recorder.done(new PointMark(
                point.number(),
                point.leg(),
                point.duty(),
                before.boardNanos(),
                recorder.since(measuredFrom).get(0).boardNanos(),
                recorder.last().boardNanos(),
                settled,
                enough));
        recorder.tell(new RunEvent.PointDone(point, recorder.valuesSince(measuredFrom), settled, enough));
    }

    private boolean settle(PlanPoint point, long setNanos) throws StandException, RunEnded {
        Settle rule = sweep.settle();
        SettleDetector detector = new SettleDetector(rule.flowChangeShare());
        while (true) {
            Sample sample = recorder.next();
            MeterCount count = recorder.flowCount(sample);
            detector.addEdges(sample.boardNanos(), count.edges(), count.lastEdgeNanos());
            show(Phase.SETTLING, point);
            double seconds = (sample.boardNanos() - setNanos) / 1e9;
            boolean longEnough = seconds >= rule.leastSeconds() + sweep.rampSeconds();
            if (longEnough && detector.settled()) {
                return true;
            }
            if (seconds >= rule.giveUpSeconds() + sweep.rampSeconds()) {
                return false;
            }
        }
    }

    private boolean measure(PlanPoint point, int from) throws StandException, RunEnded {
        Measure rule = sweep.measure();
        Sample first = recorder.last();
        while (true) {
            Sample sample = recorder.next();
            show(Phase.MEASURING, point);
            double seconds = (sample.boardNanos() - first.boardNanos()) / 1e9;
            long pulses = recorder.flowCount(sample).edges()
                    - recorder.flowCount(first).edges();
            List<Sample> measured = recorder.since(from);
            boolean worthALook = seconds >= rule.leastSeconds()
                    && pulses >= rule.leastPulses()
                    && (rule.flowUncertaintyShare() >= 1 || measured.size() % LOOK_EVERY == 0);
            if (worthALook && FlowKnowledge.share(measured, recorder.flowMeter()) <= rule.flowUncertaintyShare()) {
                return true;
            }
            // A unit that gives no pulse at all will not give enough by waiting longer.
            if (seconds >= rule.mostSeconds() || (seconds >= rule.leastSeconds() && pulses == 0)) {
                return pulses >= rule.leastPulses();
            }
        }
    }

    private void show(Phase phase, PlanPoint point) {
        double left = (sweep.points().size() - visited) * sweep.leastSecondsEach() + secondsAfter;
        recorder.show(phase, new Where(sweep.name(), point.number(), point.leg(), point.duty()), left);
    }
}
