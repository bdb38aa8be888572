package org.pumpwright.benchmarks.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Prints how long the window takes from the start of its process, with different archives of loaded classes. */
public final class StartTable {
    private static final int STARTS = 9;
    /** What the program itself is started with. */
    private static final List<String> OPTIONS =
            List.of("-Xshare:auto", "-Xlog:disable", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dprism.order=sw");

    private final String java =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private final Path root;
    private final Path folder;
    private final int starts;

    private StartTable(Path root, Path folder, int starts) {
        this.root = root;
        this.folder = folder;
        this.starts = starts;
    }

    /**
     * Measures and prints.
     *
     * @param arguments the root of the source tree; an empty folder; then, if wanted, how many starts of each kind, 9 unless given
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int starts = arguments.length > 2 ? Integer.parseInt(arguments[2]) : STARTS;
        new StartTable(Path.of(arguments[0]).toAbsolutePath().normalize(), Path.of(arguments[1]), starts).print();
    }

    private void print() throws IOException, InterruptedException {
        Files.createDirectories(folder);
        Path tests = folder.resolve("tests.jsa");
        Path window = folder.resolve("window.jsa");
        run(
                "org.pumpwright.host.cli.Main",
                List.of("-XX:ArchiveClassesAtExit=" + tests),
                List.of(
                        "practice",
                        "--fault",
                        "healthy",
                        "--seed",
                        "1",
                        "--quiet",
                        "--records",
                        folder.resolve("trial").toString()));
        bench(List.of("-XX:ArchiveClassesAtExit=" + window));
        System.out.println(
                "| archive of classes | starts | first frame, ms: median | worst | stand there, ms: median | worst |");
        System.out.println("| --- | --- | --- | --- | --- | --- |");
        measure("none of ours, only the virtual machine's own", List.of());
        measure("trained by a test (%.0f MB)".formatted(megabytes(tests)), List.of("-XX:SharedArchiveFile=" + tests));
        measure(
                "trained by the window (%.0f MB)".formatted(megabytes(window)),
                List.of("-XX:SharedArchiveFile=" + window));
    }

    private static double megabytes(Path file) throws IOException {
        return Files.size(file) / 1e6;
    }

    private void measure(String name, List<String> options) throws IOException, InterruptedException {
        // One more that doesn't count: it brings the files into memory.
        bench(options);
        double[] first = new double[starts];
        double[] there = new double[starts];
        for (int i = 0; i < starts; i++) {
            List<String> said = bench(options);
            first[i] = millis(said, "first frame ");
            there[i] = millis(said, "stand there ");
        }
        Arrays.sort(first);
        Arrays.sort(there);
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %.0f | %.0f | %.0f | %.0f |%n",
                name,
                starts,
                first[starts / 2],
                first[starts - 1],
                there[starts / 2],
                there[starts - 1]);
    }

    private static double millis(List<String> said, String what) {
        return said.stream()
                .filter(line -> line.startsWith(what))
                .mapToDouble(line -> Double.parseDouble(line.substring(what.length())))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the start said only: " + said));
    }

    private List<String> bench(List<String> options) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(options);
        all.add("-Dbegun=" + System.nanoTime());
        return run("org.pumpwright.benchmarks.window.TimedStart", all, List.of("bench"));
    }

    /** An archive of classes is made of jars only. */
    private Path ownJar() throws IOException {
        try (Stream<Path> files = Files.list(root.resolve("benchmarks/target"))) {
            return files.filter(file -> file.getFileName().toString().matches("benchmarks-.*\\.jar"))
                    .findFirst()
                    .orElseThrow(() -> new IOException("benchmarks/target has no jar. Run benchmarks/run"));
        }
    }

    /** Runs a program of the class path away from the shop's own records; what it said. */
    private List<String> run(String main, List<String> options, List<String> arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java));
        command.addAll(OPTIONS);
        command.addAll(options);
        // The program's own class path comes first, for an archive fits only the class path that it was made with.
        command.addAll(List.of(
                "-cp",
                root + "/host/target/pumpwright.jar:" + root + "/host/target/lib/*:" + ownJar(),
                "-Dpumpwright.home=" + root,
                main));
        command.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment()
                .put("PUMPWRIGHT_RECORDS", folder.resolve("records").toString());
        builder.environment().put("PUMPWRIGHT_KEYS", folder.resolve("keys").toString());
        builder.environment().put("PUMPWRIGHT_STORE", "");
        Process process = builder.start();
        List<String> said = process.inputReader().lines().toList();
        process.waitFor();
        return said;
    }
}
