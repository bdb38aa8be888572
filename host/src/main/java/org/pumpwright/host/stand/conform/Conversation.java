package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.SequenceWatch;
import org.pumpwright.protocol.line.Wire;

/**
 * Sends frames, sound and unsound, and keeps everything that comes back in the order it came. Confined to the run thread.
 */
final class Conversation {
    private static final int BUFFER_BYTES = 4096;
    private static final int MASK_U16 = 0xFFFF;
    private static final int TRIES = 3;
    private static final long KEEP_ALIVE_NANOS = 250_000_000;

    private final Line line;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private final FrameDecoder decoder = new FrameDecoder(this::take);
    private final SequenceWatch watch = new SequenceWatch();
    private final List<Heard> log = new ArrayList<>();
    private final List<Long> answerNanos = new ArrayList<>();
    private int sequence;
    private int unsound;
    private int starts;
    private boolean repeating;
    private boolean alive;
    private long lastAlive;

    Conversation(Line line) {
        this.line = line;
    }

    long nanoTime() {
        return line.nanoTime();
    }

    /** Gives a sign of life every 250 ms from now on, or no longer. */
    void stayAlive(boolean on) {
        alive = on;
        lastAlive = line.nanoTime();
    }

    /** Sends a frame and returns its sequence. */
    int send(Command command) throws StandException {
        int number = sequence;
        line.send(FrameEncoder.encodeRaw(command.version(), command.type(), number, command.payload()));
        sequence = (sequence + 1) & MASK_U16;
        return number;
    }

    /** Sends bytes that need not be a frame. */
    void sendBytes(byte[] bytes) throws StandException {
        line.send(bytes);
    }

    /** Sends a frame whose CRC is wrong in one bit; everything else is sound. */
    void sendDamaged(Command command) throws StandException {
        line.send(Damage.crc(FrameEncoder.encodeRaw(command.version(), command.type(), sequence, command.payload())));
    }

    /** Sends a command until it is answered, as the protocol tells a host to. */
    Answer ask(Command command) throws StandException {
        Set<Integer> asked = new HashSet<>();
        // A started event that is sent again because it was asked for is no second start.
        repeating = command.repeatsEvents();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            int from = mark();
            long begin = line.nanoTime();
            asked.add(send(command));
            Optional<Heard> answer =
                    await(from, heard -> command.isAnsweredBy(heard.message(), asked), command.patience());
            if (answer.isPresent()) {
                if (attempt == 0 && !command.isSlow()) {
                    answerNanos.add(answer.get().nanos() - begin);
                }
                return new Answer(command.words(), Optional.of(answer.get().message()));
            }
        }
        return new Answer(command.words(), Optional.empty());
    }

    /** The place in the log where the next message will be. */
    int mark() {
        return log.size();
    }

    /** What came since a mark. */
    List<Heard> since(int mark) {
        return List.copyOf(log.subList(mark, log.size()));
    }

    /** Listens until a message since the mark is the one waited for; empty when the time ran out. */
    Optional<Heard> await(int mark, Predicate<Heard> wanted, Duration atMost) throws StandException {
        long until = line.nanoTime() + atMost.toNanos();
        int next = mark;
        while (true) {
            for (; next < log.size(); next++) {
                if (wanted.test(log.get(next))) {
                    return Optional.of(log.get(next));
                }
            }
            if (line.nanoTime() >= until) {
                return Optional.empty();
            }
            pump(until);
        }
    }

    /** Listens for so long and keeps what comes. */
    void listen(Duration duration) throws StandException {
        long until = line.nanoTime() + duration.toNanos();
        while (line.nanoTime() < until) {
            pump(until);
        }
    }

    /** How many frames of the board got lost so far, by its sequence. */
    long lost() {
        return watch.lost() + watch.restarts();
    }

    /** How many frames of the board said nothing that the protocol allows. */
    int unsound() {
        return unsound;
    }

    /** How often the board started so far. */
    int starts() {
        return starts;
    }

    /** How long the answers of quick commands took. */
    List<Long> answerNanos() {
        return List.copyOf(answerNanos);
    }

    private void pump(long until) throws StandException {
        long now = line.nanoTime();
        if (alive && now - lastAlive >= KEEP_ALIVE_NANOS) {
            send(Command.of(new KeepAlive()));
            lastAlive = now;
        }
        long wait = alive ? Math.min(until, lastAlive + KEEP_ALIVE_NANOS) - now : until - now;
        int count = line.receive(buffer, Duration.ofNanos(Math.max(1, wait)));
        decoder.receive(buffer, 0, count);
    }

    private void take(Received received) {
        if (received instanceof Received.Good good) {
            if (good.message() instanceof BoardMessage message) {
                if (!repeating && message instanceof Event event && event.kind() == EventKind.STARTED) {
                    starts++;
                    watch.restart();
                }
                watch.observe(good.sequence());
                log.add(new Heard(line.nanoTime(), message));
            } else {
                unsound++;
            }
        } else if (received instanceof Received.Malformed malformed) {
            watch.observe(malformed.sequence());
            unsound++;
        } else if (received instanceof Received.Foreign foreign && foreign.version() != Wire.VERSION) {
            unsound++;
        }
        // Frames that noise destroyed show as gaps in the sequence.
    }
}
