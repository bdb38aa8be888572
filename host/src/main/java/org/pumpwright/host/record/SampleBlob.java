package org.pumpwright.host.record;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;

/** Samples as columns of a {@link TraceBlob}. Thread-safe. */
final class SampleBlob {
    private SampleBlob() {}

    /**
     * Writes the columns.
     *
     * @throws UnfitRecordException when not every sample has as many meters, readings and drives as the first
     */
    static void write(List<Sample> samples, DataOutputStream out) throws IOException {
        int drives = width(samples, "drives", Sample::applied);
        int meters = width(samples, "meters", Sample::meters);
        int analogs = width(samples, "analogue readings", Sample::analogs);
        out.writeInt(samples.size());
        out.writeInt(drives);
        out.writeInt(meters);
        out.writeInt(analogs);
        column(samples, Sample::boardNanos, out);
        column(samples, sample -> flag(sample.armed()), out);
        column(samples, sample -> flag(sample.emergencyStopClosed()), out);
        column(samples, sample -> flag(sample.guardClosed()), out);
        for (int drive = 0; drive < drives; drive++) {
            int at = drive;
            column(samples, sample -> sample.applied().get(at).parts(), out);
        }
        for (int meter = 0; meter < meters; meter++) {
            int at = meter;
            column(samples, sample -> sample.meters().get(at).edges(), out);
            column(samples, sample -> sample.meters().get(at).lastEdgeNanos(), out);
        }
        for (int analog = 0; analog < analogs; analog++) {
            int at = analog;
            column(samples, sample -> sample.analogs().get(at).mean(), out);
            column(samples, sample -> sample.analogs().get(at).min(), out);
            column(samples, sample -> sample.analogs().get(at).max(), out);
        }
    }

    /** Reads them again. */
    static List<Sample> read(DataInputStream in, int mostSamples, int mostChannels) throws IOException {
        int count = TraceBlob.bounded("number of samples", in.readInt(), mostSamples);
        int drives = TraceBlob.bounded("number of drives", in.readInt(), mostChannels);
        int meters = TraceBlob.bounded("number of meters", in.readInt(), mostChannels);
        int analogs = TraceBlob.bounded("number of analogue channels", in.readInt(), mostChannels);
        long[] boardNanos = BlobColumn.read(count, in);
        long[] armed = BlobColumn.read(count, in);
        long[] emergencyStopClosed = BlobColumn.read(count, in);
        long[] guardClosed = BlobColumn.read(count, in);
        List<long[]> duties = columns(drives, count, in);
        List<long[]> counts = columns(2 * meters, count, in);
        List<long[]> readings = columns(3 * analogs, count, in);
        List<Sample> samples = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            samples.add(new Sample(
                    boardNanos[i],
                    meterCounts(counts, i),
                    readings(readings, i),
                    duties(duties, i),
                    armed[i] != 0,
                    emergencyStopClosed[i] != 0,
                    guardClosed[i] != 0));
        }
        return samples;
    }

    private static List<Duty> duties(List<long[]> columns, int i) {
        List<Duty> duties = new ArrayList<>(columns.size());
        for (long[] column : columns) {
            duties.add(new Duty(small(column[i])));
        }
        return duties;
    }

    private static List<MeterCount> meterCounts(List<long[]> columns, int i) {
        List<MeterCount> counts = new ArrayList<>(columns.size() / 2);
        for (int c = 0; c < columns.size(); c += 2) {
            counts.add(new MeterCount(columns.get(c)[i], columns.get(c + 1)[i]));
        }
        return counts;
    }

    private static List<AnalogReading> readings(List<long[]> columns, int i) {
        List<AnalogReading> readings = new ArrayList<>(columns.size() / 3);
        for (int c = 0; c < columns.size(); c += 3) {
            readings.add(new AnalogReading(
                    small(columns.get(c)[i]), small(columns.get(c + 1)[i]), small(columns.get(c + 2)[i])));
        }
        return readings;
    }

    private static List<long[]> columns(int columns, int count, DataInputStream in) throws IOException {
        List<long[]> read = new ArrayList<>(columns);
        for (int c = 0; c < columns; c++) {
            read.add(BlobColumn.read(count, in));
        }
        return read;
    }

    private static void column(List<Sample> samples, ToLongFunction<Sample> value, DataOutputStream out)
            throws IOException {
        BlobColumn.write(samples.stream().mapToLong(value).toArray(), out);
    }

    private static <T> int width(List<Sample> samples, String what, Function<Sample, List<T>> of) {
        int width = samples.isEmpty() ? 0 : of.apply(samples.get(0)).size();
        for (int i = 0; i < samples.size(); i++) {
            int found = of.apply(samples.get(i)).size();
            if (found != width) {
                throw new UnfitRecordException(
                        "sample %d has %d %s, the first has %d".formatted(i + 1, found, what, width));
            }
        }
        return width;
    }

    private static long flag(boolean value) {
        return value ? 1 : 0;
    }

    private static int small(long value) {
        if (value != (int) value) {
            throw new UnfitRecordException("a sample holds %d, too large".formatted(value));
        }
        return (int) value;
    }
}
