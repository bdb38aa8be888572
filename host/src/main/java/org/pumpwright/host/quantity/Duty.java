package org.pumpwright.host.quantity;

import java.util.Locale;

/**
 * The share of time that a drive's switch is on, in the steps of the wire: 65536 is always on. Thread-safe.
 *
 * @param parts 0 to 65536
 */
public record Duty(int parts) {
    /** The parts of a switch that is always on. */
    public static final int FULL_PARTS = 65_536;

    public static final Duty ZERO = new Duty(0);
    public static final Duty FULL = new Duty(FULL_PARTS);

    public Duty {
        if (parts < 0 || parts > FULL_PARTS) {
            throw new IllegalArgumentException("duty is %d parts, allowed are 0 to 65536".formatted(parts));
        }
    }

    /**
     * The nearest duty to a percentage.
     *
     * @throws IllegalArgumentException outside 0 to 100
     */
    public static Duty ofPercent(double percent) {
        Require.inRange("duty", percent, 0, 100, "%");
        return new Duty((int) Math.round(percent / 100 * FULL_PARTS));
    }

    public double fraction() {
        return (double) parts / FULL_PARTS;
    }

    public double percent() {
        return fraction() * 100;
    }

    /** The duty for a person: {@code 30 %}, and {@code 30.1 %} where it is not a whole number. */
    public String print() {
        double tenths = Math.round(percent() * 10) / 10.0;
        return tenths == Math.rint(tenths)
                ? String.format(Locale.ROOT, "%.0f %%", tenths)
                : String.format(Locale.ROOT, "%.1f %%", tenths);
    }
}
