package org.pumpwright.host.plant;

import java.util.Random;

/**
 * A demand switch in motion: it follows the pressure with hysteresis and a delay, chatters for a moment after each
 * change, and may stick once open. Confined to the plant's thread.
 */
final class PressureSwitch {

    private final PressureSwitchParameters parameters;
    private final Random random;
    private boolean snappedOpen;
    private boolean chatteringOpen;
    private double overdueSeconds;
    private double bounceLeft;

    PressureSwitch(PressureSwitchParameters parameters, Random random) {
        this.parameters = parameters;
        this.random = random;
    }

    boolean open() {
        return bounceLeft > 0 ? chatteringOpen : snappedOpen;
    }

    void advance(double seconds, double pressurePa) {
        boolean due = snappedOpen ? pressurePa < parameters.closesPascal() : pressurePa >= parameters.opensPascal();
        overdueSeconds = due ? overdueSeconds + seconds : 0;
        double patience = parameters.delaySeconds() + (snappedOpen ? parameters.sticksSeconds() : 0);
        if (due && overdueSeconds > patience) {
            snappedOpen = !snappedOpen;
            overdueSeconds = 0;
            bounceLeft = parameters.bounceSeconds();
        }
        if (bounceLeft > 0) {
            bounceLeft -= seconds;
            chatteringOpen = random.nextBoolean();
        }
    }
}
