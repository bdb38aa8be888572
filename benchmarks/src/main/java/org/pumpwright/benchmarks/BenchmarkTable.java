package org.pumpwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs every benchmark of this package and prints one small table. */
public final class BenchmarkTable {
    private static final String BYTES_PER_OPERATION = "gc.alloc.rate.norm";
    private static final double NANOS_PER_MICRO = 1000;
    private static final int FORKS = 2;
    private static final int WARM_UPS = 3;
    private static final int MEASUREMENTS = 5;

    /** One line of the table. */
    private record Row(String method, String words, int recordingBytes) {}

    private BenchmarkTable() {}

    /**
     * Measures and prints.
     *
     * @param arguments none, or the seconds of one measurement (2 unless given)
     */
    public static void main(String[] arguments) throws RunnerException {
        long seconds = arguments.length > 0 ? Long.parseLong(arguments[0]) : 2;
        List<Row> rows = rows();
        System.out.printf(
                Locale.ROOT, "measuring for %d s%n%n", seconds * rows.size() * FORKS * (WARM_UPS + MEASUREMENTS));
        Map<String, RunResult> results = measure(seconds);
        System.out.printf(
                Locale.ROOT,
                "%-36s %10s %8s %12s %8s %13s%n",
                "decoding",
                "ns/sample",
                "+- 99.9%",
                "samples/us",
                "MB/s",
                "bytes/sample");
        for (Row row : rows) {
            RunResult result = results.get(row.method);
            if (result == null) {
                throw new IllegalStateException("no result of " + row.method);
            }
            print(row, result);
        }
    }

    private static List<Row> rows() {
        SampleRecording recording = new SampleRecording();
        int frames = recording.frames().length;
        int proto = recording.protocolBuffers().length;
        return List.of(
                new Row("framesAndCheck", "frames and check", frames),
                new Row("samples", "frames, check and samples", frames),
                new Row("shortSamples", "frames, check and short samples", recording.shortFrames().length),
                new Row("protocolBuffers", "Protocol Buffers, from an array", proto),
                new Row("protocolBuffersStream", "Protocol Buffers, from its stream", proto));
    }

    private static Map<String, RunResult> measure(long seconds) throws RunnerException {
        Map<String, RunResult> results = new HashMap<>();
        for (RunResult result : new Runner(new OptionsBuilder()
                        .include(DecodeBenchmark.class.getName())
                        .addProfiler(GCProfiler.class)
                        .forks(FORKS)
                        .warmupIterations(WARM_UPS)
                        .warmupTime(TimeValue.seconds(seconds))
                        .measurementIterations(MEASUREMENTS)
                        .measurementTime(TimeValue.seconds(seconds))
                        .jvmArgs("-Xmx512m")
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run()) {
            String benchmark = result.getParams().getBenchmark();
            results.put(benchmark.substring(benchmark.lastIndexOf('.') + 1), result);
        }
        return results;
    }

    private static void print(Row row, RunResult result) {
        Result<?> time = result.getPrimaryResult();
        double nanos = time.getScore();
        Result<?> allocated = result.getSecondaryResults().get(BYTES_PER_OPERATION);
        System.out.printf(
                Locale.ROOT,
                "%-36s %10.1f %8.1f %12.1f %8.0f %13.2f%n",
                row.words,
                nanos,
                time.getScoreError(),
                NANOS_PER_MICRO / nanos,
                NANOS_PER_MICRO * row.recordingBytes / SampleRecording.SAMPLES / nanos,
                allocated == null ? Double.NaN : allocated.getScore());
    }
}
