package org.pumpwright.host.app.bucket;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Journal;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Stretch;

/**
 * Watches one run of a guided bucket test, sample by sample: waits until the flow is steady, has the diverter swung in, counts until
 * there is enough, has it swung out, and ends the run. Pulses between the two moments are counted by the time stamps of their edges: what
 * lies between the last edge and the moment counts by the time since it. Confined to the run thread.
 */
final class DiverterSwing implements Journal {
    static final String DONE = "the diverter was swung out";

    private static final double STEADY_SECONDS = 4;
    private static final double STEADY_SHARE = 0.01;
    private static final double SILENT_SECONDS = 5;
    /** Fuller than this share the bucket is not let become. */
    private static final double FULL = 0.95;

    private static final double LIVE_SECONDS = 1;

    /** What a run is to catch. */
    record Target(double seconds, double pulses, double bucketM3) {}

    /** A moment of the diverter: the board's time and the count there, with its part between two edges. */
    record Moment(double seconds, double pulses) {}

    private enum Phase {
        STARTING,
        SWING_IN,
        CATCHING,
        SWING_OUT,
        OVER
    }

    private final MeterChannel meter;
    private final Target target;
    private final Operator person;
    private final StopButton stop;
    private final StopButton outer;
    private final TestWatcher watcher;
    private final Optional<AnalogChannel> thermometer;
    private final Deque<Sample> recent = new ArrayDeque<>();

    private Phase phase = Phase.STARTING;
    private @Nullable Moment in;
    private @Nullable Moment out;
    private double lastLive;
    private double firstDriven = -1;
    private double kelvinSum;
    private int kelvins;

    DiverterSwing(
            Channels channels, Target target, Operator person, StopButton stop, StopButton outer, TestWatcher watcher) {
        meter = channels.flowMeter();
        thermometer = channels.analog(ChannelRole.WATER_TEMPERATURE);
        this.target = target;
        this.person = person;
        this.stop = stop;
        this.outer = outer;
        this.watcher = watcher;
    }

    /** When it was swung in; empty when it never was. */
    Optional<Moment> in() {
        return Optional.ofNullable(in);
    }

    /** When it was swung out; empty when it never was. */
    Optional<Moment> out() {
        return Optional.ofNullable(out);
    }

    /** Mean temperature while it was caught; empty where the stand has no thermometer. */
    Optional<Double> celsius() {
        return kelvins == 0 ? Optional.empty() : Optional.of(kelvinSum / kelvins - 273.15);
    }

    @Override
    public void sample(Sample sample) {
        outer.pressed().ifPresent(stop::press);
        recent.addLast(sample);
        while (sample.boardSeconds() - recent.getFirst().boardSeconds() > STEADY_SECONDS) {
            recent.removeFirst();
        }
        boolean driven = sample.applied().stream().anyMatch(duty -> duty.parts() > 0);
        if (!driven) {
            return;
        }
        if (firstDriven < 0) {
            firstDriven = sample.boardSeconds();
        }
        switch (phase) {
            case STARTING -> waitForSteadyFlow(sample);
            case SWING_IN -> {
                if (person.answer().isPresent()) {
                    in = moment(sample);
                    phase = Phase.CATCHING;
                    watcher.says("Counting.");
                }
            }
            case CATCHING, SWING_OUT -> catching(sample);
            case OVER -> {}
        }
        stopWhenSilent(sample);
    }

    private void waitForSteadyFlow(Sample sample) {
        if (sample.boardSeconds() - firstDriven < STEADY_SECONDS + 1) {
            return;
        }
        double first = hertz(recent.getFirst(), middle());
        double second = hertz(middle(), sample);
        if (first > 0 && Math.abs(second / first - 1) < STEADY_SHARE) {
            phase = Phase.SWING_IN;
            person.ask(question("swing-in"));
            watcher.says("The flow is steady. Swing the diverter INTO the bucket and press Enter in that moment.");
        }
    }

    private Sample middle() {
        return recent.stream().skip(recent.size() / 2).findFirst().orElseThrow();
    }

    private void catching(Sample sample) {
        Moment begin = Objects.requireNonNull(in);
        Moment now = moment(sample);
        double seconds = now.seconds() - begin.seconds();
        double pulses = now.pulses() - begin.pulses();
        double m3 = seconds > 0.5 ? meter.flow(pulses / seconds).m3PerSecond() * seconds : 0;
        thermometer.ifPresent(channel -> {
            kelvinSum += channel.read(sample);
            kelvins++;
        });
        if (m3 > FULL * target.bucketM3()) {
            stop.press(String.format(
                    Locale.ROOT,
                    "the bucket would run over: %.1f L are in it by the meter, it holds %.1f L",
                    m3 * 1000,
                    target.bucketM3() * 1000));
            phase = Phase.OVER;
            return;
        }
        if (now.seconds() - lastLive > LIVE_SECONDS) {
            lastLive = now.seconds();
            watcher.live(seconds, pulses, m3);
        }
        if (phase == Phase.CATCHING && seconds >= target.seconds() && pulses >= target.pulses()) {
            phase = Phase.SWING_OUT;
            person.ask(question("swing-out"));
            watcher.says("Enough. Swing the diverter OUT of the bucket and press Enter in that moment.");
        }
        if (phase == Phase.SWING_OUT && person.answer().isPresent()) {
            out = moment(sample);
            phase = Phase.OVER;
            stop.press(DONE);
        }
    }

    private void stopWhenSilent(Sample sample) {
        double sinceEdge = (sample.boardNanos() - count(sample).lastEdgeNanos()) / 1e9;
        if (sample.boardSeconds() - firstDriven > SILENT_SECONDS && sinceEdge > SILENT_SECONDS) {
            stop.press(String.format(
                    Locale.ROOT,
                    "the meter has given no pulse for %.0f s: check its plug and supply, and that water flows",
                    SILENT_SECONDS));
        }
    }

    /** Count at the end of a window, with the part of a pulse that has passed since the last edge. */
    private Moment moment(Sample sample) {
        MeterCount count = count(sample);
        double hertz = hertz(recent.getFirst(), sample);
        double part = Math.min(0.999, Math.max(0, (sample.boardNanos() - count.lastEdgeNanos()) / 1e9 * hertz));
        return new Moment(sample.boardSeconds(), count.edges() + part);
    }

    private double hertz(Sample from, Sample to) {
        MeterCount first = count(from);
        MeterCount last = count(to);
        double seconds = (last.lastEdgeNanos() - first.lastEdgeNanos()) / 1e9;
        return seconds > 0 ? (last.edges() - first.edges()) / seconds : 0;
    }

    private MeterCount count(Sample sample) {
        return sample.meters().get(meter.index());
    }

    static Ask question(String name) {
        return new Ask(name, name, List.of(new Ask.Answer("enter", Optional.empty())), Map.of());
    }

    @Override
    public void point(PointMark point) {}

    @Override
    public void stretch(Stretch stretch) {}

    @Override
    public void answer(Answer answer) {}
}
