package org.pumpwright.benchmarks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.pumpwright.benchmarks.proto.ProtoSample;
import org.pumpwright.protocol.AnalogWindow;
import org.pumpwright.protocol.BoardClock;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.MeterCount;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.ShortSample;

/** The samples of one seeded test run in each of the forms that are decoded. Thread-safe. */
final class SampleRecording {
    /** So many samples, 20 s at 20 ms: more than fits the nearest caches of a processor. */
    static final int SAMPLES = 1000;

    private static final int PERIOD_TICKS = 40_000;
    private static final long MASK = 0xFFFF_FFFFL;

    private final List<Sample> samples = new ArrayList<>(SAMPLES);

    SampleRecording() {
        SplittableRandom random = new SplittableRandom(20_251);
        long time = BoardClock.START_TIME;
        long edges = MeterCount.START_COUNT;
        for (int number = 0; number < SAMPLES; number++) {
            time += PERIOD_TICKS;
            edges += random.nextInt(3, 6);
            MeterCount meter = new MeterCount(edges & MASK, (time - random.nextInt(9000)) & MASK);
            samples.add(new Sample(
                    time & MASK,
                    List.of(meter, MeterCount.START),
                    List.of(window(random, 45_219), window(random, 19_005), window(random, 6_554), AnalogWindow.NONE),
                    48,
                    List.of((long) Math.min(65_536, number * 131), 0L),
                    BoardState.ARMED,
                    Inputs.ofBits(31),
                    2));
        }
    }

    private static AnalogWindow window(SplittableRandom random, int level) {
        int mean = level + random.nextInt(-40, 41);
        return new AnalogWindow(mean, mean - random.nextInt(300), mean + random.nextInt(300));
    }

    /** Whole frames, one after the other, as the line brings them. */
    byte[] frames() {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int sequence = 0; sequence < SAMPLES; sequence++) {
            line.writeBytes(FrameEncoder.encode(samples.get(sequence), sequence));
        }
        return line.toByteArray();
    }

    /** Whole frames of short samples. */
    byte[] shortFrames() {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int sequence = 0; sequence < SAMPLES; sequence++) {
            line.writeBytes(FrameEncoder.encode(ShortSample.of(samples.get(sequence)), sequence));
        }
        return line.toByteArray();
    }

    /** Protocol Buffers messages, each behind its length, which is their usual framing; there is no check. */
    byte[] protocolBuffers() {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        try {
            for (Sample sample : samples) {
                asProto(sample).writeDelimitedTo(line);
            }
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return line.toByteArray();
    }

    private static ProtoSample asProto(Sample sample) {
        ProtoSample.Builder proto = ProtoSample.newBuilder()
                .setTime((int) sample.time())
                .setConversions(sample.conversions())
                .setState(sample.state().code())
                .setInputs(sample.inputs().bits())
                .setEvents(sample.events());
        for (MeterCount meter : sample.meters()) {
            proto.addMeters(
                    ProtoSample.Meter.newBuilder().setCount((int) meter.count()).setLastEdge((int) meter.lastEdge()));
        }
        for (AnalogWindow window : sample.analogs()) {
            proto.addAnalogs(ProtoSample.Window.newBuilder()
                    .setMean(window.mean())
                    .setMin(window.min())
                    .setMax(window.max()));
        }
        sample.applied().forEach(applied -> proto.addApplied(applied.intValue()));
        return proto.build();
    }
}
