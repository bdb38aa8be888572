package org.pumpwright.host.grade.cause;

/**
 * What a reading may be off for reasons that no simulated unit shows: the shop's curve comes from few units, a real pump is
 * not the model. Assumed; on the scale of the reading. Thread-safe.
 */
final class Allowance {
    private Allowance() {}

    static double of(String key) {
        if (key.startsWith("flow@")) {
            return 0.006;
        }
        if (key.startsWith("amps@")) {
            return 0.02;
        }
        if (key.startsWith("gap@")) {
            return 0.1;
        }
        if (key.startsWith("dead-head/")) {
            return 0.02;
        }
        return key.equals("nozzle") || key.equals("volts at rest") ? 0.005 : 0.05;
    }
}
