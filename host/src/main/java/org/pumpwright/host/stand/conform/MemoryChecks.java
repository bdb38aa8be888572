package org.pumpwright.host.stand.conform;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Blob;
import org.pumpwright.protocol.BlobCommit;
import org.pumpwright.protocol.BlobData;
import org.pumpwright.protocol.BlobRead;
import org.pumpwright.protocol.BlobWrite;
import org.pumpwright.protocol.Octets;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.SelfTest;
import org.pumpwright.protocol.SelfTestResult;
import org.pumpwright.protocol.line.Crc16;

/** Self-test, and the blobs that a board keeps for its host. Thread-safe. */
final class MemoryChecks {
    private static final int TEST_LENGTH = 40;
    private static final int MOST_BUSY = 50;

    private MemoryChecks() {}

    static List<Check> all() {
        return List.of(
                new Check("the self-test tells what it tried and that nothing failed", "4.14", MemoryChecks::selfTest),
                new Check("a blob is written, committed and read back", "4.16", MemoryChecks::blob),
                new Check(
                        "a commit with another CRC is refused and leaves the old blob",
                        "4.16",
                        MemoryChecks::badCommit));
    }

    private static String selfTest(Trial trial) throws Broken, StandException {
        Answer answer = trial.ask(new SelfTest());
        if (answer.message().orElse(null) instanceof SelfTestResult result) {
            trial.demand(result.failed() == 0, "failed bits %d of tried bits %d", result.failed(), result.tried());
            return "tried bits %d, failed none".formatted(result.tried());
        }
        throw new Broken("self-test-result expected; " + answer.words());
    }

    private static String blob(Trial trial) throws Broken, StandException {
        byte[] old = read(trial);
        try {
            storeAndRead(trial, pattern(TEST_LENGTH, old.length + 1));
        } catch (Broken e) {
            throw new Broken(e.evidence() + (putBack(trial, old) ? "" : "; THE OLD BLOB COULD NOT BE PUT BACK"));
        }
        if (old.length == 0) {
            return TEST_LENGTH
                    + " bytes written, committed twice, read back. The calibration blob was empty; the test's"
                    + " bytes stay in it";
        }
        trial.demand(putBack(trial, old), "the test's bytes went in and out, but the old blob could not be put back");
        return TEST_LENGTH + " bytes written, committed twice, read back; then the old " + old.length + " bytes again";
    }

    private static void storeAndRead(Trial trial, byte[] test) throws Broken, StandException {
        write(trial, test);
        commit(trial, test);
        trial.demand(Arrays.equals(read(trial), test), "the blob read back is another than the one committed");
        // As after a lost answer.
        commit(trial, test);
        BlobData end = part(trial, test.length - 8, BlobRead.MAX_LENGTH);
        trial.demand(
                end.bytes().size() == 8 && end.total() == test.length,
                "8 bytes of %d expected at the end; %d of %d came",
                test.length,
                end.bytes().size(),
                end.total());
    }

    /** Whether what was stored before is stored again; an empty blob can't be. */
    private static boolean putBack(Trial trial, byte[] old) throws StandException {
        try {
            if (old.length > 0 && !Arrays.equals(read(trial), old)) {
                write(trial, old);
                commit(trial, old);
                return Arrays.equals(read(trial), old);
            }
            return true;
        } catch (Broken e) {
            return false;
        }
    }

    private static String badCommit(Trial trial) throws Broken, StandException {
        byte[] old = read(trial);
        byte[] test = pattern(TEST_LENGTH, 7);
        write(trial, test);
        int wrong = Crc16.of(test, 0, test.length) ^ 1;
        Answer answer = patiently(trial, Command.of(new BlobCommit(Blob.CALIBRATION, test.length, wrong)));
        trial.demand(
                answer.message().orElse(null) instanceof Refuse refuse && refuse.reason() == RefuseReason.NOT_STORED,
                "refuse (not stored) expected; %s",
                answer.words());
        trial.demand(Arrays.equals(read(trial), old), "the old blob is gone");
        return "refused (not stored); the " + old.length + " bytes from before are still there";
    }

    private static byte[] pattern(int length, int seed) {
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = (byte) (seed + 5 * i);
        }
        return bytes;
    }

    private static byte[] read(Trial trial) throws Broken, StandException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int total = part(trial, 0, 1).total();
        while (bytes.size() < total) {
            BlobData next = part(trial, bytes.size(), BlobRead.MAX_LENGTH);
            trial.demand(next.bytes().size() > 0, "no bytes at %d of %d", bytes.size(), total);
            bytes.writeBytes(next.bytes().toArray());
        }
        return bytes.toByteArray();
    }

    private static BlobData part(Trial trial, int offset, int length) throws Broken, StandException {
        Answer answer = trial.ask(new BlobRead(Blob.CALIBRATION, offset, length));
        if (answer.message().orElse(null) instanceof BlobData data) {
            trial.demand(
                    data.offset() == offset && data.blob() == Blob.CALIBRATION, "another part was sent than asked for");
            return data;
        }
        throw new Broken("blob-data expected; " + answer.words());
    }

    private static void write(Trial trial, byte[] bytes) throws Broken, StandException {
        for (int at = 0; at < bytes.length; at += BlobWrite.MAX_BYTES) {
            byte[] part = Arrays.copyOfRange(bytes, at, Math.min(bytes.length, at + BlobWrite.MAX_BYTES));
            Answer answer = patiently(trial, Command.of(new BlobWrite(Blob.CALIBRATION, at, Octets.of(part))));
            trial.demand(
                    answer.message().filter(Acknowledge.class::isInstance).isPresent(),
                    "acknowledge expected; %s",
                    answer.words());
        }
    }

    private static void commit(Trial trial, byte[] bytes) throws Broken, StandException {
        Answer answer = patiently(
                trial, Command.of(new BlobCommit(Blob.CALIBRATION, bytes.length, Crc16.of(bytes, 0, bytes.length))));
        trial.demand(
                answer.message().filter(Acknowledge.class::isInstance).isPresent(),
                "acknowledge expected; %s",
                answer.words());
    }

    /** Asks again while the board is busy with an earlier write. */
    private static Answer patiently(Trial trial, Command command) throws StandException {
        Answer answer = trial.talk().ask(command);
        for (int i = 0; i < MOST_BUSY && isBusy(answer); i++) {
            trial.talk().listen(Duration.ofMillis(10));
            answer = trial.talk().ask(command);
        }
        return answer;
    }

    private static boolean isBusy(Answer answer) {
        return answer.message().orElse(null) instanceof Refuse refuse && refuse.reason() == RefuseReason.BUSY;
    }
}
