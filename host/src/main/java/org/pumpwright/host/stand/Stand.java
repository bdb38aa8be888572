package org.pumpwright.host.stand;

import java.time.Duration;
import java.util.Optional;
import org.pumpwright.host.quantity.Duty;

/**
 * A test stand: one board with its drives, meters and readings.
 *
 * <p>The life of a stand: {@link #open} says hello and starts the samples; {@link #arm} closes the contactor;
 * {@link #drive} moves a drive; {@link #await} takes what the board sends. While armed, {@code await} must be called at
 * least every quarter second: it carries the sign of life, so a host that hangs lets the board make itself safe. After a
 * {@link StandException} of kind {@code LINK_LOST} or {@code BOARD_RESET} the stand may be opened again, and starts safe.
 *
 * <p>Confined to the run thread, but for {@link #makeSafe}, which any thread may call.
 */
public interface Stand extends AutoCloseable {
    StandDescription description();

    /**
     * Reaches the board, or reaches it again, and starts its samples. The stand is safe afterwards.
     *
     * @return who answered
     * @throws StandException when the board can't be reached, does not answer, or is not the one described
     */
    StandIdentity open() throws StandException;

    /**
     * Arms the board; every drive begins at 0.
     *
     * @throws StandException of kind {@code REFUSED} when an input is open, or when the board is lost
     */
    void arm() throws StandException;

    /**
     * Gives a drive a new set point.
     *
     * @param drive the drive's number
     * @param duty the set point
     * @param fullSwingSeconds time that a change from 0 to fully on would take; the board's own limit holds if slower
     * @throws StandException of kind {@code REFUSED} when not armed, or when the board is lost
     */
    void drive(int drive, Duty duty, double fullSwingSeconds) throws StandException;

    /**
     * Takes the next thing the board sent, and keeps the link alive.
     *
     * @param atMost how long to wait
     * @return a sample or an event; empty when the time ran out
     * @throws StandException when the board is lost, has reset, or has fallen silent
     */
    Optional<StandSignal> await(Duration atMost) throws StandException;

    /**
     * Asks the board to make safe, at once and without waiting for its answer. Never throws and never blocks; may be
     * called in every state and from any thread. It also ends the signs of life, so a board that does not hear it makes itself
     * safe by its own time-out. The proof is a later sample that is not armed.
     */
    void makeSafe();

    /** Asks for safe, then gives the board up. May be called more than once, on the run thread. */
    @Override
    void close();
}
