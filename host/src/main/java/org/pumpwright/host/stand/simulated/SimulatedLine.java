package org.pumpwright.host.stand.simulated;

import java.time.Duration;
import java.util.Arrays;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.LockSupport;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.wire.Line;

/**
 * The line to a simulated board. Its clock is virtual: time passes only while somebody waits for bytes, as fast as the
 * machine can, or at a chosen pace for people who watch.
 */
public final class SimulatedLine implements Line {
    private static final long MILLI_NANOS = 1_000_000;

    private final SimulatedBoard board;
    private final double pace;
    private final Queue<byte[]> toBoard = new ConcurrentLinkedQueue<>();
    private final long wallStart = System.nanoTime();
    private volatile boolean unplugged;
    private long nowNanos;
    private byte[] rest = new byte[0];

    /**
     * @param board the board at the other end
     * @param pace virtual seconds in a second of the wall; 0 is as fast as the machine can
     */
    public SimulatedLine(SimulatedBoard board, double pace) {
        this.board = board;
        this.pace = pace;
    }

    @Override
    public String name() {
        return "simulated board";
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        checkPlugged();
        toBoard.add(bytes);
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        long until = nowNanos + atMost.toNanos();
        while (rest.length == 0 && nowNanos < until) {
            checkPlugged();
            for (byte[] bytes = toBoard.poll(); bytes != null; bytes = toBoard.poll()) {
                board.receive(bytes);
            }
            board.millisecond();
            nowNanos += MILLI_NANOS;
            keepPace();
            rest = board.takeOutput();
        }
        int count = Math.min(into.length, rest.length);
        System.arraycopy(rest, 0, into, 0, count);
        rest = Arrays.copyOfRange(rest, count, rest.length);
        return count;
    }

    @Override
    public long nanoTime() {
        return nowNanos;
    }

    /** Pulls the plug, as somebody who stumbles over the cable does. Any thread may do it. */
    public void unplug() {
        unplugged = true;
    }

    @Override
    public void close() {
        for (byte[] bytes = toBoard.poll(); bytes != null; bytes = toBoard.poll()) {
            board.receive(bytes);
        }
    }

    private void keepPace() {
        if (pace > 0) {
            long due = wallStart + Math.round(nowNanos / pace);
            for (long early = due - System.nanoTime(); early > 0; early = due - System.nanoTime()) {
                LockSupport.parkNanos(early);
            }
        }
    }

    private void checkPlugged() throws StandException {
        if (unplugged) {
            throw new StandException(
                    Trouble.LINK_LOST,
                    name(),
                    name() + ": the port went away. Check the cable and the board's supply, then start again.");
        }
    }
}
