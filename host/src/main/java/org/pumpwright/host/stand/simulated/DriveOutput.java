package org.pumpwright.host.stand.simulated;

/** One drive: what its pin gets, and how fast that may change. Duties in 1/65536. Confined to the run thread. */
final class DriveOutput {
    /** The board's own ramp limit, 1/65536 per millisecond: half a second from nothing to fully on. */
    static final int RAMP_PER_MILLI = 131;

    private int applied;
    private int target;
    private int rampPerMilli = RAMP_PER_MILLI;

    /**
     * Takes a set point.
     *
     * @param duty 0 to 65536
     * @param ramp most change per millisecond; 0 leaves it to the board
     */
    void set(int duty, int ramp) {
        target = duty;
        rampPerMilli = ramp == 0 ? RAMP_PER_MILLI : Math.min(ramp, RAMP_PER_MILLI);
    }

    void millisecond() {
        applied += Math.max(-rampPerMilli, Math.min(rampPerMilli, target - applied));
    }

    /** At once, without a ramp. */
    void off() {
        applied = 0;
        target = 0;
        rampPerMilli = RAMP_PER_MILLI;
    }

    int applied() {
        return applied;
    }
}
