package org.pumpwright.protocol;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.pumpwright.protocol.line.Wire;

/** Makes streams of bytes that no honest sender sends, from a seed: the same seed gives the same stream. */
final class HostileStream {
    private static final int LONGEST = 320;
    private static final List<GoldenFrame> GOLDEN = GoldenFrame.all();
    private static final List<Message> SOUND = GoldenFrame.good().stream()
            .map(golden -> GoldenFields.message(golden.fields()))
            .toList();

    private final SplittableRandom random;
    private final ByteArrayOutputStream stream = new ByteArrayOutputStream();

    private HostileStream(long seed) {
        random = new SplittableRandom(seed);
    }

    /** 1 to 320 bytes. */
    static byte[] of(long seed) {
        HostileStream hostile = new HostileStream(seed);
        int parts = 1 + hostile.random.nextInt(6);
        for (int part = 0; part < parts; part++) {
            hostile.stream.writeBytes(hostile.part());
        }
        byte[] whole = hostile.stream.toByteArray();
        byte[] wounded = hostile.random.nextInt(3) == 0 ? hostile.wound(whole) : whole;
        return wounded.length == 0 ? new byte[1] : Arrays.copyOf(wounded, Math.min(wounded.length, LONGEST));
    }

    private byte[] part() {
        return switch (random.nextInt(6)) {
            case 0 -> rubbish(random.nextInt(160));
            case 1 -> golden();
            case 2 -> wound(golden());
            case 3 -> soundFrameOfAnything();
            case 4 -> soundFrameOfChangedFields();
            default -> splice(golden(), golden());
        };
    }

    private byte[] golden() {
        return GOLDEN.get(random.nextInt(GOLDEN.size())).frame().toArray();
    }

    /** Bytes with many zeros or few, and many small length codes or few. */
    private byte[] rubbish(int length) {
        int zeroOneIn = 1 + random.nextInt(120);
        int highest = random.nextBoolean() ? 0x100 : 8;
        byte[] bytes = new byte[length];
        for (int index = 0; index < length; index++) {
            bytes[index] = random.nextInt(zeroOneIn) == 0 ? Wire.DELIMITER : (byte) random.nextInt(highest);
        }
        return bytes;
    }

    /** The check is right, the rest is whatever it is. */
    private byte[] soundFrameOfAnything() {
        int version = random.nextInt(4) == 0 ? random.nextInt(0x100) : Wire.VERSION;
        byte[] payload = rubbish(random.nextInt(Wire.MAX_PAYLOAD_LENGTH + 1));
        return FrameEncoder.encodeRaw(version, random.nextInt(0x100), random.nextInt(0x10000), payload);
    }

    /** The check is right and the length most often too; a few fields are not what they were. */
    private byte[] soundFrameOfChangedFields() {
        Message message = SOUND.get(random.nextInt(SOUND.size()));
        PayloadWriter out = new PayloadWriter(new byte[Wire.MAX_PAYLOAD_LENGTH]);
        message.type().write(message, out);
        int length = random.nextInt(5) == 0 ? random.nextInt(Wire.MAX_PAYLOAD_LENGTH + 1) : out.length();
        byte[] payload = Arrays.copyOf(out.bytes(), length);
        for (int change = random.nextInt(4); change > 0 && length > 0; change--) {
            payload[random.nextInt(length)] = (byte) random.nextInt(random.nextBoolean() ? 0x100 : 4);
        }
        return FrameEncoder.encodeRaw(Wire.VERSION, message.type().code(), random.nextInt(0x10000), payload);
    }

    private byte[] splice(byte[] head, byte[] tail) {
        int from = random.nextInt(tail.length);
        int to = random.nextInt(head.length);
        return Heard.joined(Arrays.copyOf(head, to), Arrays.copyOfRange(tail, from, tail.length));
    }

    /** One to four wounds: a bit flipped, a byte replaced, left out, doubled, or the rest cut off. */
    private byte[] wound(byte[] whole) {
        byte[] wounded = whole;
        for (int wounds = 1 + random.nextInt(4); wounds > 0 && wounded.length > 0; wounds--) {
            int at = random.nextInt(wounded.length);
            byte[] head = Arrays.copyOf(wounded, at);
            byte[] rest = Arrays.copyOfRange(wounded, at, wounded.length);
            byte[] behind = Arrays.copyOfRange(rest, 1, rest.length);
            wounded = switch (random.nextInt(6)) {
                case 0 -> Heard.joined(head, behind);
                case 1 -> Heard.joined(head, rest, rest);
                case 2 -> head;
                case 3 -> Heard.joined(head, new byte[] {(byte) random.nextInt(0x100)}, rest);
                case 4 -> Heard.joined(head, new byte[] {(byte) random.nextInt(4)}, behind);
                default -> Heard.joined(head, new byte[] {(byte) (rest[0] ^ 1 << random.nextInt(8))}, behind);
            };
        }
        return wounded;
    }
}
