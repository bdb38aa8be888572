package org.pumpwright.benchmarks.line;

import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.pumpwright.host.stand.serial.FrameWritten;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Received;

/** Presses STOP on a thread of its own, each time it is asked to, and takes the time until the line has taken the frame. */
final class Presser implements FrameWritten {
    private static final long LONGEST_PAUSE_NANOS = 4_000_000;
    private static final long PATIENCE_SECONDS = 2;

    private final BlockingQueue<WireStand> asked = new ArrayBlockingQueue<>(1);
    private final BlockingQueue<OptionalLong> pressed = new ArrayBlockingQueue<>(1);
    private final BlockingQueue<Long> written = new ArrayBlockingQueue<>(8);
    private final FrameDecoder sent = new FrameDecoder(this::sent);
    private final SplittableRandom random = new SplittableRandom(20_251);
    private final Latencies returned = new Latencies();
    private final Latencies handedOver = new Latencies();
    private long writtenNanos;

    /** Begins to wait for its first order. */
    void start() {
        Thread thread = new Thread(this::run, "presser");
        thread.setDaemon(true);
        thread.start();
    }

    /** From the press to the end of the call. */
    Latencies returned() {
        return returned;
    }

    /** From the press to the end of the write. */
    Latencies handedOver() {
        return handedOver;
    }

    /** Has STOP pressed soon. */
    void ask(WireStand stand) throws InterruptedException {
        written.clear();
        asked.put(stand);
    }

    /** When STOP was pressed, as the system's nanosecond clock tells it; empty when the line did not take the frame. */
    OptionalLong whenPressed() throws InterruptedException {
        return pressed.take();
    }

    @Override
    public void written(byte[] bytes, long nanoTime) {
        writtenNanos = nanoTime;
        sent.receive(bytes);
    }

    private void sent(Received frame) {
        if (frame instanceof Received.Good good && good.message() instanceof MakeSafe) {
            written.offer(writtenNanos);
        }
    }

    private void run() {
        try {
            while (true) {
                WireStand stand = asked.take();
                // So that presses fall anywhere between two samples.
                LockSupport.parkNanos(random.nextLong(LONGEST_PAUSE_NANOS));
                pressed.put(press(stand));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private OptionalLong press(WireStand stand) throws InterruptedException {
        long began = System.nanoTime();
        stand.makeSafe();
        long ended = System.nanoTime();
        Long end = written.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
        if (end == null) {
            return OptionalLong.empty();
        }
        returned.add(ended - began);
        handedOver.add(end - began);
        return OptionalLong.of(began);
    }
}
