package org.pumpwright.host.record.exchange;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/**
 * A trace as a table, one line a sample: raw counts and readings as the board sent them, and beside them what the channels mean
 * in SI units. Thread-safe.
 */
public final class TraceTable {
    private TraceTable() {}

    /**
     * The names of the columns.
     *
     * @param trace decides how many meters, readings and drives there are
     */
    public static String heads(Trace trace) {
        List<String> heads =
                new ArrayList<>(List.of("run", "board_ns", "armed", "emergency_stop_closed", "guard_closed"));
        if (!trace.samples().isEmpty()) {
            Sample first = trace.samples().get(0);
            for (int i = 0; i < first.applied().size(); i++) {
                heads.add("drive%d_65536ths".formatted(i));
            }
            for (int i = 0; i < first.meters().size(); i++) {
                heads.add("meter%d_edges".formatted(i));
                heads.add("meter%d_last_edge_ns".formatted(i));
            }
            for (int i = 0; i < first.analogs().size(); i++) {
                heads.add("analog%d_mean_65536ths".formatted(i));
                heads.add("analog%d_min_65536ths".formatted(i));
                heads.add("analog%d_max_65536ths".formatted(i));
            }
        }
        for (AnalogChannel channel : trace.channels().analogs()) {
            ChannelRole role = channel.role();
            heads.add("%s_%s".formatted(role.words().replace(' ', '_'), role.siUnit()));
        }
        return Csv.line(heads);
    }

    /** The line of a sample. */
    public static String line(String run, Trace trace, Sample sample) {
        List<String> values = new ArrayList<>(List.of(
                run,
                Long.toString(sample.boardNanos()),
                flag(sample.armed()),
                flag(sample.emergencyStopClosed()),
                flag(sample.guardClosed())));
        sample.applied().forEach(duty -> values.add(Integer.toString(duty.parts())));
        sample.meters().forEach(meter -> {
            values.add(Long.toString(meter.edges()));
            values.add(Long.toString(meter.lastEdgeNanos()));
        });
        sample.analogs().forEach(reading -> {
            values.add(Integer.toString(reading.mean()));
            values.add(Integer.toString(reading.min()));
            values.add(Integer.toString(reading.max()));
        });
        for (AnalogChannel channel : trace.channels().analogs()) {
            boolean there = channel.index() < sample.analogs().size();
            values.add(there ? Double.toString(channel.read(sample)) : "");
        }
        return Csv.line(values);
    }

    private static String flag(boolean value) {
        return value ? "1" : "0";
    }
}
