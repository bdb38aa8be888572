package org.pumpwright.host.record;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * A trace in few bytes, to the last count equal to the one that was measured. After eight letters that name the format and its
 * version come the length and the CRC-32 of what follows, all big-endian; then, deflated (RFC 1950): the length of a JSON text,
 * that text (what each channel means, its calibration and certificate, points, stretches, answers), and the samples as columns.
 *
 * <p>The columns: number of samples, of drives, of meters, of analogue readings; then time, armed, emergency stop, guard, each
 * drive's duty, each meter's edges and last edge, each reading's mean, least and most. A column is the differences from one
 * sample to the next, folded so that small ones of either sign have few bits, as many bytes each as the largest needs, all
 * highest bytes first: see {@link BlobColumn}. Thread-safe.
 */
public final class TraceBlob {
    private static final byte[] MAGIC = "PWTRACE1".getBytes(StandardCharsets.US_ASCII);
    private static final int NAME_BYTES = MAGIC.length - 1;
    private static final int HEAD_BYTES = MAGIC.length + 2 * Integer.BYTES;
    /** Ten hours of samples at 50 a second, with every channel that a board has, need less. */
    private static final int LARGEST_INFLATED = 200_000_000;

    private static final int MOST_SAMPLES = 5_000_000;
    private static final int MOST_CHANNELS = 16;
    private static final String REMEDY = " Take the copy from the backup.";
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private TraceBlob() {}

    /**
     * The bytes of a trace.
     *
     * @throws IllegalArgumentException when not every sample has as many meters, readings and drives as the first
     */
    public static byte[] of(Trace trace) {
        try {
            byte[] plain = plain(trace);
            byte[] packed = Deflated.pack(plain);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            DataOutputStream out = new DataOutputStream(bytes);
            out.write(MAGIC);
            out.writeInt(plain.length);
            out.writeInt(crc(packed, 0));
            out.write(packed);
            return bytes.toByteArray();
        } catch (UnfitRecordException e) {
            throw new IllegalArgumentException("the trace cannot be kept: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not refuse bytes", e);
        }
    }

    /**
     * The trace of these bytes.
     *
     * @throws IllegalArgumentException when they are no trace, of a later version, or damaged; the message says which, and
     *     what to do
     */
    public static Trace read(byte[] blob) {
        int length = checkedLength(blob);
        try (DataInputStream in = new DataInputStream(Deflated.unpack(blob, HEAD_BYTES, length))) {
            byte[] json = new byte[bounded("length of the text", in.readInt(), length)];
            in.readFully(json);
            List<Sample> samples = SampleBlob.read(in, MOST_SAMPLES, MOST_CHANNELS);
            if (in.read() >= 0) {
                throw damaged("has more in it than its samples");
            }
            return TraceJson.read(JsonPlace.root(JSON.readTree(json)), samples);
        } catch (IOException | JacksonException | UnfitRecordException e) {
            throw new IllegalArgumentException("the trace is damaged: %s.%s".formatted(e.getMessage(), REMEDY), e);
        }
    }

    private static byte[] plain(Trace trace) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        byte[] json = JSON.writeValueAsBytes(TraceJson.writeAllButTheSamples(trace));
        out.writeInt(json.length);
        out.write(json);
        SampleBlob.write(trace.samples(), out);
        return bytes.toByteArray();
    }

    private static int checkedLength(byte[] blob) {
        if (blob.length < HEAD_BYTES || !begins(blob, NAME_BYTES)) {
            throw new IllegalArgumentException("this is no trace: it does not begin with "
                    + new String(MAGIC, StandardCharsets.US_ASCII) + ". Give the attachment of a run.");
        }
        if (!begins(blob, MAGIC.length)) {
            throw new IllegalArgumentException(
                    "the trace is of version %c, this program reads version 1. Use the version of Pumpwright that wrote it, or a newer one."
                            .formatted((char) blob[NAME_BYTES]));
        }
        DataInputStream head = new DataInputStream(new ByteArrayInputStream(blob, MAGIC.length, 2 * Integer.BYTES));
        try {
            int length = bounded("length", head.readInt(), LARGEST_INFLATED);
            if (head.readInt() != crc(blob, HEAD_BYTES)) {
                throw damaged("its checksum does not hold");
            }
            return length;
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not refuse bytes", e);
        }
    }

    private static boolean begins(byte[] blob, int bytes) {
        return Arrays.equals(blob, 0, bytes, MAGIC, 0, bytes);
    }

    static int bounded(String what, int value, int most) {
        if (value < 0 || value > most) {
            throw damaged("%s is %d, 0 to %d can be".formatted(what, value, most));
        }
        return value;
    }

    private static IllegalArgumentException damaged(String why) {
        return new IllegalArgumentException("the trace is damaged: %s.%s".formatted(why, REMEDY));
    }

    private static int crc(byte[] bytes, int from) {
        CRC32 crc = new CRC32();
        crc.update(bytes, from, bytes.length - from);
        return (int) crc.getValue();
    }
}
