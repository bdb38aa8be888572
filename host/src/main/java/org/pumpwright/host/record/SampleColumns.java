package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.integer;
import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.object;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Samples as columns of integers, one column a quantity, true written as 1. Thread-safe. */
final class SampleColumns {
    private SampleColumns() {}

    /**
     * The columns.
     *
     * @throws UnfitRecordException when not every sample has as many meters, readings and drives as the first
     */
    static ObjectNode write(List<Sample> samples) {
        ObjectNode node = object().put("count", samples.size());
        node.set("board_ns", column(samples, Sample::boardNanos));
        node.set("armed", column(samples, s -> s.armed() ? 1 : 0));
        node.set("emergency_stop_closed", column(samples, s -> s.emergencyStopClosed() ? 1 : 0));
        node.set("guard_closed", column(samples, s -> s.guardClosed() ? 1 : 0));
        node.set("drives", channels(samples, "drives", Sample::applied, SampleColumns::drive));
        node.set("meters", channels(samples, "meters", Sample::meters, SampleColumns::meter));
        node.set("analogs", channels(samples, "analogue readings", Sample::analogs, SampleColumns::analog));
        return node;
    }

    static List<Sample> read(JsonPlace at) {
        int count = at.at("count").smallInteger();
        long[] boardNanos = column(at.at("board_ns"), count);
        boolean[] armed = flags(at.at("armed"), count);
        boolean[] emergencyStopClosed = flags(at.at("emergency_stop_closed"), count);
        boolean[] guardClosed = flags(at.at("guard_closed"), count);
        List<List<Duty>> drives = at.at("drives").list(d -> drive(d, count));
        List<List<MeterCount>> meters = at.at("meters").list(m -> meter(m, count));
        List<List<AnalogReading>> analogs = at.at("analogs").list(a -> analog(a, count));
        List<Sample> samples = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            samples.add(new Sample(
                    boardNanos[i],
                    row(meters, i),
                    row(analogs, i),
                    row(drives, i),
                    armed[i],
                    emergencyStopClosed[i],
                    guardClosed[i]));
        }
        return samples;
    }

    private static ObjectNode drive(List<Duty> duties) {
        ObjectNode node = object();
        node.set("applied_65536ths", column(duties, Duty::parts));
        return node;
    }

    private static List<Duty> drive(JsonPlace at, int count) {
        long[] parts = column(at.at("applied_65536ths"), count);
        return rows(count, i -> new Duty(small(parts[i])));
    }

    private static ObjectNode meter(List<MeterCount> counts) {
        ObjectNode node = object();
        node.set("edges", column(counts, MeterCount::edges));
        node.set("last_edge_ns", column(counts, MeterCount::lastEdgeNanos));
        return node;
    }

    private static List<MeterCount> meter(JsonPlace at, int count) {
        long[] edges = column(at.at("edges"), count);
        long[] lastEdge = column(at.at("last_edge_ns"), count);
        return rows(count, i -> new MeterCount(edges[i], lastEdge[i]));
    }

    private static ObjectNode analog(List<AnalogReading> readings) {
        ObjectNode node = object();
        node.set("mean_65536ths", column(readings, AnalogReading::mean));
        node.set("min_65536ths", column(readings, AnalogReading::min));
        node.set("max_65536ths", column(readings, AnalogReading::max));
        return node;
    }

    private static List<AnalogReading> analog(JsonPlace at, int count) {
        long[] mean = column(at.at("mean_65536ths"), count);
        long[] min = column(at.at("min_65536ths"), count);
        long[] max = column(at.at("max_65536ths"), count);
        return rows(count, i -> new AnalogReading(small(mean[i]), small(min[i]), small(max[i])));
    }

    private static <T> ArrayNode channels(
            List<Sample> samples, String what, Function<Sample, List<T>> of, Function<List<T>, ObjectNode> write) {
        int width = samples.isEmpty() ? 0 : of.apply(samples.get(0)).size();
        for (int i = 0; i < samples.size(); i++) {
            int found = of.apply(samples.get(i)).size();
            if (found != width) {
                throw new UnfitRecordException(
                        "sample %d has %d %s, the first has %d".formatted(i + 1, found, what, width));
            }
        }
        return list(
                IntStream.range(0, width).boxed().toList(),
                c -> write.apply(samples.stream().map(s -> of.apply(s).get(c)).toList()));
    }

    private static <T> ArrayNode column(List<T> rows, ToLongFunction<T> value) {
        return list(rows, row -> integer(value.applyAsLong(row)));
    }

    private static long[] column(JsonPlace at, int count) {
        List<Long> values = at.list(JsonPlace::integer);
        if (values.size() != count) {
            throw new UnfitRecordException("%s has %d entries, count is %d".formatted(at.way(), values.size(), count));
        }
        return values.stream().mapToLong(Long::longValue).toArray();
    }

    private static boolean[] flags(JsonPlace at, int count) {
        long[] column = column(at, count);
        boolean[] flags = new boolean[count];
        for (int i = 0; i < count; i++) {
            flags[i] = column[i] != 0;
        }
        return flags;
    }

    private static <T> List<T> rows(int count, IntFunction<T> row) {
        return IntStream.range(0, count).mapToObj(row).toList();
    }

    private static <T> List<T> row(List<List<T>> columns, int i) {
        return columns.stream().map(column -> column.get(i)).toList();
    }

    private static int small(long value) {
        if (value != (int) value) {
            throw new UnfitRecordException("a sample holds %d, too large".formatted(value));
        }
        return (int) value;
    }
}
