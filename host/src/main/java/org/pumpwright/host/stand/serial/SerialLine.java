package org.pumpwright.host.stand.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.wire.Line;

/**
 * A line over a serial port, with a reader and a writer thread of its own. Neither thread is ever waited for by the run:
 * a hang-up and a port that takes no more bytes both show as {@code LINK_LOST}.
 */
public final class SerialLine implements Line {
    private static final int READ_BYTES = 4096;
    private static final int CHUNKS_KEPT = 4096;
    private static final int FRAMES_WAITING = 64;
    private static final long STALLED_NANOS = Duration.ofMillis(500).toNanos();
    private static final long FLUSH_MILLIS = 100;
    private static final byte[] HANG_UP = new byte[0];

    private final String name;
    private final SerialPort port;
    private final FrameWritten written;
    private final BlockingQueue<byte[]> incoming = new ArrayBlockingQueue<>(CHUNKS_KEPT);
    private final BlockingQueue<byte[]> outgoing = new ArrayBlockingQueue<>(FRAMES_WAITING);
    private final AtomicBoolean closed = new AtomicBoolean();
    private final AtomicInteger unsent = new AtomicInteger();
    private final Thread reader;
    private final Thread writer;

    private volatile boolean gone;
    /** When the write that is under way began; 0 while none is. */
    private volatile long writingSince;

    private byte[] rest = new byte[0];

    /** Takes over a port that is open. */
    SerialLine(String name, SerialPort port, FrameWritten written) {
        this.name = name;
        this.port = port;
        this.written = written;
        reader = new Thread(this::read, "serial reader " + name);
        writer = new Thread(this::write, "serial writer " + name);
        reader.setDaemon(true);
        writer.setDaemon(true);
        reader.start();
        writer.start();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void send(byte[] bytes) throws StandException {
        if (gone || closed.get()) {
            throw lost("the port went away");
        }
        checkNotStalled();
        unsent.incrementAndGet();
        if (!outgoing.offer(bytes)) {
            unsent.decrementAndGet();
            throw lost("the port takes no more bytes");
        }
    }

    @Override
    public int receive(byte[] into, Duration atMost) throws StandException {
        checkNotStalled();
        byte[] chunk = rest.length > 0 ? rest : next(atMost);
        if (chunk == null) {
            return 0;
        }
        if (chunk == HANG_UP) {
            throw lost("the port went away");
        }
        int count = Math.min(into.length, chunk.length);
        System.arraycopy(chunk, 0, into, 0, count);
        rest = Arrays.copyOfRange(chunk, count, chunk.length);
        return count;
    }

    private byte @Nullable [] next(Duration atMost) throws StandException {
        if (gone && incoming.isEmpty()) {
            return HANG_UP;
        }
        try {
            return incoming.poll(atMost.toNanos(), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new StandException(Trouble.INTERRUPTED, name, name + ": waiting for the board was interrupted.");
        }
    }

    @Override
    public long nanoTime() {
        return System.nanoTime();
    }

    @Override
    public void close() {
        if (closed.compareAndSet(false, true)) {
            flush();
            writer.interrupt();
            port.closePort();
        }
    }

    /** Gives the last frame, which asks for safe, a moment to go out; never longer. */
    private void flush() {
        long until = System.nanoTime() + Duration.ofMillis(FLUSH_MILLIS).toNanos();
        try {
            while (!gone && unsent.get() > 0 && System.nanoTime() < until) {
                TimeUnit.MILLISECONDS.sleep(1);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void read() {
        byte[] buffer = new byte[READ_BYTES];
        try {
            for (int count = 0; count >= 0 && !closed.get(); count = port.readBytes(buffer, buffer.length)) {
                if (count > 0) {
                    keep(Arrays.copyOf(buffer, count));
                }
            }
        } finally {
            // Whatever ends this thread, whoever waits for bytes must hear of it.
            hangUp();
        }
    }

    /** When nobody has listened for very long the oldest bytes go; the gap shows in the board's time. */
    private void keep(byte[] bytes) {
        while (!incoming.offer(bytes)) {
            incoming.poll();
        }
    }

    private void write() {
        try {
            for (boolean whole = true; whole && (!closed.get() || !outgoing.isEmpty()); ) {
                byte[] bytes = outgoing.take();
                writingSince = System.nanoTime();
                whole = port.writeBytes(bytes, bytes.length) == bytes.length;
                writingSince = 0;
                if (whole) {
                    written.written(bytes, System.nanoTime());
                }
                unsent.decrementAndGet();
            }
        } catch (InterruptedException e) {
            // Closing interrupts the wait for the next frame; there is nothing left to do.
            Thread.currentThread().interrupt();
        } finally {
            hangUp();
        }
    }

    private void hangUp() {
        gone = true;
        keep(HANG_UP);
    }

    /** Closing the port from here frees a write that would block for ever. */
    private void checkNotStalled() throws StandException {
        long since = writingSince;
        if (since != 0 && System.nanoTime() - since > STALLED_NANOS) {
            gone = true;
            port.closePort();
            throw lost("the port has taken no bytes for %d ms".formatted(STALLED_NANOS / 1_000_000));
        }
    }

    private StandException lost(String what) {
        return new StandException(
                Trouble.LINK_LOST,
                name,
                String.format(
                        Locale.ROOT, "%s: %s. Check the cable and the board's supply, then start again.", name, what));
    }
}
