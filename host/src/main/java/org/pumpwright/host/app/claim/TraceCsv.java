package org.pumpwright.host.app.claim;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** A run's samples as a table, as the board counted them. Thread-safe. */
final class TraceCsv {
    private TraceCsv() {}

    static String of(Trace trace) {
        StringBuilder csv = new StringBuilder(
                trace.samples().stream().findFirst().map(TraceCsv::head).orElse("board_ns\n"));
        trace.samples().forEach(sample -> csv.append(line(sample)));
        return csv.toString();
    }

    private static String head(Sample sample) {
        return "board_ns,armed,emergency_stop_closed,guard_closed"
                + numbered(sample.applied().size(), ",drive%d_duty")
                + numbered(sample.meters().size(), ",meter%1$d_edges,meter%1$d_last_edge_ns")
                + numbered(sample.analogs().size(), ",analog%1$d_mean,analog%1$d_min,analog%1$d_max")
                + "\n";
    }

    private static String numbered(int count, String pattern) {
        return IntStream.range(0, count).mapToObj(i -> pattern.formatted(i)).collect(Collectors.joining());
    }

    private static String line(Sample sample) {
        StringBuilder line = new StringBuilder(String.format(
                Locale.ROOT,
                "%d,%b,%b,%b",
                sample.boardNanos(),
                sample.armed(),
                sample.emergencyStopClosed(),
                sample.guardClosed()));
        sample.applied().forEach(duty -> line.append(',').append(duty.fraction()));
        sample.meters()
                .forEach(meter ->
                        line.append(',').append(meter.edges()).append(',').append(meter.lastEdgeNanos()));
        sample.analogs()
                .forEach(reading -> line.append(',')
                        .append(reading.mean())
                        .append(',')
                        .append(reading.min())
                        .append(',')
                        .append(reading.max()));
        return line.append('\n').toString();
    }
}
