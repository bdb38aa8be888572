package org.pumpwright.host.stand.wire;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
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
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.EventsFrom;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.ReadLimits;
import org.pumpwright.protocol.ResetCause;

/**
 * A stand on a byte line. The line is pumped by the thread that calls {@link #await} and by nothing else, so the sign of
 * life proves that the run itself is alive: when it hangs, the board makes itself safe.
 *
 * <p>Confined to the run thread, but for {@link #makeSafe}.
 */
public final class WireStand implements Stand {
    private static final int MOST_RAMP = 65_535;

    /** The board proves its contactor in 200 ms; three times that is for the line and a busy PC. */
    private static final Duration PROOF = Duration.ofMillis(600);

    private final StandDescription description;
    private final Line.Opener opener;
    private final WireTiming timing;

    private volatile @Nullable Session session;

    /** What holds for one boot of the board. */
    private record Session(Conversation talk, Identity board, Timeline timeline, SafeCauses causes) {}

    /**
     * A stand that is not yet opened.
     *
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
        Line line = opener.open();
        try {
            Conversation talk = new Conversation(line, timing);
            Identity board = talk.hello();
            checkExpected(board, line);
            checkChannels(board, line);
            BoardMessage answer = talk.ask(new ReadLimits(), timing.tries(), m -> m instanceof Limits);
            Limits limits = answer instanceof Limits told ? told : Limits.widest();
            session = new Session(talk, board, new Timeline(board), new SafeCauses(limits, description.channels()));
            // A board that an earlier host left armed is safe now; what it said before that is of no use.
            talk.request(new MakeSafe(), timing.tries());
            talk.forget(message -> true);
            talk.request(timing.stream(), timing.tries());
            talk.expectSamples();
            return identity(board, limits);
        } catch (StandException e) {
            session = null;
            line.close();
            throw e;
        }
    }

    @Override
    public void arm() throws StandException {
        Session now = session();
        Conversation talk = now.talk();
        // Begun before the board is asked, so that a make-safe that comes meanwhile ends them, even if its frame gets
        // lost.
        talk.beginSignsOfLife();
        // What happened before is no answer to this.
        talk.forget(message -> message instanceof Event);
        askToArm(now);
        Optional<BoardMessage> proof = talk.waitFor(m -> m instanceof Event, PROOF);
        if (proof.isPresent() && proof.get() instanceof Event event && event.kind() == EventKind.ARMED) {
            // Samples from before would look as if the board had made safe since.
            talk.forget(Timeline::isSample);
            return;
        }
        talk.makeSafe();
        if (proof.isPresent() && proof.get() instanceof Event event) {
            if (event.kind() == EventKind.STARTED) {
                throw startedAnew(talk.line(), event);
            }
            throw trouble(
                    talk.line(),
                    Trouble.REFUSED,
                    "%s: the stand did not arm: %s.",
                    talk.line().name(),
                    now.causes().signal(event, 0).words());
        }
        throw trouble(
                talk.line(),
                Trouble.NO_ANSWER,
                "%s: the board did not say within %d ms that it is armed. Check the cable, then start again.",
                talk.line().name(),
                PROOF.toMillis());
    }

    private static void askToArm(Session now) throws StandException {
        try {
            // Asked once only: a repeated arm could undo a make-safe that came between.
            now.talk().request(new Arm(now.board().bootId()), 1);
        } catch (StandException e) {
            now.talk().endSignsOfLife();
            throw e;
        }
    }

    @Override
    public void drive(int drive, Duty duty, double fullSwingSeconds) throws StandException {
        long ramp = Math.round(Duty.FULL_PARTS / (fullSwingSeconds * 1000));
        int perMilli = (int) Math.max(1, Math.min(MOST_RAMP, ramp));
        session().talk().request(new Drive(drive, duty.parts(), perMilli), timing.tries());
    }

    @Override
    public Optional<StandSignal> await(Duration atMost) throws StandException {
        Session now = session();
        long until = now.talk().nanoTime() + atMost.toNanos();
        while (true) {
            Optional<BoardMessage> next = now.talk().next(until);
            Optional<StandSignal> signal = next.isPresent() ? signal(now, next.get()) : Optional.empty();
            if (signal.isPresent() || (next.isEmpty() && now.talk().nanoTime() >= until)) {
                return signal;
            }
        }
    }

    /**
     * What the line has brought since the stand was last opened.
     *
     * @throws IllegalStateException when the stand is not open
     */
    public LinkCounts link() {
        return session().talk().counts();
    }

    @Override
    public void makeSafe() {
        Session now = session;
        if (now != null) {
            now.talk().makeSafe();
        }
    }

    @Override
    public void close() {
        Session now = session;
        if (now != null) {
            now.talk().makeSafe();
            session = null;
            now.talk().line().close();
        }
    }

    private static Optional<StandSignal> signal(Session now, BoardMessage message) throws StandException {
        Optional<Sample> sample = now.timeline().sample(message);
        if (sample.isPresent()) {
            return Optional.of(measured(now, sample.get()));
        }
        return message instanceof Event event ? event(now, event) : Optional.empty();
    }

    private static StandSignal measured(Session now, Sample sample) throws StandException {
        if (now.talk().givesSignsOfLife() && !sample.armed()) {
            now.talk().endSignsOfLife();
            return reasonAskedFor(now, sample);
        }
        return new StandSignal.Measured(sample);
    }

    /**
     * The board is safe and its event has not come: it holds the last few, and sends them again. They are asked for from the
     * one after the newest that was heard, because a short sample does not tell the number of the newest.
     */
    private static StandSignal reasonAskedFor(Session now, Sample sample) throws StandException {
        Conversation talk = now.talk();
        try {
            talk.request(new EventsFrom(talk.nextEvent()), 1);
        } catch (StandException e) {
            if (e.trouble() != Trouble.NO_ANSWER && e.trouble() != Trouble.REFUSED) {
                throw e;
            }
        }
        Optional<BoardMessage> event = talk.waitFor(WireStand::isReason, Duration.ZERO);
        if (event.isPresent() && event.get() instanceof Event told) {
            // It may have come twice: late, and again because it was asked for.
            talk.forget(m -> m instanceof Event again && again.number() == told.number());
            return now.causes().signal(told, now.timeline().nanosNear(told.time()));
        }
        return new StandSignal.MadeSafe(
                StandSignal.Cause.UNKNOWN, sample.boardNanos(), "the board made safe, its reason was lost on the line");
    }

    private static boolean isReason(BoardMessage message) {
        return message instanceof Event event
                && (event.kind() == EventKind.MADE_SAFE || event.kind() == EventKind.LOCKED);
    }

    private static Optional<StandSignal> event(Session now, Event event) throws StandException {
        Line line = now.talk().line();
        return switch (event.kind()) {
            case STARTED -> {
                now.talk().endSignsOfLife();
                throw startedAnew(line, event);
            }
            case MADE_SAFE, LOCKED -> {
                now.talk().endSignsOfLife();
                yield Optional.of(now.causes().signal(event, now.timeline().nanosNear(event.time())));
            }
            case ARMED -> Optional.empty();
        };
    }

    private static StandException startedAnew(Line line, Event event) {
        return trouble(
                line,
                Trouble.BOARD_RESET,
                "%s: the board has started anew (%s). Check its supply and the cable, then start the run again.",
                line.name(),
                new ResetCause(event.detail() & 0xF).describe());
    }

    private void checkExpected(Identity board, Line line) throws StandException {
        Optional<String> expected =
                description.connection() instanceof Connection.Serial serial ? serial.uniqueId() : Optional.empty();
        String found = board.uniqueId().toString();
        if (expected.isPresent() && !expected.get().equalsIgnoreCase(found)) {
            throw trouble(
                    line,
                    Trouble.OTHER_BOARD,
                    "%s: the board there has the id %s, stand '%s' is described with %s. Choose the right port, or"
                            + " correct unique_id in the stand's file.",
                    line.name(),
                    found,
                    description.id(),
                    expected.get());
        }
    }

    private void checkChannels(Identity board, Line line) throws StandException {
        Channels channels = description.channels();
        int meters = highest(channels.meters().stream(), MeterChannel::index);
        int analogs = highest(channels.analogs().stream(), AnalogChannel::index);
        if (meters >= board.channels().meters() || analogs >= board.channels().analogs()) {
            throw trouble(
                    line,
                    Trouble.OTHER_BOARD,
                    "%s: the board has %d meters and %d analogue channels, the file of stand '%s' names meter %d and analogue"
                            + " channel %d (counted from 0). Correct the file, or use the board it describes.",
                    line.name(),
                    board.channels().meters(),
                    board.channels().analogs(),
                    description.id(),
                    meters,
                    analogs);
        }
    }

    private static <T> int highest(Stream<T> channels, ToIntFunction<T> index) {
        return channels.mapToInt(index).max().orElse(-1);
    }

    private static StandIdentity identity(Identity board, Limits limits) {
        return new StandIdentity(
                board.kind().toString(),
                board.uniqueId().toString(),
                board.firmware().toString(),
                board.bootId(),
                board.resetCause().describe(),
                board.pwmHz().get(0),
                Math.toIntExact(limits.linkTimeOutMs()));
    }

    private Session session() {
        Session now = session;
        if (now == null) {
            throw new IllegalStateException("the stand is not open");
        }
        return now;
    }

    private static StandException trouble(Line line, Trouble trouble, String format, Object... args) {
        return new StandException(trouble, line.name(), String.format(Locale.ROOT, format, args));
    }
}
