package org.pumpwright.benchmarks.line;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.trace.Sample;

/**
 * Has STOP pressed many times while samples stream in, each time on an armed stand whose drive is on. Where the board is
 * lost before or after a press, as an emulator on a busy machine may be, the stand is opened anew and that is counted.
 * Confined to one thread.
 */
final class StopPresses {
    private static final Duration PATIENCE = Duration.ofMillis(20);
    private static final int ARM_TRIES = 500;
    private static final int MOST_DISTURBED = 100;

    private final WireStand stand;
    private final Presser presser;
    private final Latencies proven = new Latencies();
    private int disturbed;
    private int unwritten;

    /**
     * @param stand not yet opened, on a line that tells the presser what was written
     * @param presser not yet started
     */
    StopPresses(WireStand stand, Presser presser) {
        this.stand = stand;
        this.presser = presser;
    }

    /** From the press until a sample that says drive 0 and not armed is in hand. */
    Latencies proven() {
        return proven;
    }

    /** How often the board was lost or refused. */
    int disturbed() {
        return disturbed;
    }

    /** How often the line did not take the frame within 2 s. */
    int unwritten() {
        return unwritten;
    }

    /** Presses so many times. */
    void press(int times) throws StandException, InterruptedException {
        presser.start();
        stand.open();
        for (int presses = 0; presses < times; ) {
            try {
                armAndDrive();
                presses++;
                pressOnce();
            } catch (StandException e) {
                if (++disturbed > MOST_DISTURBED) {
                    throw e;
                }
                stand.open();
            }
        }
    }

    private void armAndDrive() throws StandException {
        arm();
        stand.drive(0, Duty.ofPercent(20), 0.5);
        Sample next = sample();
        while (!isDriven(next)) {
            next = sample();
        }
    }

    /** A contactor that has just been let go must open first; until then the board refuses. */
    private void arm() throws StandException {
        for (int tries = 1; ; tries++) {
            try {
                stand.arm();
                return;
            } catch (StandException e) {
                if (e.trouble() != Trouble.REFUSED || tries == ARM_TRIES) {
                    throw e;
                }
                sample();
            }
        }
    }

    private void pressOnce() throws StandException, InterruptedException {
        presser.ask(stand);
        OptionalLong safe;
        OptionalLong began;
        try {
            safe = OptionalLong.of(safeInHand());
        } finally {
            // Even when the board is lost: the next press must not begin before this one has ended.
            began = presser.whenPressed();
        }
        if (began.isPresent()) {
            proven.add(safe.getAsLong() - began.getAsLong());
        } else {
            unwritten++;
        }
    }

    private long safeInHand() throws StandException {
        boolean told = false;
        long since = 0;
        while (!told || since == 0) {
            Optional<StandSignal> signal = stand.await(PATIENCE);
            told |= signal.isPresent() && signal.get() instanceof MadeSafe;
            if (since == 0
                    && signal.isPresent()
                    && signal.get() instanceof Measured measured
                    && !measured.sample().armed()
                    && !isDriven(measured.sample())) {
                since = System.nanoTime();
            }
        }
        return since;
    }

    private static boolean isDriven(Sample sample) {
        return sample.applied().get(0).parts() > 0;
    }

    private Sample sample() throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(PATIENCE);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
        }
    }
}
