package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.ShortSample;
import org.pumpwright.protocol.Stream;

/** Samples: their rate, their kinds, and whether their fields make sense. Thread-safe. */
final class SampleChecks {
    private static final Duration QUIET = Duration.ofMillis(150);
    private static final int LOW_HALF = 0xFFFF;

    private SampleChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("samples come at the period asked for, and stop", "4.4", SampleChecks::rate),
                new Check("short samples tell the same as whole ones", "4.8", SampleChecks::shorts),
                new Check("the fields of a sample make sense", "4.7", SampleChecks::fields),
                new Check("the safe state does not stop the samples", "4.4", SampleChecks::surviveSafe));
    }

    private static String rate(Trial trial) throws Broken, StandException {
        List<String> seen = new ArrayList<>();
        for (int period : new int[] {10, 20, 100}) {
            trial.stream(period);
            trial.sample();
            List<Sample> samples = trial.samples(Duration.ofMillis(Math.max(300, 6L * period)));
            trial.demand(samples.size() >= 3, "%d samples with a period of %d ms", samples.size(), period);
            double median = medianMillis(trial, samples);
            trial.demand(
                    Math.abs(median - period) <= Math.max(1.1, 0.03 * period),
                    "period %d ms asked for; samples are %.2f ms apart by the board's time",
                    period,
                    median);
            seen.add(String.format(Locale.ROOT, "%d ms: %.2f ms", period, median));
        }
        trial.acknowledged(Stream.off());
        int mark = trial.talk().mark();
        trial.talk().listen(QUIET);
        trial.demand(
                trial.talk().since(mark).isEmpty(),
                "silence expected after period 0; %s",
                Say.of(trial.talk().since(mark)));
        return String.join(", ", seen) + "; silence after period 0";
    }

    private static double medianMillis(Trial trial, List<Sample> samples) {
        List<Double> apart = new ArrayList<>();
        for (int i = 1; i < samples.size(); i++) {
            apart.add(trial.millis(samples.get(i - 1).time(), samples.get(i).time()));
        }
        Collections.sort(apart);
        return apart.get(apart.size() / 2);
    }

    private static String shorts(Trial trial) throws Broken, StandException {
        trial.stream(20);
        Sample whole = trial.sample();
        trial.acknowledged(new Stream(20, SampleKind.SHORT));
        int mark = trial.talk().mark();
        trial.talk().listen(Duration.ofMillis(300));
        List<ShortSample> shorts = trial.all(ShortSample.class, mark);
        trial.demand(
                shorts.size() >= 10,
                "about 15 short samples expected; %s",
                Say.of(trial.talk().since(mark)));
        trial.demand(trial.all(Sample.class, mark).isEmpty(), "whole samples came among the short ones");
        ShortSample first = shorts.get(0);
        trial.demand(
                first.state() == whole.state() && first.inputs().equals(whole.inputs()),
                "state and inputs of the whole sample before expected (%s, %d); %s, %d came",
                Say.of(whole.state()),
                whole.inputs().bits(),
                Say.of(first.state()),
                first.inputs().bits());
        for (int meter = 0; meter < Sample.METERS; meter++) {
            long before = whole.meters().get(meter).count() & LOW_HALF;
            int now = first.meters().get(meter).count();
            trial.demand(
                    ((now - before) & LOW_HALF) < 1000,
                    "meter %d: low half of %d expected; %d came",
                    meter,
                    whole.meters().get(meter).count(),
                    now);
        }
        return shorts.size() + " short samples in 300 ms, with state, inputs and low halves of the counts";
    }

    private static String fields(Trial trial) throws Broken, StandException {
        int events = trial.talk().mark();
        boolean armed = armAndDrive(trial);
        trial.stream(20);
        trial.sample();
        List<Sample> samples = trial.samples(Duration.ofMillis(600));
        trial.demand(samples.size() > 10, "only %d samples in 600 ms", samples.size());
        Sample before = samples.get(0);
        for (Sample sample : samples.subList(1, samples.size())) {
            plausible(trial, sample);
            follows(trial, before, sample);
            before = sample;
        }
        List<Event> told = trial.all(Event.class, events);
        if (!told.isEmpty()) {
            int newest = told.get(told.size() - 1).number();
            trial.demand(before.events() == newest, "newest event %d; the sample says %d", newest, before.events());
        }
        return String.format(
                Locale.ROOT,
                "%d samples%s: times, counts, readings and drives fit together",
                samples.size(),
                armed ? " while driving" : "");
    }

    private static boolean armAndDrive(Trial trial) throws Broken, StandException {
        try {
            trial.arm();
            trial.drive(Trial.LOW_DUTY, 0);
            return true;
        } catch (NotPossible e) {
            return false;
        }
    }

    private static void plausible(Trial trial, Sample sample) throws Broken {
        trial.demand(sample.conversions() > 0, "no conversion in a window of 20 ms");
        for (int i = trial.board().channels().meters(); i < Sample.METERS; i++) {
            trial.demand(
                    sample.meters().get(i).equals(MeterCount.START),
                    "meter %d is missing, but counts %d",
                    i,
                    sample.meters().get(i).count());
        }
        for (int i = trial.board().channels().analogs(); i < Sample.ANALOGS; i++) {
            trial.demand(sample.analogs().get(i).equals(AnalogWindow.NONE), "channel %d is missing, but reads", i);
        }
        for (int i = trial.board().channels().drives(); i < Sample.DRIVES; i++) {
            trial.demand(sample.applied().get(i) == 0, "drive %d is missing, but driven", i);
        }
        for (MeterCount meter : sample.meters()) {
            trial.demand(
                    meter.count() != MeterCount.START_COUNT || meter.lastEdge() == 0,
                    "no edge yet, but a last edge at %d",
                    meter.lastEdge());
        }
    }

    private static void follows(Trial trial, Sample before, Sample sample) throws Broken {
        double millis = trial.signedMillis(before.time(), sample.time());
        trial.demand(millis > 0, "board time went from %d to %d", before.time(), sample.time());
        for (int i = 0; i < Sample.METERS; i++) {
            MeterCount was = before.meters().get(i);
            MeterCount now = sample.meters().get(i);
            boolean moved = was.count() != now.count();
            trial.demand(
                    moved == (was.lastEdge() != now.lastEdge()),
                    "meter %d: count %d to %d, but last edge %d to %d",
                    i,
                    was.count(),
                    now.count(),
                    was.lastEdge(),
                    now.lastEdge());
            trial.demand(
                    !moved || trial.signedMillis(now.lastEdge(), sample.time()) >= 0,
                    "meter %d: last edge %d lies after the sample's time %d",
                    i,
                    now.lastEdge(),
                    sample.time());
        }
    }

    private static String surviveSafe(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        trial.stream(20);
        trial.acknowledged(new MakeSafe());
        List<Sample> samples = trial.samples(Duration.ofMillis(300));
        trial.demand(samples.size() >= 8, "about 15 samples expected after make-safe; %d came", samples.size());
        Sample last = samples.get(samples.size() - 1);
        trial.demand(last.state() == BoardState.SAFE, "state safe expected; %s", Say.of(last));
        return samples.size() + " samples in the 300 ms after make-safe";
    }
}
