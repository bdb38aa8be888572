package org.pumpwright.benchmarks.line;

import java.util.ArrayList;
import java.util.List;

/** Keeps every core busy, with one thread each that never waits, until it is closed. Thread-safe. */
final class BusyCores implements AutoCloseable {
    private final List<Thread> threads = new ArrayList<>();
    private volatile boolean ended;

    BusyCores(int cores) {
        for (int core = 0; core < cores; core++) {
            Thread thread = new Thread(this::spin, "busy core " + core);
            thread.setDaemon(true);
            thread.start();
            threads.add(thread);
        }
    }

    private void spin() {
        while (!ended) {
            Thread.onSpinWait();
        }
    }

    @Override
    public void close() {
        ended = true;
        for (Thread thread : threads) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }
}
