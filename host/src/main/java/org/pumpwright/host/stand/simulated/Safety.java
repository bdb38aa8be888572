package org.pumpwright.host.stand.simulated;

import java.util.List;
import java.util.Optional;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.SelfTestPart;

/**
 * The board's states and every way from one to another; nothing else pulls the contactor or moves a drive. Looks once a
 * millisecond. Confined to the run thread.
 */
final class Safety {
    private static final int PROOF_MILLIS = 200;
    private static final int CONVERTER_MILLIS = 50;
    private static final int CONTACTOR_DID_NOT_CLOSE = 0;
    private static final int CONTACTOR_OPENED = 1;

    private final Contactor contactor = new Contactor();
    private final List<InputFilter> inputs =
            List.of(new InputFilter(), new InputFilter(), new InputFilter(), new InputFilter());
    private final InputFilter feedback = new InputFilter();
    private final List<DriveOutput> drives;
    private final LimitsWatch limits;
    private final Told told;

    private BoardState state = BoardState.SAFE;
    private int stateMillis;
    private boolean letGo;
    private int letGoMillis;
    private int silentMillis;
    private int staleMillis;
    private int failed;

    /** Hears of each change of state. */
    @FunctionalInterface
    interface Told {
        void event(EventKind kind, SafeReason reason, int detail);
    }

    Safety(List<DriveOutput> drives, LimitsWatch limits, Told told) {
        this.drives = drives;
        this.limits = limits;
        this.told = told;
        feedback.set(false);
        feedback.read();
        feedback.read();
    }

    BoardState state() {
        return state;
    }

    Contactor contactor() {
        return contactor;
    }

    /** What failed and locked the board, as the bits of {@link SelfTestPart}; 0 when nothing did. */
    int failed() {
        return failed;
    }

    Inputs inputs() {
        return new Inputs(
                inputs.get(0).closed(),
                inputs.get(1).closed(),
                inputs.get(2).closed(),
                inputs.get(3).closed(),
                feedback.closed());
    }

    /** What the contacts are from now on: emergency stop, guard, level, override. */
    void wire(boolean emergencyStop, boolean guard, boolean level, boolean override) {
        inputs.get(0).set(emergencyStop);
        inputs.get(1).set(guard);
        inputs.get(2).set(level);
        inputs.get(3).set(override);
    }

    /** A sound frame came from the host. */
    void signOfLife() {
        silentMillis = 0;
    }

    /** Pulls the contactor; the caller has made sure that nothing stands against it. */
    void arm() {
        enter(BoardState.PROVING);
        limits.begin();
        contactor.pull(true);
        letGo = false;
        staleMillis = 0;
    }

    /** To safe at once, if there is anything to make safe. */
    void makeSafe(SafeReason reason, int detail) {
        drives.forEach(DriveOutput::off);
        if (state != BoardState.ARMED && state != BoardState.PROVING) {
            return;
        }
        letGo();
        enter(BoardState.SAFE);
        told.event(EventKind.MADE_SAFE, reason, detail);
    }

    private void letGo() {
        contactor.pull(false);
        letGo = true;
        letGoMillis = 0;
    }

    /** As after power-up: whatever was, the contactor falls and nothing is remembered. */
    void reset() {
        drives.forEach(DriveOutput::off);
        contactor.pull(false);
        enter(BoardState.SAFE);
        letGo = false;
        failed = 0;
        silentMillis = 0;
    }

    /**
     * One millisecond, with what the board reads at its end.
     *
     * @param millisSinceReading for how long the converter has given no new reading
     */
    void millisecond(LimitsWatch.Moment now, int millisSinceReading) {
        contactor.millisecond();
        inputs.forEach(InputFilter::read);
        feedback.set(contactor.feedbackClosed());
        feedback.read();
        stateMillis++;
        silentMillis++;
        if (state == BoardState.SAFE || state == BoardState.LOCKED) {
            proveLetGo();
            return;
        }
        staleMillis = Math.min(millisSinceReading, staleMillis + 1);
        watch(now);
    }

    private void proveLetGo() {
        if (!letGo || ++letGoMillis < PROOF_MILLIS) {
            return;
        }
        letGo = false;
        if (feedback.closed()) {
            lock(SelfTestPart.CONTACTOR_FEEDBACK);
        }
    }

    /** A second fault of a locked board is kept for its refusals, but it is no second event. */
    private void lock(SelfTestPart part) {
        failed |= part.bit();
        if (state != BoardState.LOCKED) {
            enter(BoardState.LOCKED);
            told.event(EventKind.LOCKED, SafeReason.HARDWARE, failed);
        }
    }

    /** Without new readings the limits would go on judging nothing. */
    private void lockForConverter() {
        drives.forEach(DriveOutput::off);
        letGo();
        lock(SelfTestPart.CONVERTER);
    }

    private void watch(LimitsWatch.Moment now) {
        Optional<LimitsWatch.Trip> trip = limits.millisecond(now);
        Optional<SafeReason> open = openInput();
        if (open.isPresent()) {
            makeSafe(open.get(), 0);
        } else if (trip.isPresent()) {
            makeSafe(trip.get().reason(), trip.get().reading());
        } else if (silentMillis > limits.present().linkTimeOutMs()) {
            makeSafe(SafeReason.LINK_LOST, 0);
        } else if (staleMillis >= CONVERTER_MILLIS) {
            lockForConverter();
        } else {
            watchContactor();
        }
    }

    private Optional<SafeReason> openInput() {
        Inputs now = inputs();
        if (!now.emergencyStopClosed()) {
            return Optional.of(SafeReason.EMERGENCY_STOP);
        }
        if (!now.guardClosed()) {
            return Optional.of(SafeReason.GUARD_OPEN);
        }
        if (!now.levelClosed()) {
            return Optional.of(SafeReason.LEVEL_LOW);
        }
        return now.overrideReturned() ? Optional.empty() : Optional.of(SafeReason.OVERRIDE_IN);
    }

    private void watchContactor() {
        if (state == BoardState.ARMED && !feedback.closed()) {
            makeSafe(SafeReason.CONTACTOR, CONTACTOR_OPENED);
        } else if (state == BoardState.PROVING && feedback.closed()) {
            enter(BoardState.ARMED);
            told.event(EventKind.ARMED, SafeReason.NONE, 0);
        } else if (state == BoardState.PROVING && stateMillis >= PROOF_MILLIS) {
            makeSafe(SafeReason.CONTACTOR, CONTACTOR_DID_NOT_CLOSE);
        }
    }

    private void enter(BoardState next) {
        state = next;
        stateMillis = 0;
    }
}
