package org.pumpwright.benchmarks.judgement;

import java.io.PrintStream;

/** A line on the terminal that tells how far the work is. Thread-safe. */
final class Progress {
    private final PrintStream out;
    private String words = "";
    private int of;
    private int done;

    Progress(PrintStream out) {
        this.out = out;
    }

    synchronized void say(String text) {
        out.println(text);
    }

    synchronized void begin(String what, int count) {
        words = what;
        of = count;
        done = 0;
    }

    synchronized void step() {
        done++;
        if (done == of || done % Math.max(1, of / 20) == 0) {
            out.println("%s: %d of %d".formatted(words, done, of));
        }
    }
}
