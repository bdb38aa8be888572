package org.pumpwright.benchmarks.window;

import java.util.OptionalLong;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.pumpwright.host.stand.serial.FrameWritten;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Received;

/** Reads along what is written to a board: when STOP's frame was, and whether something is driven. Thread-safe. */
final class SentFrames implements FrameWritten {
    private final LinkedBlockingQueue<Long> safe = new LinkedBlockingQueue<>();
    private final AtomicInteger driven = new AtomicInteger();
    private final FrameDecoder decoder = new FrameDecoder(this::frame);
    private long writtenNanos;

    @Override
    public synchronized void written(byte[] bytes, long nanoTime) {
        writtenNanos = nanoTime;
        decoder.receive(bytes);
    }

    private void frame(Received received) {
        if (received instanceof Received.Good good) {
            if (good.message() instanceof MakeSafe) {
                safe.add(writtenNanos);
            } else if (good.message() instanceof Drive drive && drive.duty() > 0) {
                driven.incrementAndGet();
            }
        }
    }

    /** How often something was driven so far. */
    int driven() {
        return driven.get();
    }

    /** What was written so far doesn't count. */
    void forget() {
        safe.clear();
    }

    /** When the first frame that asks for safe was written since; empty when none was within this time. */
    OptionalLong safe(long patienceMillis) throws InterruptedException {
        Long at = safe.poll(patienceMillis, TimeUnit.MILLISECONDS);
        return at == null ? OptionalLong.empty() : OptionalLong.of(at);
    }
}
