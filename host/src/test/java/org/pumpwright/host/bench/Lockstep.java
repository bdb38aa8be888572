package org.pumpwright.host.bench;

/**
 * Lets a board's time run only while its host keeps up, and slowly while bytes are on their way to the board: a
 * pseudo-terminal delivers in the wall's time, which a busy machine makes long. Thread-safe.
 */
final class Lockstep {
    private static final long MOST_AHEAD_MICROS = 100_000;
    private static final long PATIENCE_MILLIS = 10_000;
    private static final long ON_THEIR_WAY_MILLIS = 2;
    /** On a very busy machine they take longer; the board's time must not run away from them meanwhile. */
    private static final long LONG_ON_THEIR_WAY_MILLIS = 20;

    private static final int SHORT_WAITS = 4;

    private boolean hostConnected;
    private long boardMicros;
    private long hostSawMicros;
    private long bytesSent;
    private long bytesArrived;
    private long hostAwayUntilMicros;
    private int waits;

    /** The board has come to this time and has had so many bytes; waits while the host is too far behind. */
    synchronized void boardReached(long micros, long bytesFromHost) {
        boardMicros = micros;
        bytesArrived = bytesFromHost;
        if (hostAwayUntilMicros > 0 && micros >= hostAwayUntilMicros) {
            hostAwayUntilMicros = 0;
            notifyAll();
        }
        try {
            if (hostConnected && bytesSent > bytesArrived) {
                wait(waits < SHORT_WAITS ? ON_THEIR_WAY_MILLIS : LONG_ON_THEIR_WAY_MILLIS);
                waits++;
            } else {
                waits = 0;
            }
            long until = System.currentTimeMillis() + PATIENCE_MILLIS;
            while (hostConnected
                    && boardMicros - hostSawMicros > MOST_AHEAD_MICROS
                    && System.currentTimeMillis() < until) {
                wait(PATIENCE_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The host is to be away for so long of the board's time; the board goes on alone meanwhile. */
    synchronized void hostGoesAway(long micros) {
        hostAwayUntilMicros = boardMicros + micros;
    }

    /** Holds the host while it is to be away. */
    synchronized void hostWaitsWhileAway() {
        try {
            while (boardMicros < hostAwayUntilMicros) {
                hostConnected = false;
                notifyAll();
                wait(PATIENCE_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    synchronized void hostSends(int bytes) {
        bytesSent += bytes;
    }

    /** The host has taken bytes, and so has caught up. */
    synchronized void hostHeard() {
        hostConnected = true;
        hostSawMicros = boardMicros;
        notifyAll();
    }

    /**
     * The host has listened for so long and heard nothing: the board may go on by half as much, because on a busy machine
     * what it sent may be late by the wall.
     */
    synchronized void hostHeardNothing(long micros) {
        hostConnected = true;
        hostSawMicros = Math.min(boardMicros, hostSawMicros + micros / 2);
        notifyAll();
    }

    synchronized void hostLeft() {
        hostConnected = false;
        bytesSent = bytesArrived;
        notifyAll();
    }

    synchronized long boardNanos() {
        return boardMicros * 1000;
    }
}
