package org.pumpwright.host.stand.wire;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.ForeignBoard;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.line.Wire;

/**
 * What is said with one board over one opened line: questions with their answers, signs of life, and everything else that
 * was heard, in its order. The line moves only when the run thread calls.
 *
 * <p>Confined to the run thread, but for {@link #makeSafe}.
 */
final class Conversation {
    private static final int BUFFER_BYTES = 4096;
    private static final Duration SECOND_HEARING = Duration.ofMillis(50);

    private final Line line;
    private final WireTiming timing;
    private final AtomicInteger sequence = new AtomicInteger();
    private final Deque<BoardMessage> heard = new ArrayDeque<>();
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private final FrameDecoder decoder = new FrameDecoder(this::take);
    private final LinkTally tally = new LinkTally();

    private @Nullable Identity identity;
    private @Nullable ForeignBoard foreign;
    private volatile boolean signsOfLife;
    private long lastSignOfLife;
    private long lastSample;
    private boolean heardSample;
    private int newestEvent;

    Conversation(Line line, WireTiming timing) {
        this.line = line;
        this.timing = timing;
        lastSample = line.nanoTime();
    }

    Line line() {
        return line;
    }

    long nanoTime() {
        return line.nanoTime();
    }

    /** Asks who is there until the board says it, or a board of another version does. */
    Identity hello() throws StandException {
        long giveUp = nanoTime() + timing.hello().toNanos();
        // Ends whatever noise the opening of the port may have left in the board's receiver.
        line.send(new byte[] {Wire.DELIMITER});
        while (nanoTime() < giveUp) {
            send(new Hello());
            long until = nanoTime() + timing.answer().toNanos();
            while (nanoTime() < until) {
                pump(until);
                if (identity != null) {
                    return identity;
                }
                if (foreign != null) {
                    throw Refusals.otherVersion(line, foreign);
                }
            }
        }
        throw trouble(
                Trouble.NO_ANSWER,
                "%s: no board answered the hello within %.1f s. Check that the board has power and its firmware, that the"
                        + " cable is a data cable, and that the speed is the board's.",
                line.name(),
                timing.hello().toMillis() / 1000.0);
    }

    /** Sends until it is acknowledged. Whatever else comes in meanwhile is kept for {@link #next}. */
    void request(HostMessage message, int tries) throws StandException {
        ask(message, tries, answer -> false);
    }

    /**
     * Sends until it is answered: by the message that is looked for, or by an acknowledge.
     *
     * @throws StandException of kind {@code REFUSED} or {@code NO_ANSWER}
     */
    BoardMessage ask(HostMessage message, int tries, Predicate<BoardMessage> isAnswer) throws StandException {
        for (int attempt = 0; attempt < tries; attempt++) {
            int asked = send(message);
            long until = nanoTime() + timing.answer().toNanos();
            while (nanoTime() < until) {
                pump(until);
                Optional<BoardMessage> answer = takeFirst(m -> answers(m, asked) || isAnswer.test(m));
                if (answer.isPresent() && answer.get() instanceof Refuse refuse) {
                    throw Refusals.refused(line, message, refuse);
                }
                if (answer.isPresent()) {
                    return answer.get();
                }
            }
        }
        throw trouble(
                Trouble.NO_ANSWER,
                "%s: the board did not answer '%s' in %d x %d ms. Check cable and supply of the board.",
                line.name(),
                Refusals.words(message),
                tries,
                timing.answer().toMillis());
    }

    /** The first heard message of this sort, within a time. */
    Optional<BoardMessage> waitFor(Predicate<BoardMessage> wanted, Duration atMost) throws StandException {
        long until = nanoTime() + atMost.toNanos();
        while (true) {
            Optional<BoardMessage> found = takeFirst(wanted);
            if (found.isPresent() || nanoTime() >= until) {
                return found;
            }
            pump(until);
        }
    }

    /** The oldest message not yet taken; empty when none comes in time. */
    Optional<BoardMessage> next(long until) throws StandException {
        if (heard.isEmpty()) {
            // What has come in meanwhile is heard before the board is called silent: it may have been us who were away.
            pump(nanoTime());
        }
        if (heard.isEmpty()) {
            hearAgain();
        }
        if (heard.isEmpty()) {
            checkNotSilent();
            pump(until);
        }
        return Optional.ofNullable(heard.poll());
    }

    /** Forgets what was heard of this sort. */
    void forget(Predicate<BoardMessage> sort) {
        heard.removeIf(sort);
    }

    /** The number of the event after the newest that was heard. */
    int nextEvent() {
        return (newestEvent + 1) & 0xFFFF;
    }

    LinkCounts counts() {
        return tally.counts();
    }

    /** From now on samples must come; what came before, an opening that took long above all, is no silence. */
    void expectSamples() {
        lastSample = nanoTime();
    }

    /** From now on the board hears a sign of life as often as it needs one. */
    void beginSignsOfLife() {
        signsOfLife = true;
        lastSignOfLife = nanoTime();
    }

    void endSignsOfLife() {
        signsOfLife = false;
    }

    boolean givesSignsOfLife() {
        return signsOfLife;
    }

    /** Asks for safe and says nothing more that would keep the board armed. Any thread. */
    void makeSafe() {
        signsOfLife = false;
        try {
            send(new MakeSafe());
        } catch (StandException e) {
            // The line is gone: nothing more can be asked of the board, and its own link time-out makes it safe.
            return;
        }
    }

    private static boolean answers(BoardMessage message, int asked) {
        return (message instanceof Acknowledge a && a.answered() == asked)
                || (message instanceof Refuse r && r.answered() == asked);
    }

    private Optional<BoardMessage> takeFirst(Predicate<BoardMessage> wanted) {
        for (Iterator<BoardMessage> all = heard.iterator(); all.hasNext(); ) {
            BoardMessage message = all.next();
            if (wanted.test(message)) {
                all.remove();
                return Optional.of(message);
            }
        }
        return Optional.empty();
    }

    private int send(HostMessage message) throws StandException {
        int number = sequence.getAndIncrement() & 0xFFFF;
        line.send(FrameEncoder.encode(message, number));
        return number;
    }

    /** A damaged delimiter makes one frame of two. With another one before it, each sign of life costs only itself. */
    private void sendSignOfLife() throws StandException {
        byte[] frame = FrameEncoder.encode(new KeepAlive(), sequence.getAndIncrement() & 0xFFFF);
        byte[] apart = new byte[frame.length + 1];
        apart[0] = Wire.DELIMITER;
        System.arraycopy(frame, 0, apart, 1, frame.length);
        line.send(apart);
    }

    /** Lets bytes in until some came, the time is up, or the next sign of life is due; sends that. */
    private void pump(long until) throws StandException {
        long now = nanoTime();
        long wait = until - now;
        if (signsOfLife) {
            long every = timing.keepAlive().toNanos();
            if (now - lastSignOfLife >= every) {
                sendSignOfLife();
                lastSignOfLife = now;
            }
            wait = Math.min(wait, lastSignOfLife + every - now);
        }
        int count = line.receive(buffer, Duration.ofNanos(Math.max(1, wait)));
        decoder.receive(buffer, 0, count);
        if (heardSample) {
            lastSample = nanoTime();
            heardSample = false;
        }
    }

    private void take(Received received) {
        tally.take(received);
        if (received instanceof Received.Good good && good.message() instanceof BoardMessage message) {
            take(message);
        } else if (received instanceof Received.Foreign other) {
            other.board().ifPresent(board -> foreign = board);
        }
    }

    private void take(BoardMessage message) {
        if (message instanceof Identity who) {
            identity = who;
            return;
        }
        heard.add(message);
        heardSample |= Timeline.isSample(message);
        if (message instanceof Event event) {
            newestEvent = event.number();
        }
    }

    private boolean isSilent() {
        return nanoTime() - lastSample > timing.silence().toNanos();
    }

    /** On a machine that was kept busy the line's own thread may have been away as long as this one: it gets a moment. */
    private void hearAgain() throws StandException {
        long until = nanoTime() + SECOND_HEARING.toNanos();
        while (isSilent() && nanoTime() < until) {
            pump(until);
        }
    }

    private void checkNotSilent() throws StandException {
        if (isSilent()) {
            throw trouble(
                    Trouble.SILENT,
                    "%s: no sample for %d ms. Check the board's supply and the cable, then start the run again.",
                    line.name(),
                    timing.silence().toMillis());
        }
    }

    private StandException trouble(Trouble trouble, String format, Object... args) {
        return new StandException(trouble, line.name(), String.format(Locale.ROOT, format, args));
    }
}
