package org.pumpwright.protocol;

/** Who waits how long for whom, in milliseconds; {@code spec/protocol.md} section 6 is the source. Thread-safe. */
public final class Timing {
    /** The board answers within this time. */
    public static final int ANSWER_WITHIN_MS = 50;

    /** The host waits so long for an answer before it sends the same again. */
    public static final int HOST_WAIT_MS = 200;

    /** How often the host sends a command in all before it gives the board up. */
    public static final int TRIES = 3;

    /** An armed host sends {@link KeepAlive} this often. */
    public static final int KEEP_ALIVE_MS = 250;

    /** No board may make safe sooner than this because it hears no host. */
    public static final int SHORTEST_LINK_TIMEOUT_MS = 100;

    /** No board may wait longer than this for its host. */
    public static final int LONGEST_LINK_TIMEOUT_MS = 1000;

    /** The board is safe within this time once there is a reason. */
    public static final int SAFE_WITHIN_MS = 20;

    private Timing() {}
}
