package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Blob;
import org.pumpwright.protocol.BlobCommit;
import org.pumpwright.protocol.BlobWrite;
import org.pumpwright.protocol.BoardState;
import org.pumpwright.protocol.Dither;
import org.pumpwright.protocol.Drive;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Octets;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.Sample;
import org.pumpwright.protocol.SelfTest;

/** Every refusal, with its detail and in its order. Thread-safe. */
final class RefusalChecks {
    private static final int[] UNKNOWN = {0x00, 0x10, 0x7F};

    private RefusalChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("an unknown type is refused with its number", "5", RefusalChecks::unknown),
                new Check("a wrong length is refused with the length received", "5", RefusalChecks::length),
                new Check("a value out of range is refused with the number of its field", "5", RefusalChecks::range),
                new Check("drive and dither are refused unless armed, and move nothing", "4.3", RefusalChecks::unarmed),
                new Check("self-test and blob writing are refused while armed", "4.14", RefusalChecks::notSafe),
                new Check("the first reason in the order of the protocol is given", "5", RefusalChecks::order));
    }

    private static String unknown(Trial trial) throws Broken, StandException {
        for (int type : UNKNOWN) {
            trial.refused(
                    Command.raw(type, new byte[] {1, 2}, "type %02xh".formatted(type)),
                    RefuseReason.UNKNOWN_TYPE,
                    type);
        }
        return "types 00h, 10h and 7Fh: refused each with its number";
    }

    private static String length(Trial trial) throws Broken, StandException {
        int tried = 0;
        for (MessageType type : MessageType.values()) {
            if (type.isFromBoard()) {
                continue;
            }
            wrongLength(trial, type, type.longestPayload() + 1);
            tried++;
            if (type.shortestPayload() > 0) {
                wrongLength(trial, type, type.shortestPayload() - 1);
                tried++;
            }
        }
        return tried + " payloads one byte too long or too short: refused each with its length";
    }

    private static void wrongLength(Trial trial, MessageType type, int length) throws Broken, StandException {
        Command command =
                Command.raw(type.code(), new byte[length], "%s with %d bytes".formatted(Command.name(type), length));
        trial.refused(command, RefuseReason.WRONG_LENGTH, length);
    }

    private static String range(Trial trial) throws Broken, StandException {
        List<Out> table = new ArrayList<>(List.of(
                new Out(MessageType.DRIVE, 1, Payload.of(7).u8(2)),
                new Out(MessageType.DRIVE, 2, Payload.of(7).u8(0).u32(65_537)),
                new Out(MessageType.STREAM, 1, Payload.of(3).u16(1001)),
                new Out(MessageType.STREAM, 2, Payload.of(3).u16(20).u8(2)),
                new Out(MessageType.TIGHTEN, 1, Payload.of(5).u8(12)),
                new Out(MessageType.TIGHTEN, 2, Payload.of(5).u8(2).u32(7_200_001)),
                new Out(MessageType.TIGHTEN, 2, Payload.of(5).u8(11).u32(99)),
                new Out(MessageType.BLOB_READ, 1, Payload.of(4).u8(2).u16(0).u8(1)),
                new Out(MessageType.BLOB_READ, 2, Payload.of(4).u8(0).u16(256).u8(1)),
                new Out(MessageType.BLOB_READ, 3, Payload.of(4)),
                new Out(MessageType.BLOB_READ, 3, Payload.of(4).u8(1).u16(0).u8(65)),
                new Out(MessageType.BLOB_WRITE, 1, Payload.of(4).u8(2)),
                new Out(MessageType.BLOB_WRITE, 2, Payload.of(4).u8(1).u16(256)),
                new Out(MessageType.BLOB_WRITE, 3, Payload.of(5).u8(1).u16(255)),
                new Out(MessageType.BLOB_COMMIT, 2, Payload.of(5).u8(1)),
                new Out(MessageType.BLOB_COMMIT, 2, Payload.of(5).u8(1).u16(257)),
                new Out(MessageType.WINDOWS, 1, Payload.of(2).u16(99)),
                new Out(MessageType.WINDOWS, 1, Payload.of(2).u16(10_001)),
                new Out(MessageType.DITHER, 1, Payload.of(5).u8(2).u16(0).u16(50)),
                new Out(MessageType.DITHER, 2, Payload.of(5).u8(0).u16(8193).u16(50)),
                new Out(MessageType.DITHER, 3, Payload.of(5).u8(0).u16(0).u16(49)),
                new Out(MessageType.DITHER, 3, Payload.of(5).u8(0).u16(0).u16(251))));
        int drives = trial.board().channels().drives();
        if (drives < Drive.CHANNELS) {
            table.add(new Out(MessageType.DRIVE, 1, Payload.of(7).u8(drives)));
        }
        for (Out out : table) {
            trial.refused(out.command(), RefuseReason.OUT_OF_RANGE, out.field);
        }
        return table.size() + " values just outside their range: refused each with its field";
    }

    private static String unarmed(Trial trial) throws Broken, NotPossible, StandException {
        if (trial.board().channels().drives() == 0) {
            throw new NotPossible("the board has no drive");
        }
        trial.stream(20);
        int mark = trial.talk().mark();
        int safe = BoardState.SAFE.code();
        String said = trial.refused(Command.of(new Drive(0, Trial.LOW_DUTY, 0)), RefuseReason.NOT_ARMED, safe);
        trial.refused(Command.of(new Dither(0, 0, Dither.LOWEST_HZ)), RefuseReason.NOT_ARMED, safe);
        trial.talk().listen(Duration.ofMillis(200));
        for (Sample sample : trial.all(Sample.class, mark)) {
            trial.demand(
                    sample.state() == BoardState.SAFE && sample.applied().get(0) == 0,
                    "safe with drive 0 at 0 expected; %s",
                    Say.of(sample));
        }
        return said + "; dither likewise; drive 0 stayed at 0";
    }

    private static String notSafe(Trial trial) throws Broken, NotPossible, StandException {
        trial.arm();
        int armed = BoardState.ARMED.code();
        trial.refused(Command.of(new SelfTest()), RefuseReason.NOT_SAFE, armed);
        trial.refused(
                Command.of(new BlobWrite(Blob.CALIBRATION, 0, Octets.of((byte) 1))), RefuseReason.NOT_SAFE, armed);
        trial.refused(Command.of(new BlobCommit(Blob.CALIBRATION, 1, 0)), RefuseReason.NOT_SAFE, armed);
        return "self-test, blob-write and blob-commit while armed: refused (not safe)";
    }

    private static String order(Trial trial) throws Broken, NotPossible, StandException {
        Command drive = Command.of(new Drive(0, 0, 0));
        trial.refused(drive.withPayload(new byte[8], "with 8 bytes, not armed"), RefuseReason.WRONG_LENGTH, 8);
        trial.refused(
                drive.withPayload(Payload.of(7).u8(2).bytes(), "of channel 2, not armed"),
                RefuseReason.OUT_OF_RANGE,
                1);
        trial.arm();
        Command arm = Command.raw(MessageType.ARM.code(), new byte[3], "arm with 3 bytes, armed");
        trial.refused(arm, RefuseReason.WRONG_LENGTH, 3);
        trial.refused(wrongBoot(trial), RefuseReason.WRONG_BOOT_ID, 0);
        Command commit = Command.of(new BlobCommit(Blob.CALIBRATION, 1, 0));
        trial.refused(
                commit.withPayload(Payload.of(5).u8(1).bytes(), "of length 0, armed"), RefuseReason.OUT_OF_RANGE, 2);
        return "length before range, range before state, boot id before state";
    }

    /** An arm for a boot that this is not. */
    static Command wrongBoot(Trial trial) {
        byte[] id = Payload.of(4).u32(~trial.board().bootId()).bytes();
        return Command.raw(MessageType.ARM.code(), id, "arm with another boot id");
    }

    /** A payload with one field out of range. */
    private record Out(MessageType type, int field, Payload payload) {
        Command command() {
            return Command.raw(
                    type.code(), payload.bytes(), "%s with field %d out of range".formatted(Command.name(type), field));
        }
    }
}
