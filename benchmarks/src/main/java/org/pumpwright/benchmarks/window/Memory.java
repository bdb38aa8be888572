package org.pumpwright.benchmarks.window;

/** The heap of this process. Thread-safe. */
final class Memory {
    private static final double MEGABYTE = 1024 * 1024;
    private static final int COLLECTIONS = 3;

    private Memory() {}

    /** How far the heap may grow, MB. */
    static double mostMegabytes() {
        return Runtime.getRuntime().maxMemory() / MEGABYTE;
    }

    /** What is used after all that nobody holds was collected, MB. */
    static double usedMegabytes() {
        for (int i = 0; i < COLLECTIONS; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEGABYTE;
    }
}
