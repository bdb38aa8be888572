package org.pumpwright.host.stand.wire;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandDescription.Connection;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandIdentity;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
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
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.line.Wire;

/**
 * A stand on a byte line. The line is pumped by the thread that calls {@link #await} and by nothing else, so the sign of
 * life proves that the run itself is alive: when it hangs, the board makes itself safe.
 *
 * <p>Confined to the run thread, but for {@link #makeSafe}.
 */
public final class WireStand implements Stand {
    private static final int BUFFER_BYTES = 4096;
    private static final int MOST_RAMP = 65_535;

    private final StandDescription description;
    private final Line.Opener opener;
    private final WireTiming timing;
    private final AtomicInteger sequence = new AtomicInteger();
    private final Deque<BoardMessage> heard = new ArrayDeque<>();
    private final byte[] buffer = new byte[BUFFER_BYTES];

    private volatile @Nullable Line line;
    private @Nullable Session session;
    private @Nullable Identity helloAnswer;
    private @Nullable ForeignBoard foreign;
    private FrameDecoder decoder = new FrameDecoder(this::take);
    private volatile boolean armed;
    private long lastKeepAlive;
    private long lastSample;
    private boolean heardSample;

    /** What holds for one boot of the board. */
    private record Session(Identity board, Timeline timeline) {}

    /**
     * @param description the stand
     * @param opener opens the line, each time anew
     * @param timing times on the wire
     */
    public WireStand(StandDescription description, Line.Opener opener, WireTiming timing) {
        this.description = description;
        this.opener = opener;
        this.timing = timing;
    }

    @Override
    public StandDescription description() {
        return description;
    }

    @Override
    public StandIdentity open() throws StandException {
        close();
        heard.clear();
        helloAnswer = null;
        foreign = null;
        session = null;
        decoder = new FrameDecoder(this::take);
        Line opened = opener.open();
        line = opened;
        try {
            Identity board = hello(opened);
            checkExpected(board, opened);
            checkChannels(board, opened);
            session = new Session(board, new Timeline(board));
            request(opened, new Stream(timing.samplePeriodMillis()));
            lastSample = opened.nanoTime();
            heard.removeIf(message -> message instanceof Event);
            return identity(board);
        } catch (StandException e) {
            close();
            throw e;
        }
    }

    @Override
    public void arm() throws StandException {
        Line open = opened();
        // Asked once only: a repeated arm could undo a make-safe that came between.
        request(open, new Arm(session(open).board().bootId()), 1);
        // Samples from before would look as if the board had made safe since.
        heard.removeIf(message -> message instanceof Sample);
        armed = true;
        lastKeepAlive = open.nanoTime();
    }

    @Override
    public void drive(int drive, Duty duty, double fullSwingSeconds) throws StandException {
        long ramp = Math.round(Duty.FULL_PARTS / (fullSwingSeconds * 1000));
        request(opened(), new Drive(drive, duty.parts(), (int) Math.max(1, Math.min(MOST_RAMP, ramp))));
    }

    @Override
    public Optional<StandSignal> await(Duration atMost) throws StandException {
        Line open = opened();
        long until = open.nanoTime() + atMost.toNanos();
        while (true) {
            for (BoardMessage next = heard.poll(); next != null; next = heard.poll()) {
                Optional<StandSignal> signal = signal(open, next);
                if (signal.isPresent()) {
                    return signal;
                }
            }
            // What has come in meanwhile is heard before the board is called silent: it may have been us who were away.
            pump(open, open.nanoTime());
            if (heard.isEmpty()) {
                checkNotSilent(open);
                if (open.nanoTime() >= until) {
                    return Optional.empty();
                }
                pump(open, until);
            }
        }
    }

    @Override
    public void makeSafe() {
        Line open = line;
        if (open == null) {
            return;
        }
        armed = false;
        try {
            send(open, new MakeSafe());
        } catch (StandException e) {
            // The line is gone: nothing more can be asked of the board, and its own link time-out makes it safe.
            return;
        }
    }

    @Override
    public void close() {
        Line open = line;
        if (open != null) {
            makeSafe();
            line = null;
            armed = false;
            open.close();
        }
    }

    private Identity hello(Line open) throws StandException {
        long giveUp = open.nanoTime() + timing.hello().toNanos();
        // Ends whatever noise the opening of the port may have left in the board's receiver.
        open.send(new byte[] {Wire.DELIMITER});
        while (open.nanoTime() < giveUp) {
            send(open, new Hello());
            long until = open.nanoTime() + timing.answer().toNanos();
            while (open.nanoTime() < until) {
                pump(open, until);
                if (helloAnswer != null) {
                    return helloAnswer;
                }
                if (foreign != null) {
                    throw otherVersion(open, foreign);
                }
            }
        }
        throw trouble(
                open,
                Trouble.NO_ANSWER,
                "%s: no board answered the hello within %.1f s. Check that the board has power and its firmware, that the"
                        + " cable is a data cable, and that the speed is the board's.",
                open.name(),
                timing.hello().toMillis() / 1000.0);
    }

    private static StandException otherVersion(Line open, ForeignBoard board) {
        return trouble(
                open,
                Trouble.OTHER_VERSION,
                "%s: the board (firmware %d.%d) speaks protocol version %d, this program speaks version %d. Load the"
                        + " firmware that came with this program, or use the program that belongs to the board.",
                open.name(),
                board.firmwareMajor(),
                board.firmwareMinor(),
                board.version(),
                Wire.VERSION);
    }

    private void checkExpected(Identity board, Line open) throws StandException {
        Optional<String> expected =
                description.connection() instanceof Connection.Serial serial ? serial.uniqueId() : Optional.empty();
        String found = board.uniqueId().toString();
        if (expected.isPresent() && !expected.get().equalsIgnoreCase(found)) {
            throw trouble(
                    open,
                    Trouble.OTHER_BOARD,
                    "%s: the board there has the id %s, stand '%s' is described with %s. Choose the right port, or"
                            + " correct unique_id in the stand's file.",
                    open.name(),
                    found,
                    description.id(),
                    expected.get());
        }
    }

    private void checkChannels(Identity board, Line open) throws StandException {
        int meters = description.channels().meters().stream()
                .mapToInt(MeterChannel::index)
                .max()
                .orElse(-1);
        int analogs = description.channels().analogs().stream()
                .mapToInt(AnalogChannel::index)
                .max()
                .orElse(-1);
        if (meters >= board.channels().meters() || analogs >= board.channels().analogs()) {
            throw trouble(
                    open,
                    Trouble.OTHER_BOARD,
                    "%s: the board has %d meters and %d analogue channels, the file of stand '%s' names meter %d and analogue"
                            + " channel %d (counted from 0). Correct the file, or use the board it describes.",
                    open.name(),
                    board.channels().meters(),
                    board.channels().analogs(),
                    description.id(),
                    meters,
                    analogs);
        }
    }

    private static StandIdentity identity(Identity board) {
        return new StandIdentity(
                board.kind().toString(),
                board.uniqueId().toString(),
                board.firmware().toString(),
                board.bootId(),
                board.resetCause().describe(),
                board.pwmHz().get(0),
                board.linkTimeoutMs());
    }

    /** Sends until it is answered. Whatever else comes in meanwhile is kept for {@link #await}. */
    private void request(Line open, HostMessage message) throws StandException {
        request(open, message, timing.tries());
    }

    private void request(Line open, HostMessage message, int tries) throws StandException {
        for (int attempt = 0; attempt < tries; attempt++) {
            int asked = send(open, message);
            long until = open.nanoTime() + timing.answer().toNanos();
            while (open.nanoTime() < until) {
                pump(open, until);
                if (answered(open, asked, message)) {
                    return;
                }
            }
        }
        throw trouble(
                open,
                Trouble.NO_ANSWER,
                "%s: the board did not answer '%s' in %d x %d ms. Check cable and supply of the board.",
                open.name(),
                words(message),
                tries,
                timing.answer().toMillis());
    }

    private boolean answered(Line open, int asked, HostMessage message) throws StandException {
        Optional<BoardMessage> answer = heard.stream()
                .filter(m -> (m instanceof Acknowledge a && a.answered() == asked)
                        || (m instanceof Refuse r && r.answered() == asked))
                .findFirst();
        if (answer.isEmpty()) {
            return false;
        }
        heard.remove(answer.get());
        if (answer.get() instanceof Refuse refuse) {
            throw trouble(
                    open, Trouble.REFUSED, "%s: the board refused '%s': %s", open.name(), words(message), why(refuse));
        }
        return true;
    }

    private static String why(Refuse refuse) {
        return switch (refuse.reason()) {
            case UNKNOWN_TYPE ->
                "its firmware does not know this message. Load the firmware of this program's version.";
            case WRONG_LENGTH, OUT_OF_RANGE ->
                "it finds the message wrong (%s, detail %d). Load the firmware of this program's version."
                        .formatted(words(refuse.reason()), refuse.detail());
            case NOT_ARMED -> "the stand is not armed. Start the run again.";
            case WRONG_BOOT_ID -> "it has started anew since it said hello. Open the stand again.";
            case INPUT_OPEN -> openInputs(refuse.detail());
        };
    }

    private static String openInputs(int bits) {
        boolean stopOpen = (bits & 1) == 0;
        boolean guardOpen = (bits & 2) == 0;
        if (stopOpen && guardOpen) {
            return "the emergency stop is pressed and the guard is open. Release the one, close the other, start again.";
        }
        return stopOpen
                ? "the emergency stop is pressed or its loop is open. Release it and start again."
                : "the guard is open. Close it and start again.";
    }

    private static String words(RefuseReason reason) {
        return reason == RefuseReason.WRONG_LENGTH ? "wrong length" : "out of range";
    }

    private static String words(HostMessage message) {
        return message.type().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private int send(Line open, HostMessage message) throws StandException {
        int number = sequence.getAndIncrement() & 0xFFFF;
        open.send(FrameEncoder.encode(message, number));
        return number;
    }

    /** Lets bytes in until some came, the time is up, or the next sign of life is due; sends that. */
    private void pump(Line open, long until) throws StandException {
        long now = open.nanoTime();
        long keepAlive = timing.keepAlive().toNanos();
        if (armed && now - lastKeepAlive >= keepAlive) {
            send(open, new KeepAlive());
            lastKeepAlive = now;
        }
        long wait = until - now;
        if (armed) {
            wait = Math.min(wait, lastKeepAlive + keepAlive - now);
        }
        int count = open.receive(buffer, Duration.ofNanos(Math.max(1, wait)));
        decoder.receive(buffer, 0, count);
        if (heardSample) {
            lastSample = open.nanoTime();
            heardSample = false;
        }
    }

    private void take(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof BoardMessage message) {
            if (message instanceof Identity identity) {
                helloAnswer = identity;
            } else {
                heard.add(message);
                heardSample |= message instanceof Sample;
            }
        } else if (received instanceof Received.Foreign other) {
            other.board().ifPresent(board -> foreign = board);
        }
        // Samples that were dropped or malformed show as gaps in the board's time; the run counts them there.
    }

    private Optional<StandSignal> signal(Line open, BoardMessage message) throws StandException {
        Session current = session(open);
        if (message instanceof Sample raw) {
            org.pumpwright.host.trace.Sample sample = current.timeline().sample(raw);
            if (armed && !sample.armed()) {
                armed = false;
                return Optional.of(new StandSignal.MadeSafe(
                        StandSignal.Cause.UNKNOWN,
                        sample.boardNanos(),
                        "the board made safe, its reason was lost on the line"));
            }
            return Optional.of(new StandSignal.Measured(sample));
        }
        if (message instanceof Event event) {
            return event(open, current, event);
        }
        // A late answer to a request that was sent again.
        return Optional.empty();
    }

    private Optional<StandSignal> event(Line open, Session current, Event event) throws StandException {
        if (event.kind() == EventKind.STARTED) {
            armed = false;
            throw trouble(
                    open,
                    Trouble.BOARD_RESET,
                    "%s: the board has started anew (%s). Check its supply and the cable, then start the run again.",
                    open.name(),
                    new org.pumpwright.protocol.ResetCause(event.detail() & 0xF).describe());
        }
        if (event.kind() == EventKind.MADE_SAFE) {
            armed = false;
            long nanos = current.timeline().nanosNear(event.time());
            return Optional.of(SafeCauses.signal(event, nanos, current.board(), description.channels()));
        }
        return Optional.empty();
    }

    private void checkNotSilent(Line open) throws StandException {
        if (open.nanoTime() - lastSample > timing.silence().toNanos()) {
            throw trouble(
                    open,
                    Trouble.SILENT,
                    "%s: no sample for %d ms. Check the board's supply and the cable, then start the run again.",
                    open.name(),
                    timing.silence().toMillis());
        }
    }

    private Line opened() {
        Line open = line;
        if (open == null) {
            throw new IllegalStateException("the stand is not open");
        }
        return open;
    }

    private Session session(Line open) {
        Session current = session;
        if (current == null) {
            throw new IllegalStateException(open.name() + ": no board has said who it is");
        }
        return current;
    }

    private static StandException trouble(Line open, Trouble trouble, String format, Object... args) {
        return new StandException(trouble, open.name(), String.format(Locale.ROOT, format, args));
    }
}
