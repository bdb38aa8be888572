package org.pumpwright.host.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;
import org.pumpwright.host.run.StopButton;

/**
 * The person at the terminal: answers are lines that he types; a line {@code p} pauses the run between two points. Answers
 * that were given on the command line are taken without asking, once. A question that nobody can answer any more stops the
 * run. Thread-safe.
 */
public final class TerminalOperator implements Operator {
    private static final String PAUSE = "p";

    private final BufferedReader typed;
    private final Map<String, String> given;
    private final StopButton stop;
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private final AtomicBoolean pause = new AtomicBoolean();
    private final AtomicBoolean listening = new AtomicBoolean();
    private volatile boolean there;
    private volatile @Nullable Ask open;

    /**
     * @param typed what is typed
     * @param there whether anybody types
     * @param given answers by the names of their steps
     * @param stop pressed when nobody can answer a question
     */
    public TerminalOperator(Reader typed, boolean there, Map<String, String> given, StopButton stop) {
        this.typed = new BufferedReader(typed);
        this.there = there;
        this.given = new ConcurrentHashMap<>(given);
        this.stop = stop;
    }

    /** Begins to listen to what is typed. */
    public void listen() {
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
        String beforehand = given.remove(question.name());
        if (beforehand != null) {
            lines.add(beforehand);
        } else {
            stopIfNobodyCanAnswer();
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
                heard(line);
            }
        } catch (IOException e) {
            // As at the end of what is typed: nobody can type any more.
            nobodyTypes();
            return;
        }
        nobodyTypes();
    }

    private void heard(String line) {
        Ask question = open;
        boolean isAnswer = question != null && question.answer(line).isPresent();
        if (!isAnswer && line.strip().equalsIgnoreCase(PAUSE)) {
            pause.set(true);
        } else if (question != null) {
            lines.add(line);
        }
    }

    private void nobodyTypes() {
        there = false;
        stopIfNobodyCanAnswer();
    }

    /** Called after either of the two has changed, so that whichever is later sees the other. */
    private void stopIfNobodyCanAnswer() {
        Ask question = open;
        if (question != null && !there && lines.isEmpty()) {
            stop.press("nobody is there to answer '%s': run this plan at a terminal, or give its answers with --answer"
                    .formatted(question.name()));
        }
    }
}
