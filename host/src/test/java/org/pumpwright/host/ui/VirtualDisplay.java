package org.pumpwright.host.ui;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** A display of the tests' own, in memory: an X server that chooses its number itself, listens on no network and is ended by its handle. */
final class VirtualDisplay implements AutoCloseable {
    private static final int SECONDS = 60;
    private static final String PACKAGES = "xvfb libgtk-3-0 libxtst6 libpangoft2-1.0-0 fonts-dejavu-core";

    private final Process server;
    private final String name;

    private VirtualDisplay(Process server, String name) {
        this.server = server;
        this.name = name;
    }

    /** Starts one; where there is no such server, the test fails and says what to install. */
    static VirtualDisplay start(Path folder) throws Exception {
        ProcessBuilder starting = new ProcessBuilder(
                        "Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp", "-noreset")
                .directory(folder.toFile())
                .redirectError(folder.resolve("xvfb.log").toFile());
        Process server;
        try {
            server = starting.start();
        } catch (IOException e) {
            throw new AssertionError(
                    "there is no Xvfb to open a real window on. Install with: sudo apt-get install -y " + PACKAGES, e);
        }
        BufferedReader told = server.inputReader();
        String number = CompletableFuture.supplyAsync(() -> number(told)).get(SECONDS, TimeUnit.SECONDS);
        return new VirtualDisplay(server, ":" + number);
    }

    private static String number(BufferedReader told) {
        try {
            String line = told.readLine();
            if (line == null) {
                throw new AssertionError("Xvfb ended before it named its display");
            }
            return line.strip();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** As programs are told of it, in {@code DISPLAY}. */
    String name() {
        return name;
    }

    @Override
    public void close() throws Exception {
        server.destroy();
        if (!server.waitFor(SECONDS, TimeUnit.SECONDS)) {
            server.destroyForcibly();
        }
    }
}
