package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.ReadLimits;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.Windows;

/** What a check works with: the board, short ways to ask it, and somebody who can make things happen to it. */
final class Trial {
    /** The most duty that is ever given to a real drive: a tenth, in 1/65536. */
    static final int LOW_DUTY = 6553;

    /** Line, board and PC between a moment on the board and its news here, or the other way. */
    static final Duration ON_THE_WAY = Duration.ofMillis(100);

    static final int SAFE_WITHIN_MILLIS = 20;
    static final int PROOF_MILLIS = 200;

    private static final Duration HELLO_PATIENCE = Duration.ofSeconds(3);
    private static final Duration START = Duration.ofSeconds(2);
    private static final Duration CONTACTOR_FALLS = Duration.ofMillis(60);
    private static final long MASK_U32 = 0xFFFF_FFFFL;
    private static final int MASK_U16 = 0xFFFF;

    private final Line line;
    private final Conversation talk;
    private final Provoker provoker;
    private final Set<Provocation.Cause> provoked = EnumSet.noneOf(Provocation.Cause.class);
    private int startsWanted;
    private Optional<Identity> identity = Optional.empty();

    Trial(Line line, Provoker provoker) {
        this.line = line;
        this.provoker = provoker;
        talk = new Conversation(line);
    }

    Conversation talk() {
        return talk;
    }

    /** Who answered the last hello. */
    Identity board() {
        return identity.orElseThrow(() -> new IllegalStateException("no board has said who it is"));
    }

    /** Whether drives above a tenth are allowed. */
    boolean toy() {
        return provoker.toy();
    }

    /**
     * Asks for the board until it answers.
     *
     * @throws StandException of kind {@code NO_ANSWER} when it does not within three seconds
     */
    Identity hello() throws StandException {
        long until = talk.nanoTime() + HELLO_PATIENCE.toNanos();
        while (talk.nanoTime() < until) {
            int mark = talk.mark();
            talk.send(Command.of(new Hello()));
            Optional<Heard> answer =
                    talk.await(mark, heard -> heard.message() instanceof Identity, Duration.ofMillis(200));
            if (answer.isPresent() && answer.get().message() instanceof Identity found) {
                identity = Optional.of(found);
                return found;
            }
        }
        throw new StandException(
                Trouble.NO_ANSWER,
                line.name(),
                line.name() + ": no board of protocol version 1 answered within 3 s. Check port, line speed, cable and"
                        + " the board's supply.");
    }

    /** Safe, silent, and heard to the end: where every check begins. */
    void calm() throws StandException {
        talk.stayAlive(false);
        talk.ask(Command.of(new MakeSafe()));
        talk.ask(Command.of(Stream.off()));
        talk.ask(Command.of(new Windows(0)));
        talk.listen(CONTACTOR_FALLS);
    }

    /** After a stop: asks the board for safe, gives the contactor time to fall, and tells whether the board obeyed. */
    boolean leftSafe() {
        try {
            talk.stayAlive(false);
            boolean obeyed = talk.ask(Command.of(new MakeSafe()))
                    .message()
                    .filter(Acknowledge.class::isInstance)
                    .isPresent();
            talk.listen(CONTACTOR_FALLS);
            return obeyed;
        } catch (StandException e) {
            // Whoever stopped the trial hears that nothing was heard any more.
            return false;
        }
    }

    void demand(boolean held, String evidence, Object... values) throws Broken {
        if (!held) {
            throw new Broken(String.format(Locale.ROOT, evidence, values));
        }
    }

    Answer ask(HostMessage message) throws StandException {
        return talk.ask(Command.of(message));
    }

    void acknowledged(HostMessage message) throws Broken, StandException {
        Answer answer = ask(message);
        demand(
                answer.message().filter(Acknowledge.class::isInstance).isPresent(),
                "acknowledge expected; %s",
                answer.words());
    }

    /** Demands a refusal for one reason, with this detail. */
    String refused(Command command, RefuseReason reason, int detail) throws Broken, StandException {
        Answer answer = talk.ask(command);
        demand(
                answer.message().orElse(null) instanceof Refuse refuse
                        && refuse.answeredType() == command.type()
                        && refuse.reason() == reason
                        && refuse.detail() == detail,
                "refuse (%s, detail %d) expected; %s",
                Say.of(reason),
                detail,
                answer.words());
        return answer.words();
    }

    Limits limits() throws Broken, StandException {
        Answer answer = ask(new ReadLimits());
        if (answer.message().orElse(null) instanceof Limits limits) {
            return limits;
        }
        throw new Broken("limits expected; " + answer.words());
    }

    /** Samples from now on, every so many milliseconds. */
    void stream(int millis) throws Broken, StandException {
        acknowledged(Stream.every(millis));
    }

    /** The next sample that comes. */
    Sample sample() throws Broken, StandException {
        return sample(talk.mark(), any -> true, Duration.ofMillis(1200))
                .orElseThrow(() -> new Broken("no sample within 1200 ms"));
    }

    Optional<Sample> sample(int mark, Predicate<Sample> wanted, Duration atMost) throws StandException {
        return talk.await(mark, heard -> heard.message() instanceof Sample sample && wanted.test(sample), atMost)
                .map(heard -> (Sample) heard.message());
    }

    /** The samples that come in so much time. */
    List<Sample> samples(Duration duration) throws StandException {
        int mark = talk.mark();
        talk.listen(duration);
        return all(Sample.class, mark);
    }

    /** Everything of one kind that came since a mark. */
    <M extends BoardMessage> List<M> all(Class<M> kind, int mark) {
        return talk.since(mark).stream()
                .map(Heard::message)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    Optional<Event> event(int mark, EventKind kind, Duration atMost) throws StandException {
        return talk.await(mark, heard -> heard.message() instanceof Event event && event.kind() == kind, atMost)
                .map(heard -> (Event) heard.message());
    }

    /** Demands that the board makes itself safe for a reason. */
    Event madeSafe(int mark, SafeReason reason, Duration atMost) throws Broken, StandException {
        Event event = event(mark, EventKind.MADE_SAFE, atMost.plus(ON_THE_WAY))
                .orElseThrow(() -> new Broken("no event 'made safe: %s' within %d ms"
                        .formatted(Say.of(reason), atMost.plus(ON_THE_WAY).toMillis())));
        demand(event.reason() == reason, "event 'made safe: %s' expected; %s", Say.of(reason), Say.of(event));
        return event;
    }

    /**
     * Arms, and stays alive from then on.
     *
     * @return the event that tells of it
     * @throws NotPossible when an input is open or the contactor is closed
     */
    Event arm() throws Broken, NotPossible, StandException {
        int mark = talk.mark();
        Answer answer = ask(new Arm(board().bootId()));
        if (answer.message().orElse(null) instanceof Refuse refuse
                && (refuse.reason() == RefuseReason.INPUT_OPEN || refuse.reason() == RefuseReason.CONTACTOR_CLOSED)) {
            throw new NotPossible("the board can't be armed: " + Say.of(refuse));
        }
        demand(
                answer.message().filter(Acknowledge.class::isInstance).isPresent(),
                "acknowledge expected; %s",
                answer.words());
        talk.stayAlive(true);
        return event(mark, EventKind.ARMED, Duration.ofMillis(PROOF_MILLIS).plus(ON_THE_WAY))
                .orElseThrow(() -> new Broken("no event 'armed' within "
                        + Duration.ofMillis(PROOF_MILLIS).plus(ON_THE_WAY).toMillis() + " ms of 'arm'; "
                        + events(mark)));
    }

    /** The events since a mark, in words. */
    String events(int mark) {
        List<String> words = all(Event.class, mark).stream().map(Say::of).toList();
        return words.isEmpty() ? "no event" : String.join("; ", words);
    }

    void drive(int duty, int ramp) throws Broken, NotPossible, StandException {
        if (board().channels().drives() == 0) {
            throw new NotPossible("the board has no drive");
        }
        acknowledged(new Drive(0, duty, ramp));
    }

    /** Milliseconds of the board from one of its times to a later one. */
    double millis(long from, long to) {
        return ((to - from) & MASK_U32) * 1000.0 / board().tickHz();
    }

    /** The same, negative when the second time is before the first. */
    double signedMillis(long from, long to) {
        return (int) (to - from) * 1000.0 / board().tickHz();
    }

    static int next(int eventNumber) {
        return (eventNumber + 1) & MASK_U16;
    }

    /** Makes something happen until the check is over. */
    void provoke(Provocation.Cause cause, int value) throws NotPossible, StandException {
        needs(cause);
        provoker.provoke(new Provocation(cause, value));
        provoked.add(cause);
    }

    /** Takes a provocation back: the input closed, the feedback, the reading and the meter by themselves. */
    void release(Provocation.Cause cause) throws StandException {
        if (provoked.remove(cause)) {
            provoker.provoke(new Provocation(cause, restValue(cause)));
        }
    }

    /** Takes everything back, and gives whoever does it the time it needs. */
    void releaseAll() throws StandException {
        boolean any = !provoked.isEmpty();
        for (Provocation.Cause cause : EnumSet.copyOf(provoked)) {
            release(cause);
        }
        if (any) {
            talk.listen(provoker.patience());
        }
    }

    /** Says that the check is not possible when this can't be made to happen. */
    void needs(Provocation.Cause cause) throws NotPossible {
        if (!provoker.can(cause)) {
            throw new NotPossible("nobody is here who can do it: " + cause.words());
        }
    }

    Duration patience() {
        return provoker.patience();
    }

    /** Lets the board start anew and says hello to it. */
    Event restart() throws Broken, NotPossible, StandException {
        needs(Provocation.Cause.RESTART);
        int mark = talk.mark();
        talk.stayAlive(false);
        provoker.provoke(new Provocation(Provocation.Cause.RESTART, 0));
        Event started = event(mark, EventKind.STARTED, provoker.patience().plus(START))
                .orElseThrow(() -> new Broken("no event 'started' after the reset"));
        startsWanted++;
        hello();
        return started;
    }

    /** Resets a test board, so that what one check left behind does not break the next. */
    void startAfresh() throws StandException {
        if (!provoker.toy()) {
            return;
        }
        try {
            restart();
        } catch (Broken | NotPossible e) {
            // The next check sees the board as it is.
            return;
        }
    }

    /** Whether the board started anew since this was last asked, without anybody having asked for it. */
    boolean startedByItself() {
        boolean surprise = talk.starts() != startsWanted;
        startsWanted = talk.starts();
        return surprise;
    }

    private static int restValue(Provocation.Cause cause) {
        return switch (cause) {
            case EMERGENCY_STOP, GUARD, LEVEL, OVERRIDE, CONVERTER -> 1;
            case FEEDBACK, VOLTS_CODE, AMPS_CODE, PRESSURE_CODE, METER_HZ, RESTART -> Provocation.AUTO;
        };
    }
}
