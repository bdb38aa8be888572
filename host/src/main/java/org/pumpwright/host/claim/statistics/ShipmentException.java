package org.pumpwright.host.claim.statistics;

/** The table of what was shipped and the returns contradict each other; the message says where, and what to do. */
public final class ShipmentException extends Exception {
    private static final long serialVersionUID = 1L;

    public ShipmentException(String message) {
        super(message);
    }
}
