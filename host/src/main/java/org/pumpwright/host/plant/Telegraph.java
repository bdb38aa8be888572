package org.pumpwright.host.plant;

import java.util.Random;

/**
 * A contact that opens for a moment now and then: exponential waiting, openings of 0.05 to 2 s, short ones as common per
 * decade as long ones (assumed). Confined to the plant's thread.
 */
public final class Telegraph {

    private static final double SHORTEST_OPEN_SECONDS = 0.05;
    private static final double LONGEST_OPEN_SECONDS = 2;

    private final double perMinute;
    private final Random random;
    private boolean open;
    private double secondsToChange;

    /**
     * A closed contact.
     *
     * @param perMinute how often it opens when nothing provokes it; 0 never
     * @param random its stream
     */
    public Telegraph(double perMinute, Random random) {
        Range.check("openings", perMinute, 0, 1000, "per min");
        this.perMinute = perMinute;
        this.random = random;
        secondsToChange = closedSeconds();
    }

    /** Whether the contact is open now. */
    public boolean open() {
        return open;
    }

    /**
     * Lets time pass.
     *
     * @param seconds how much
     * @param provoked how many times as often as usual the contact opens now: heat, wiggling
     */
    public void advance(double seconds, double provoked) {
        secondsToChange -= open ? seconds : seconds * provoked;
        if (secondsToChange <= 0) {
            open = !open;
            secondsToChange = open ? openSeconds() : closedSeconds();
        }
    }

    private double closedSeconds() {
        return perMinute == 0 ? Double.POSITIVE_INFINITY : -StrictMath.log(1 - random.nextDouble()) * 60 / perMinute;
    }

    private double openSeconds() {
        double decades = StrictMath.log(LONGEST_OPEN_SECONDS / SHORTEST_OPEN_SECONDS);
        return SHORTEST_OPEN_SECONDS * StrictMath.exp(decades * random.nextDouble());
    }
}
