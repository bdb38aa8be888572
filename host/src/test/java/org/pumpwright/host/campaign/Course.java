package org.pumpwright.host.campaign;

import org.pumpwright.host.bench.EmulatedBoard.Pins;

/** Follows a run by the board's pins alone and tells when its parts begin. Confined to the board's reader thread. */
final class Course {
    private static final long NEVER = -1;
    private static final int LOOKS_OF_A_DWELL = 10;
    /** The contactor has long proven itself by then. */
    private static final int LOOKS_OF_A_PROOF = 20;

    private final Moment moment;
    private long begin = NEVER;
    private int times;
    private int last;
    private int looksHeld;
    private int looksClosed;
    private boolean rising;
    private boolean hasRisen;

    Course(Moment moment) {
        this.moment = moment;
    }

    /** Whether the moment has come. */
    boolean reached(Pins pins) {
        if (begin == NEVER && begins(pins)) {
            times++;
            if (times == moment.time()) {
                begin = pins.micros();
            }
        }
        last = pins.duty();
        return begin != NEVER && pins.micros() - begin >= moment.afterMillis() * 1000L;
    }

    private boolean begins(Pins pins) {
        boolean rises = pins.duty() > last;
        boolean startsToRise = rises && !rising;
        boolean falls = pins.duty() < last && pins.duty() > 0;
        hasRisen |= rises;
        looksHeld = pins.duty() == last && pins.duty() > 0 ? looksHeld + 1 : 0;
        rising = rises;
        return switch (moment.stage()) {
            case SAFE -> true;
            case PROVING -> pins.contactorClosed();
            case RESTING -> restBegins(pins);
            case RAMPING -> startsToRise;
            case DWELLING -> looksHeld == LOOKS_OF_A_DWELL;
            case COMING_BACK -> falls && hasRisen;
        };
    }

    private boolean restBegins(Pins pins) {
        looksClosed += pins.contactorClosed() ? 1 : 0;
        return looksClosed == LOOKS_OF_A_PROOF;
    }
}
