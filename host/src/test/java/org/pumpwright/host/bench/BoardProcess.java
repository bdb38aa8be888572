package org.pumpwright.host.bench;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A program that is a board behind a pseudo-terminal. Ends with the test, by its own process handle. */
public class BoardProcess implements AutoCloseable {
    private static final Duration START = Duration.ofSeconds(20);

    protected final Process process;
    protected final BufferedWriter toBoard;
    private final CompletableFuture<String> port = new CompletableFuture<>();

    protected BoardProcess(List<String> command) {
        try {
            process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        toBoard = process.outputWriter();
    }

    /** Begins to listen; not in the constructor, because what is heard goes to the subclass. */
    protected final void listen() {
        Thread reader = new Thread(this::read, "board process");
        reader.setDaemon(true);
        reader.start();
    }

    /** The board of the PC: the portable firmware with a toy motor, in real time. */
    public static BoardProcess pc(String... options) {
        java.util.ArrayList<String> command =
                new java.util.ArrayList<>(List.of(Firmware.pcBoard().toString()));
        command.addAll(List.of(options));
        BoardProcess board = new BoardProcess(command);
        board.listen();
        return board;
    }

    /** A build of the firmware for the PC. */
    public static BoardProcess run(Path program) {
        BoardProcess board = new BoardProcess(List.of(program.toString()));
        board.listen();
        return board;
    }

    public String port() {
        try {
            return port.get(START.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException | TimeoutException e) {
            throw new AssertionError("the board program gave no port", e);
        }
    }

    /** Gives the program a command on its standard input, e.g. {@code guard 0}; its README lists them. */
    public void say(String command) throws IOException {
        toBoard.write(command + "\n");
        toBoard.flush();
    }

    /** Ends the program as a power cut would: without a word. */
    public void kill() {
        process.destroyForcibly();
    }

    protected void line(String line) throws IOException {
        if (line.startsWith("port ")) {
            port.complete(line.substring("port ".length()).trim());
        }
    }

    private void read() {
        try (BufferedReader out = process.inputReader()) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                line(line);
            }
        } catch (IOException e) {
            // The program has ended; who waits for its port hears of it below.
        }
        port.completeExceptionally(new IOException("the board program ended"));
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(2, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
