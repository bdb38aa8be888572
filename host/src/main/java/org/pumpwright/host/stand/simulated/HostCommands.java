package org.pumpwright.host.stand.simulated;

import java.util.List;
import java.util.Optional;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BlobCommit;
import org.pumpwright.protocol.BlobRead;
import org.pumpwright.protocol.BlobWrite;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Dither;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.EventsFrom;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.ReadLimits;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.SelfTest;
import org.pumpwright.protocol.SelfTestPart;
import org.pumpwright.protocol.SelfTestResult;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.Tighten;
import org.pumpwright.protocol.Windows;

/**
 * Obeys or refuses what a sound host frame asks. A refusal names the first reason in the protocol's order: boot id,
 * locked, state, busy, inputs, contactor. Confined to the run thread.
 */
final class HostCommands {
    private final Board board;
    private final Safety safety;
    private final LimitsWatch limits;
    private final EventLog events;
    private final BlobStore blobs;
    private final List<DriveOutput> drives;
    private Optional<Acknowledge> whenStored = Optional.empty();

    /** What the commands ask of the rest of the board. */
    interface Board {
        void send(BoardMessage message);

        void sendIdentity();

        long bootId();

        void stream(Stream stream);

        void windows(Windows windows);
    }

    HostCommands(
            Board board,
            Safety safety,
            LimitsWatch limits,
            EventLog events,
            BlobStore blobs,
            List<DriveOutput> drives) {
        this.board = board;
        this.safety = safety;
        this.limits = limits;
        this.events = events;
        this.blobs = blobs;
        this.drives = drives;
    }

    void obey(int number, HostMessage message) {
        Optional<Refuse> refusal = refusal(number, message);
        if (refusal.isPresent()) {
            board.send(refusal.get());
        } else if (message instanceof Hello) {
            board.sendIdentity();
        } else if (message instanceof ReadLimits) {
            board.send(limits.present());
        } else if (message instanceof Tighten tighten) {
            limits.tighten(tighten.limit(), tighten.value());
            board.send(limits.present());
        } else if (message instanceof BlobRead read) {
            board.send(blobs.read(read));
        } else if (message instanceof SelfTest) {
            board.send(selfTest());
        } else {
            carryOut(number, message);
        }
    }

    /** Sends the answer to a write once its bytes are stored. */
    void millisecond() {
        blobs.millisecond();
        if (!blobs.isBusy()) {
            whenStored.ifPresent(board::send);
            whenStored = Optional.empty();
        }
    }

    void reset() {
        whenStored = Optional.empty();
    }

    private Optional<Refuse> refusal(int number, HostMessage message) {
        if (message instanceof Arm arm) {
            return armRefusal(number, arm);
        }
        if (message instanceof Drive drive) {
            return movingRefusal(number, drive, drive.channel());
        }
        if (message instanceof Dither dither) {
            return movingRefusal(number, dither, dither.channel());
        }
        if (message instanceof Tighten tighten) {
            long present = limits.present().of(tighten.limit());
            boolean widens = tighten.limit().wouldWiden(tighten.value(), present);
            return refuseIf(widens, number, message, RefuseReason.WOULD_WIDEN, (int) present);
        }
        if (message instanceof SelfTest) {
            return refuseIf(moving(), number, message, RefuseReason.NOT_SAFE, state().code());
        }
        if (message instanceof BlobWrite || message instanceof BlobCommit) {
            return refuseIf(moving(), number, message, RefuseReason.NOT_SAFE, state().code())
                    .or(() -> refuseIf(blobs.isBusy(), number, message, RefuseReason.BUSY, 0));
        }
        return Optional.empty();
    }

    private Optional<Refuse> armRefusal(int number, Arm arm) {
        Inputs inputs = safety.inputs();
        boolean already = moving();
        return refuseIf(arm.bootId() != board.bootId(), number, arm, RefuseReason.WRONG_BOOT_ID, 0)
                .or(() -> refuseIf(state() == BoardState.LOCKED, number, arm, RefuseReason.LOCKED, safety.failed()))
                .or(() ->
                        refuseIf(!already && !inputs.allClosed(), number, arm, RefuseReason.INPUT_OPEN, inputs.bits()))
                .or(() -> refuseIf(
                        !already && inputs.contactorFeedbackClosed(),
                        number,
                        arm,
                        RefuseReason.CONTACTOR_CLOSED,
                        inputs.bits()));
    }

    private Optional<Refuse> movingRefusal(int number, HostMessage message, int channel) {
        return refuseIf(channel >= drives.size(), number, message, RefuseReason.OUT_OF_RANGE, 1)
                .or(() -> refuseIf(state() == BoardState.LOCKED, number, message, RefuseReason.LOCKED, safety.failed()))
                .or(() ->
                        refuseIf(state() != BoardState.ARMED, number, message, RefuseReason.NOT_ARMED, state().code()));
    }

    private static Optional<Refuse> refuseIf(
            boolean so, int number, HostMessage message, RefuseReason reason, int detail) {
        return so ? Optional.of(new Refuse(number, message.type().code(), reason, detail)) : Optional.empty();
    }

    private void carryOut(int number, HostMessage message) {
        Acknowledge done = new Acknowledge(number, message.type().code());
        if (message instanceof BlobWrite write) {
            blobs.write(write);
            whenStored = Optional.of(done);
            return;
        }
        if (message instanceof BlobCommit commit) {
            commit(number, commit, done);
            return;
        }
        if (message instanceof Arm && !moving()) {
            safety.arm();
        } else if (message instanceof Drive drive) {
            drives.get(drive.channel()).set(Math.toIntExact(drive.duty()), drive.ramp());
        } else if (message instanceof Stream stream) {
            board.stream(stream);
        } else if (message instanceof Windows windows) {
            board.windows(windows);
        } else if (message instanceof MakeSafe) {
            safety.makeSafe(SafeReason.HOST_ASKED, 0);
        } else if (message instanceof EventsFrom from) {
            events.from(from.number()).forEach(board::send);
        }
        // A dither needs no more than its answer: its mean is zero, and the plant follows nothing that fast.
        if (!(message instanceof KeepAlive)) {
            board.send(done);
        }
    }

    private void commit(int number, BlobCommit commit, Acknowledge done) {
        if (blobs.commit(commit)) {
            whenStored = Optional.of(done);
        } else {
            board.send(new Refuse(number, commit.type().code(), RefuseReason.NOT_STORED, 0));
        }
    }

    private SelfTestResult selfTest() {
        int feedback = SelfTestPart.CONTACTOR_FEEDBACK.bit();
        int tried = feedback | SelfTestPart.STORED_BLOBS.bit() | SelfTestPart.CLOCK.bit();
        boolean closed = safety.inputs().contactorFeedbackClosed();
        return new SelfTestResult(tried, closed ? feedback : 0);
    }

    private boolean moving() {
        return state() == BoardState.ARMED || state() == BoardState.PROVING;
    }

    private BoardState state() {
        return safety.state();
    }
}
