package org.pumpwright.host.stand.wire;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;

/**
 * A two-way byte line to a board, and the clock that waiting on it runs by: the wall's for a serial port, virtual time for
 * a simulated board.
 *
 * <p>{@link #send} and {@link #close} may be called from any thread; the others are confined to the run thread.
 */
public interface Line extends AutoCloseable {
    /** The port or other name under which people know the line. */
    String name();

    /**
     * Hands bytes over to be sent; does not wait for them to go out.
     *
     * @param bytes whole frames; not changed afterwards
     * @throws StandException of kind {@code LINK_LOST} when the line is gone or has not taken bytes for too long
     */
    void send(byte[] bytes) throws StandException;

    /**
     * Takes bytes that came in.
     *
     * @param into where to put them
     * @param atMost how long to wait for the first of them
     * @return how many; 0 when the time ran out
     * @throws StandException of kind {@code LINK_LOST} when the line is gone
     */
    int receive(byte[] into, Duration atMost) throws StandException;

    /** The line's clock, ns; only differences mean anything. */
    long nanoTime();

    /** Ends the line after what was handed over has had a moment to go out. May be called more than once. */
    @Override
    void close();

    /** Opens a line, anew each time: after a hang-up the same opener is asked again. */
    @FunctionalInterface
    interface Opener {
        /**
         * Opens the line.
         *
         * @throws StandException with what stands in the way and what to do
         */
        Line open() throws StandException;
    }
}
