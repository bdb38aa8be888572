package org.pumpwright.protocol;

/** Who waits how long for whom, in milliseconds; {@code spec/protocol.md} section 6 is the source. Thread-safe. */
public final class Timing {
    /** The board answers within this time. */
    public static final int ANSWER_WITHIN_MS = 50;

    /** The board answers within this time what it must write or try first: blob-write, blob-commit, self-test. */
    public static final int SLOW_ANSWER_WITHIN_MS = 500;

    /** The host waits so long for an answer before it sends the same again. */
    public static final int HOST_WAIT_MS = 200;

    /** The host waits so long where the board has {@link #SLOW_ANSWER_WITHIN_MS}. */
    public static final int HOST_SLOW_WAIT_MS = 600;

    /** How often the host sends a command in all before it gives the board up. */
    public static final int TRIES = 3;

    /** A host that has just opened its port says hello this often. */
    public static final int HELLO_EVERY_MS = 200;

    /** A host that has just opened its port goes on saying hello for this long: the board may have been reset. */
    public static final int HELLO_FOR_MS = 3000;

    /** The host sends {@link KeepAlive} this often while the stand is proving or armed. */
    public static final int KEEP_ALIVE_MS = 250;

    /** No board may make safe sooner than this because it hears no host. */
    public static final int SHORTEST_LINK_TIMEOUT_MS = 100;

    /** No board may wait longer than this for its host. */
    public static final int LONGEST_LINK_TIMEOUT_MS = 1000;

    /** The board is safe within this time once there is a reason. */
    public static final int SAFE_WITHIN_MS = 20;

    /** The contactor's feedback must follow the contactor within this time. */
    public static final int CONTACTOR_PROOF_MS = 200;

    private Timing() {}

    /** How long the board may take to answer this command. */
    public static int answerWithinMs(MessageType command) {
        return isSlow(command) ? SLOW_ANSWER_WITHIN_MS : ANSWER_WITHIN_MS;
    }

    /** How long the host waits for the answer to this command before it sends it again. */
    public static int hostWaitMs(MessageType command) {
        return isSlow(command) ? HOST_SLOW_WAIT_MS : HOST_WAIT_MS;
    }

    private static boolean isSlow(MessageType command) {
        return command == MessageType.BLOB_WRITE
                || command == MessageType.BLOB_COMMIT
                || command == MessageType.SELF_TEST;
    }
}
