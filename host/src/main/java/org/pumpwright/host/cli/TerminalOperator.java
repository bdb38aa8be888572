package org.pumpwright.host.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;

/**
 * The person at the terminal: answers are lines that he types; a line {@code p} while nothing is asked pauses the run between
 * two points. Answers that were given on the command line are taken without asking. Thread-safe.
 */
final class TerminalOperator implements Operator {
    private static final String PAUSE = "p";

    private final BufferedReader typed;
    private final boolean there;
    private final Map<String, String> given;
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private final AtomicBoolean pause = new AtomicBoolean();
    private final AtomicBoolean listening = new AtomicBoolean();
    private volatile @Nullable Ask open;

    /**
     * @param typed what is typed
     * @param there whether anybody types
     * @param given answers by the names of their steps
     */
    TerminalOperator(Reader typed, boolean there, Map<String, String> given) {
        this.typed = new BufferedReader(typed);
        this.there = there;
        this.given = Map.copyOf(given);
    }

    /** Begins to listen to what is typed. */
    void listen() {
        if (there && listening.compareAndSet(false, true)) {
            Thread ear = new Thread(this::hear, "what is typed");
            ear.setDaemon(true);
            ear.start();
        }
    }

    @Override
    public boolean isThere() {
        return there || !given.isEmpty();
    }

    @Override
    public void ask(Ask question) {
        lines.clear();
        open = question;
        String beforehand = given.get(question.name());
        if (beforehand != null) {
            lines.add(beforehand);
        }
    }

    @Override
    public Optional<String> answer() {
        Optional<String> line = Optional.ofNullable(lines.poll());
        if (line.isPresent()) {
            open = null;
        }
        return line;
    }

    @Override
    public boolean wantsPause() {
        return pause.getAndSet(false);
    }

    private void hear() {
        try {
            for (String line = typed.readLine(); line != null; line = typed.readLine()) {
                if (open != null) {
                    lines.add(line);
                } else if (line.strip().equalsIgnoreCase(PAUSE)) {
                    pause.set(true);
                }
            }
        } catch (IOException e) {
            // Nobody types any more: an open question stays open, and the stop button is another way.
            return;
        }
    }
}
