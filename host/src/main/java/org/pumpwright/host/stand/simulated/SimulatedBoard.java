package org.pumpwright.host.stand.simulated;

import java.io.ByteArrayOutputStream;
import java.util.List;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.BoardKind;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.ChannelCounts;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.FirmwareVersion;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Inputs;
import org.pumpwright.protocol.KeepAlive;
import org.pumpwright.protocol.MakeSafe;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.OverCurrentRule;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.ResetCause;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.UniqueId;

/**
 * A board as {@code firmware-protocol/spec/protocol.md} describes it, in virtual time. Bytes in, bytes out. Confined to
 * the run thread.
 */
public final class SimulatedBoard {
    /** PWM frequency of the simulated drive, Hz: that of the microcontroller board, so that one curve serves both. */
    public static final int PWM_HZ = 7812;

    private static final int RAMP_PER_MILLI = 131;
    private static final int LINK_TIME_OUT_MILLIS = 750;
    private static final int OVER_CURRENT_MILLIS = 50;
    private static final double OVER_CURRENT_AMPS = 30;
    private static final long MASK_U32 = 0xFFFF_FFFFL;
    private static final long MILLI_NANOS = 1_000_000;

    private final SimulatedPins pins;
    private final OverCurrentRule overCurrent;
    private final FrameDecoder decoder = new FrameDecoder(this::take);
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private long nowNanos;
    private long bootId = 1;
    private ResetCause resetCause = new ResetCause(ResetCause.POWER_ON);
    private int sequence;
    private int events;
    private boolean armed;
    private long lastHeardNanos;
    private int overCurrentMillis;
    private int overCurrentPeak;
    private Inputs inputs = new Inputs(true, true);
    private int streamMillis;
    private int millisToSample;
    private int applied;
    private int target;
    private int rampPerMilli = RAMP_PER_MILLI;

    /**
     * @param plant what hangs on the board's pins
     * @param channels how its readings become codes
     */
    public SimulatedBoard(Plant plant, Channels channels) {
        pins = new SimulatedPins(plant, channels);
        overCurrent = channels.analog(ChannelRole.SUPPLY_AMPS)
                .map(SimulatedBoard::rule)
                .orElse(OverCurrentRule.NONE);
        send(new Event(++events, 0, EventKind.STARTED, SafeReason.RESET, resetCause.bits()));
    }

    private static OverCurrentRule rule(AnalogChannel amps) {
        return new OverCurrentRule(amps.index(), amps.code(OVER_CURRENT_AMPS), OVER_CURRENT_MILLIS);
    }

    /** Bytes from the host. */
    public void receive(byte[] bytes) {
        decoder.receive(bytes);
    }

    /** Lets a millisecond pass. */
    public void millisecond() {
        ramp();
        pins.millisecond(nowNanos, new Duty(applied), armed);
        nowNanos += MILLI_NANOS;
        watch();
        if (streamMillis > 0 && --millisToSample <= 0) {
            millisToSample = streamMillis;
            sendSample();
        }
    }

    /** Takes the bytes sent since the last call. */
    public byte[] takeOutput() {
        byte[] bytes = out.toByteArray();
        out.reset();
        return bytes;
    }

    public boolean hasOutput() {
        return out.size() > 0;
    }

    /** Opens or closes the emergency-stop loop and the guard. */
    public void setInputs(boolean emergencyStopClosed, boolean guardClosed) {
        inputs = new Inputs(emergencyStopClosed, guardClosed);
    }

    /** Starts the board anew, as a watchdog or a sagging supply would. */
    public void reset(int cause) {
        bootId++;
        resetCause = new ResetCause(cause);
        armed = false;
        applied = 0;
        target = 0;
        streamMillis = 0;
        sequence = 0;
        events = 0;
        pins.reset();
        decoder.resynchronise();
        send(new Event(++events, ticks(), EventKind.STARTED, SafeReason.RESET, resetCause.bits()));
    }

    private void ramp() {
        int step = Math.max(-rampPerMilli, Math.min(rampPerMilli, target - applied));
        applied = armed ? applied + step : 0;
    }

    private void watch() {
        if (!armed) {
            return;
        }
        if (!inputs.emergencyStopClosed()) {
            makeSafe(SafeReason.EMERGENCY_STOP, 0);
        } else if (!inputs.guardClosed()) {
            makeSafe(SafeReason.GUARD_OPEN, 0);
        } else if (nowNanos - lastHeardNanos > LINK_TIME_OUT_MILLIS * MILLI_NANOS) {
            makeSafe(SafeReason.LINK_LOST, 0);
        } else {
            watchCurrent();
        }
    }

    private void watchCurrent() {
        if (!overCurrent.isOn()) {
            return;
        }
        int now = pins.now(overCurrent.channel());
        boolean above = now > overCurrent.limit();
        overCurrentMillis = above ? overCurrentMillis + 1 : 0;
        overCurrentPeak = above ? Math.max(overCurrentPeak, now) : 0;
        if (overCurrentMillis > overCurrent.timeMs()) {
            makeSafe(SafeReason.OVER_CURRENT, overCurrentPeak);
        }
    }

    private void makeSafe(SafeReason reason, int detail) {
        applied = 0;
        target = 0;
        if (armed) {
            armed = false;
            send(new Event(nextEvent(), ticks(), EventKind.MADE_SAFE, reason, detail));
        }
    }

    private void take(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof HostMessage message) {
            lastHeardNanos = nowNanos;
            obey(good.sequence(), message);
        } else if (received instanceof Received.Malformed malformed
                && malformed.type() < MessageType.FIRST_BOARD_CODE) {
            lastHeardNanos = nowNanos;
            send(malformed.refusal());
        } else if (received instanceof Received.Foreign foreign && foreign.isHello()) {
            send(identity());
        }
    }

    private void obey(int number, HostMessage message) {
        if (message instanceof Hello) {
            send(identity());
        } else if (message instanceof Arm arm) {
            arm(number, arm);
        } else if (message instanceof Drive drive) {
            drive(number, drive);
        } else if (message instanceof Stream stream) {
            streamMillis = stream.periodMs();
            millisToSample = streamMillis;
            acknowledge(number, message);
        } else if (message instanceof MakeSafe) {
            makeSafe(SafeReason.HOST_ASKED, 0);
            acknowledge(number, message);
        } else if (!(message instanceof KeepAlive)) {
            throw new IllegalStateException("a host message without a rule: " + message);
        }
    }

    private void arm(int number, Arm arm) {
        if (arm.bootId() != bootId) {
            refuse(number, arm, RefuseReason.WRONG_BOOT_ID, 0);
        } else if (armed) {
            acknowledge(number, arm);
        } else if (!inputs.allClosed()) {
            refuse(number, arm, RefuseReason.INPUT_OPEN, inputs.bits());
        } else {
            armed = true;
            applied = 0;
            target = 0;
            overCurrentMillis = 0;
            acknowledge(number, arm);
            send(new Event(nextEvent(), ticks(), EventKind.ARMED, SafeReason.NONE, 0));
        }
    }

    private void drive(int number, Drive drive) {
        if (drive.channel() != 0) {
            refuse(number, drive, RefuseReason.OUT_OF_RANGE, 1);
        } else if (!armed) {
            refuse(number, drive, RefuseReason.NOT_ARMED, 0);
        } else {
            target = Math.toIntExact(drive.duty());
            rampPerMilli = drive.ramp() == 0 ? RAMP_PER_MILLI : Math.min(drive.ramp(), RAMP_PER_MILLI);
            acknowledge(number, drive);
        }
    }

    private Identity identity() {
        return new Identity(
                UniqueId.NONE,
                new FirmwareVersion(0, 1, 0),
                bootId,
                resetCause,
                new ChannelCounts(1, 1, Sample.ANALOGS),
                1_000_000_000L / SimulatedPins.TICK_NANOS,
                List.of(PWM_HZ, 0),
                RAMP_PER_MILLI,
                LINK_TIME_OUT_MILLIS,
                overCurrent,
                new BoardKind("simulate"));
    }

    private void sendSample() {
        int conversions = pins.conversions();
        send(new Sample(
                ticks(),
                pins.meters(),
                pins.takeWindows(),
                conversions,
                List.of((long) applied, 0L),
                armed ? BoardState.ARMED : BoardState.SAFE,
                inputs,
                events));
    }

    private void acknowledge(int number, HostMessage message) {
        send(new Acknowledge(number, message.type().code()));
    }

    private void refuse(int number, HostMessage message, RefuseReason reason, int detail) {
        send(new Refuse(number, message.type().code(), reason, detail));
    }

    private void send(BoardMessage message) {
        out.writeBytes(FrameEncoder.encode(message, sequence));
        sequence = (sequence + 1) & 0xFFFF;
    }

    private int nextEvent() {
        events = (events + 1) & 0xFFFF;
        return events;
    }

    private long ticks() {
        return nowNanos / SimulatedPins.TICK_NANOS & MASK_U32;
    }
}
