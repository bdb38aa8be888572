package org.pumpwright.host.stand;

/**
 * Trouble with the stand, never with the unit. The message says what happened, where, and what to do. Thread-safe.
 */
public final class StandException extends Exception {
    private static final long serialVersionUID = 1L;

    /** What kind of trouble. */
    public enum Trouble {
        /** There is no such port. */
        NO_PORT,
        /** Another program has the port. */
        PORT_BUSY,
        /** The user may not open the port. */
        NO_RIGHTS,
        /** The port can't be opened or set up for another reason. */
        PORT_FAULT,
        /** Nothing answered. */
        NO_ANSWER,
        /** The board speaks another version of the protocol. */
        OTHER_VERSION,
        /** Another board than the one described. */
        OTHER_BOARD,
        /** The board said no. */
        REFUSED,
        /** The port went away. */
        LINK_LOST,
        /** The board started anew. */
        BOARD_RESET,
        /** The port is there but the samples stopped. */
        SILENT,
        /** The waiting thread was interrupted. */
        INTERRUPTED
    }

    private final Trouble trouble;
    private final String port;
    private final String message;

    /**
     * @param trouble what kind
     * @param port where
     * @param message what happened and what to do
     */
    public StandException(Trouble trouble, String port, String message) {
        super(message);
        this.trouble = trouble;
        this.port = port;
        this.message = message;
    }

    public Trouble trouble() {
        return trouble;
    }

    /** What happened and what to do; never missing here. */
    @Override
    public String getMessage() {
        return message;
    }

    /** The port or other name under which the stand was reached. */
    public String port() {
        return port;
    }
}
