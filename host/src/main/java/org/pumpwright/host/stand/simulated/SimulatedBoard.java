package org.pumpwright.host.stand.simulated;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.AnalogRole;
import org.pumpwright.protocol.BoardKind;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.ChannelCounts;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.FirmwareVersion;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.ResetCause;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.ShortSample;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.UniqueId;
import org.pumpwright.protocol.Windows;
import org.pumpwright.protocol.line.Wire;

/**
 * A board as {@code firmware-protocol/spec/protocol.md} describes it, in virtual time. Bytes in, bytes out. Confined to
 * the run thread.
 */
public final class SimulatedBoard {
    /** PWM frequency of the simulated drive, Hz: that of the microcontroller board, so that one curve serves both. */
    public static final int PWM_HZ = 7812;

    /** PWM frequency of its valve drive, Hz. */
    public static final int VALVE_PWM_HZ = 7812;

    private static final int MASK_U16 = 0xFFFF;

    private final BoardTime time = new BoardTime();
    private final SimulatedPins pins;
    private final List<AnalogRole> roles;
    private final List<DriveOutput> drives = List.of(new DriveOutput(), new DriveOutput());
    private final LimitsWatch limits;
    private final EventLog events = new EventLog();
    private final BlobStore blobs = new BlobStore();
    private final Safety safety;
    private final HostCommands commands;
    private final FrameDecoder decoder = new FrameDecoder(this::take);
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private UniqueId uniqueId = UniqueId.NONE;
    private long bootId = 1;
    private ResetCause resetCause = new ResetCause(ResetCause.POWER_ON);
    private int sequence;
    private Stream stream = Stream.off();
    private int millisToSample;
    private int windowMillis;
    private int millisToWindow;

    /**
     * @param plant what hangs on the board's pins
     * @param channels how its readings become codes
     */
    public SimulatedBoard(Plant plant, Channels channels) {
        pins = new SimulatedPins(plant, channels, time);
        roles = roles(channels);
        limits = new LimitsWatch(OwnLimits.of(channels));
        safety = new Safety(drives, limits, this::tell);
        commands = new HostCommands(new Rest(), safety, limits, events, blobs, drives);
        tell(EventKind.STARTED, SafeReason.RESET, resetCause.bits());
    }

    private static List<AnalogRole> roles(Channels channels) {
        List<AnalogRole> roles = new ArrayList<>();
        for (int i = 0; i < Sample.ANALOGS; i++) {
            roles.add(AnalogRole.NONE);
        }
        channels.analogs().forEach(channel -> roles.set(channel.index(), role(channel.role())));
        return List.copyOf(roles);
    }

    private static AnalogRole role(ChannelRole role) {
        return switch (role) {
            case VOLTS_AT_PINS -> AnalogRole.VOLTS;
            case SUPPLY_AMPS -> AnalogRole.SUPPLY_AMPS;
            case OUTLET_PRESSURE -> AnalogRole.PRESSURE;
            case WATER_TEMPERATURE -> AnalogRole.TEMPERATURE;
        };
    }

    /** Bytes from the host. */
    public void receive(byte[] bytes) {
        decoder.receive(bytes);
    }

    /** Lets a millisecond pass. */
    public void millisecond() {
        drives.forEach(DriveOutput::millisecond);
        int applied = drives.get(0).applied();
        int most = drives.stream().mapToInt(DriveOutput::applied).max().orElse(0);
        pins.millisecond(time.nanos(), duties(), safety.contactor().closed());
        time.millisecond();
        LimitsWatch.Moment now = new LimitsWatch.Moment(
                pins.now(ChannelRole.SUPPLY_AMPS),
                pins.now(ChannelRole.OUTLET_PRESSURE),
                pins.now(ChannelRole.VOLTS_AT_PINS),
                applied,
                most);
        safety.millisecond(now, pins.millisSinceReading());
        commands.millisecond();
        sendWhatIsDue();
    }

    private double[] duties() {
        return drives.stream()
                .mapToDouble(drive -> new Duty(drive.applied()).fraction())
                .toArray();
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

    /** Opens or closes the emergency-stop loop and the guard; level and override stay closed. */
    public void setInputs(boolean emergencyStopClosed, boolean guardClosed) {
        setInputs(emergencyStopClosed, guardClosed, true, true);
    }

    /** Opens or closes each of the safety inputs. */
    public void setInputs(
            boolean emergencyStopClosed, boolean guardClosed, boolean levelClosed, boolean overrideReturned) {
        safety.wire(emergencyStopClosed, guardClosed, levelClosed, overrideReturned);
    }

    /** Holds the contactor's feedback closed or open, or lets it follow the contactor again when empty. */
    public void holdFeedback(Optional<Boolean> closed) {
        safety.contactor().holdFeedback(closed);
    }

    /** Holds a channel at a left-justified code, or lets it follow the plant again when empty. */
    public void holdReading(ChannelRole role, OptionalInt code) {
        pins.hold(role, code);
    }

    /** Stops the converter, so that it gives no new readings, or lets it run again. */
    public void stopConverter(boolean stopped) {
        pins.stopConverter(stopped);
    }

    /** Lets the first meter turn at a frequency in Hz, or follow the plant again when negative. */
    public void holdMeter(double hz) {
        pins.meters().get(0).hold(time.nanos(), hz);
    }

    /** Starts the board anew, as a watchdog or a sagging supply would. */
    public void reset(int cause) {
        bootId++;
        resetCause = new ResetCause(cause);
        uniqueId = blobs.uniqueId();
        stream = Stream.off();
        windowMillis = 0;
        sequence = 0;
        time.restart();
        safety.reset();
        limits.reset();
        events.clear();
        commands.reset();
        pins.reset();
        decoder.resynchronise();
        tell(EventKind.STARTED, SafeReason.RESET, resetCause.bits());
    }

    private void take(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof HostMessage message) {
            safety.signOfLife();
            commands.obey(good.sequence(), message);
        } else if (received instanceof Received.Malformed malformed
                && malformed.type() < MessageType.FIRST_BOARD_CODE) {
            safety.signOfLife();
            answer(malformed);
        } else if (received instanceof Received.Foreign foreign && foreign.isHello()) {
            sendIdentity();
        }
    }

    /** A make-safe is obeyed before it is refused: whatever else it carries, it says so. */
    private void answer(Received.Malformed malformed) {
        if (malformed.type() == MessageType.MAKE_SAFE.code()) {
            safety.makeSafe(SafeReason.HOST_ASKED, 0);
        }
        send(malformed.refusal());
    }

    private void sendWhatIsDue() {
        if (stream.periodMs() > 0 && --millisToSample <= 0) {
            millisToSample = stream.periodMs();
            Sample sample = sample();
            send(stream.kind() == SampleKind.SHORT ? ShortSample.of(sample) : sample);
        }
        if (windowMillis > 0 && --millisToWindow <= 0) {
            millisToWindow = windowMillis;
            pins.meters().forEach(meter -> meter.takeWindow().ifPresent(this::send));
        }
    }

    private Sample sample() {
        int conversions = pins.conversions();
        return new Sample(
                time.ticks(),
                pins.counts(),
                pins.takeWindows(),
                conversions,
                drives.stream().map(drive -> (long) drive.applied()).toList(),
                safety.state(),
                safety.inputs(),
                events.newest());
    }

    private void sendIdentity() {
        // Ends what a host may have caught of an earlier frame.
        out.write(Wire.DELIMITER);
        send(new Identity(
                uniqueId,
                new FirmwareVersion(1, 0, 0),
                bootId,
                resetCause,
                new ChannelCounts(pins.meters().size(), drives.size(), Sample.ANALOGS),
                BoardTime.TICK_HZ,
                List.of(PWM_HZ, VALVE_PWM_HZ),
                roles,
                new BoardKind("simulate")));
    }

    private void tell(EventKind kind, SafeReason reason, int detail) {
        send(events.add(time.ticks(), kind, reason, detail));
    }

    private void send(BoardMessage message) {
        out.writeBytes(FrameEncoder.encode(message, sequence));
        sequence = (sequence + 1) & MASK_U16;
    }

    /** The rest of the board, as the commands see it. */
    private final class Rest implements HostCommands.Board {
        @Override
        public void send(BoardMessage message) {
            SimulatedBoard.this.send(message);
        }

        @Override
        public void sendIdentity() {
            SimulatedBoard.this.sendIdentity();
        }

        @Override
        public long bootId() {
            return bootId;
        }

        @Override
        public void stream(Stream asked) {
            stream = asked;
            millisToSample = asked.periodMs();
        }

        @Override
        public void windows(Windows asked) {
            windowMillis = asked.periodMs();
            millisToWindow = windowMillis;
            pins.meters().forEach(meter -> meter.windows(windowMillis > 0));
        }
    }
}
