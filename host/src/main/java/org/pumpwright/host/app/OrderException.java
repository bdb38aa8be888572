package org.pumpwright.host.app;

/** An order that can't be carried out as it was given. The message says what is wrong and what to do. Thread-safe. */
public final class OrderException extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param message what is wrong and what to do */
    public OrderException(String message) {
        super(message);
    }
}
