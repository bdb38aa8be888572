package org.pumpwright.benchmarks.line;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The microcontroller's own program in the emulator, in real time behind a pseudo-terminal, with a toy on its
 * pins. Ends with {@link #close}, by its own process handle. Thread-safe.
 */
public final class Emulator implements AutoCloseable {
    private static final String PORT = "port ";

    private final Process process;
    private final String port;

    private Emulator(Process process, String port) {
        this.process = process;
        this.port = port;
    }

    /**
     * Starts the emulator with a fixed frequency at the first meter.
     *
     * @param root of the source tree
     * @param meterHz edges a second
     * @throws IOException when something is not built, or the emulator does not start
     */
    static Emulator start(Path root, double meterHz) throws IOException {
        Emulator emulator = start(root);
        BufferedWriter in = emulator.process.outputWriter();
        in.write(String.format(Locale.ROOT, "meter-hz %.1f\n", meterHz));
        in.flush();
        return emulator;
    }

    /**
     * Starts the emulator with firmware and emulator of this source tree; the meters follow the drive.
     *
     * @param root of the source tree
     * @throws IOException when something is not built, or the emulator does not start
     */
    public static Emulator start(Path root) throws IOException {
        Path protocol = root.resolve("firmware-protocol");
        Process process = new ProcessBuilder(List.of(
                        built(protocol.resolve("emulator/build/stand-emulator")),
                        "--elf",
                        built(protocol.resolve("firmware/build/avr328.elf")),
                        "--plant",
                        "none"))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader out = process.inputReader();
        String said = out.readLine();
        if (said == null || !said.startsWith(PORT)) {
            process.destroy();
            throw new IOException("the emulator gave no port but: " + said);
        }
        return new Emulator(process, said.substring(PORT.length()).trim());
    }

    /** Path of its pseudo-terminal. */
    public String port() {
        return port;
    }

    private static String built(Path file) throws IOException {
        if (!Files.exists(file)) {
            throw new IOException(file + " is not built. Build it with: make -C firmware-protocol");
        }
        return file.toString();
    }

    @Override
    public void close() {
        process.destroy();
    }
}
