package org.pumpwright.benchmarks;

import com.google.protobuf.CodedInputStream;
import com.google.protobuf.ExtensionRegistryLite;
import com.google.protobuf.Parser;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.pumpwright.benchmarks.proto.ProtoSample;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.line.DropCause;
import org.pumpwright.protocol.line.FrameSink;
import org.pumpwright.protocol.line.LineReceiver;

/**
 * Decodes the same samples in each form; one operation is one sample. Frames come in pieces of 512 bytes, as from a
 * port. Each way counts what it decoded and fails when something is missing. Confined to the measuring thread.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(SampleRecording.SAMPLES)
public class DecodeBenchmark {
    private static final int PIECE_LENGTH = 512;

    private final byte[] frames;
    private final byte[] shortFrames;
    private final byte[] protocolBuffers;
    private final Parser<ProtoSample> protoParser = ProtoSample.parser();
    private final CountingSink sink = new CountingSink();
    private final LineReceiver line = LineReceiver.atFrameBoundary(sink);
    private final FrameDecoder decoder = FrameDecoder.synchronised(this::heard);
    private @Nullable Blackhole blackhole;
    private int messages;

    /** Makes the recording. */
    public DecodeBenchmark() {
        SampleRecording recording = new SampleRecording();
        frames = recording.frames();
        shortFrames = recording.shortFrames();
        protocolBuffers = recording.protocolBuffers();
    }

    /** Frame and check alone: stuffing undone, CRC compared, plain bytes handed over. */
    @Benchmark
    public int framesAndCheck() {
        sink.frames = 0;
        for (int at = 0; at < frames.length; at += PIECE_LENGTH) {
            line.receive(frames, at, Math.min(PIECE_LENGTH, frames.length - at));
        }
        return whole(sink.frames);
    }

    /** Frames, check and the typed message, its ranges enforced. */
    @Benchmark
    public int samples(Blackhole taken) {
        return messages(frames, taken);
    }

    /** The same for short samples. */
    @Benchmark
    public int shortSamples(Blackhole taken) {
        return messages(shortFrames, taken);
    }

    /** Protocol Buffers: generated message, parsed from an array; no check of the bytes, no ranges. */
    @Benchmark
    public int protocolBuffers(Blackhole taken) throws IOException {
        int count = 0;
        for (int at = 0; at < protocolBuffers.length; count++) {
            // Each message of the recording is shorter than 128 bytes, so its length is one byte.
            int length = protocolBuffers[at++];
            taken.consume(protoParser.parseFrom(protocolBuffers, at, length));
            at += length;
        }
        return whole(count);
    }

    /** Protocol Buffers through its own stream class over the whole recording. */
    @Benchmark
    public int protocolBuffersStream(Blackhole taken) throws IOException {
        CodedInputStream in = CodedInputStream.newInstance(protocolBuffers);
        int count = 0;
        while (!in.isAtEnd()) {
            int before = in.pushLimit(in.readRawVarint32());
            taken.consume(protoParser.parseFrom(in, ExtensionRegistryLite.getEmptyRegistry()));
            in.popLimit(before);
            count++;
        }
        return whole(count);
    }

    private int messages(byte[] recording, Blackhole taken) {
        blackhole = taken;
        messages = 0;
        for (int at = 0; at < recording.length; at += PIECE_LENGTH) {
            decoder.receive(recording, at, Math.min(PIECE_LENGTH, recording.length - at));
        }
        return whole(messages);
    }

    private void heard(Received received) {
        if (received instanceof Received.Good good && blackhole != null) {
            messages++;
            blackhole.consume(good.message());
        }
    }

    private static int whole(int count) {
        if (count != SampleRecording.SAMPLES) {
            throw new IllegalStateException(count + " of " + SampleRecording.SAMPLES + " samples decoded");
        }
        return count;
    }

    private static final class CountingSink implements FrameSink {
        private int frames;

        @Override
        public void frame(byte[] plain, int length) {
            frames++;
        }

        @Override
        public void dropped(DropCause cause) {
            throw new IllegalStateException("dropped: " + cause);
        }
    }
}
