package org.pumpwright.host.ui;

import java.time.Duration;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.host.stand.wire.Line;

/** A line to a simulated board whose time can be held still, so that a picture of a run may take as long as it takes. */
final class PacedLine implements Line {
    private final SimulatedLine line;
    private final Object gate = new Object();
    private boolean held;

    PacedLine(SimulatedBoard board, double pace) {
        line = new SimulatedLine(board, pace);
    }

    /** From now on no time passes. */
    void hold() {
        synchronized (gate) {
            held = true;
        }
    }

    /** Time passes again. */
    void goOn() {
        synchronized (gate) {
            held = false;
            gate.notifyAll();
        }
    }

    void unplug() {
        line.unplug();
    }

    @Override
    public String name() {
        return line.name();
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        line.send(bytes);
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        waitWhileHeld();
        return line.receive(into, atMost);
    }

    private void waitWhileHeld() {
        synchronized (gate) {
            try {
                while (held) {
                    gate.wait();
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @Override
    public long nanoTime() {
        return line.nanoTime();
    }

    @Override
    public void close() {
        line.close();
    }
}
