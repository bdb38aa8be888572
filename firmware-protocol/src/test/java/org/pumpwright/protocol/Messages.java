package org.pumpwright.protocol;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Every message there can be, for property tests. */
final class Messages {
    private Messages() {}

    static Arbitrary<Message> any() {
        return Arbitraries.oneOf(List.of(
                Arbitraries.of(new Hello(), new KeepAlive(), new MakeSafe(), new ReadLimits(), new SelfTest()),
                u32().map(Arm::new),
                Combinators.combine(upTo(1), duty(), u16()).as(Drive::new),
                Combinators.combine(upTo(1000), Arbitraries.of(SampleKind.class))
                        .as(Stream::new),
                Arbitraries.of(Limit.class).flatMap(limit -> valueOf(limit).map(value -> new Tighten(limit, value))),
                u16().map(EventsFrom::new),
                blobMessage(),
                Arbitraries.oneOf(Arbitraries.just(0), between(100, 10_000)).map(Windows::new),
                Combinators.combine(upTo(1), upTo(8192), between(50, 250)).as(Dither::new),
                Combinators.combine(upTo(63), upTo(63))
                        .as((tried, failed) -> new SelfTestResult(tried, tried & failed)),
                limits(),
                shortSample(),
                pulseWindow(),
                identity(),
                Combinators.combine(u16(), u8()).as(Acknowledge::new),
                Combinators.combine(u16(), u8(), Arbitraries.of(RefuseReason.class), Arbitraries.integers())
                        .as(Refuse::new),
                sample(),
                event()));
    }

    static Arbitrary<Integer> u16() {
        return upTo(0xFFFF);
    }

    private static Arbitrary<Message> blobMessage() {
        Arbitrary<Blob> blobs = Arbitraries.of(Blob.class);
        Arbitrary<Message> writes = Combinators.combine(blobs, upTo(255), bytes(1, 32))
                .as((blob, offset, bytes) ->
                        new BlobWrite(blob, Math.min(offset, Blob.MAX_LENGTH - bytes.size()), bytes));
        Arbitrary<Message> data = Combinators.combine(blobs, upTo(192), upTo(64), bytes(0, 64))
                .as((blob, offset, more, bytes) ->
                        new BlobData(blob, offset, Math.min(256, offset + bytes.size() + more), bytes));
        return Arbitraries.oneOf(List.of(
                Combinators.combine(blobs, upTo(255), between(1, 64)).as(BlobRead::new),
                Combinators.combine(blobs, between(1, 256), u16()).as(BlobCommit::new),
                writes,
                data));
    }

    private static Arbitrary<Octets> bytes(int fewest, int most) {
        return Arbitraries.bytes()
                .array(byte[].class)
                .ofMinSize(fewest)
                .ofMaxSize(most)
                .map(Octets::of);
    }

    private static Arbitrary<Message> limits() {
        List<Arbitrary<Long>> values =
                Arrays.stream(Limit.values()).map(Messages::valueOf).toList();
        return Combinators.combine(values).as(Limits::new);
    }

    private static Arbitrary<Long> valueOf(Limit limit) {
        return Arbitraries.longs().between(limit.lowest(), limit.highest());
    }

    private static Arbitrary<Message> shortSample() {
        return Combinators.combine(
                        u32(),
                        Combinators.combine(u16(), u32())
                                .as(ShortCount::new)
                                .list()
                                .ofSize(2),
                        u16().list().ofSize(4),
                        u16().list().ofSize(2),
                        Arbitraries.of(BoardState.class),
                        upTo(31).map(Inputs::ofBits))
                .as(ShortSample::new);
    }

    private static Arbitrary<Message> pulseWindow() {
        Arbitrary<PulseIntervals> intervals = Combinators.combine(
                        u16().list().ofSize(3),
                        u32(),
                        Arbitraries.longs().list().ofSize(2),
                        u32().list().ofSize(2),
                        u32())
                .as((counts, sum, sums, ends, reference) -> new PulseIntervals(
                        counts.get(0),
                        sum,
                        sums.get(0),
                        sums.get(1),
                        Collections.min(ends),
                        Collections.max(ends),
                        counts.get(1),
                        counts.get(2),
                        reference));
        return Combinators.combine(upTo(1), u32().list().ofSize(4), u16(), intervals)
                .as((meter, times, edges, between) ->
                        new PulseWindow(meter, times.get(0), times.get(1), edges, times.get(2), times.get(3), between));
    }

    private static Arbitrary<Message> sample() {
        return Combinators.combine(
                        u32(),
                        Combinators.combine(u32(), u32())
                                .as(MeterCount::new)
                                .list()
                                .ofSize(2),
                        window().list().ofSize(4),
                        u16(),
                        duty().list().ofSize(2),
                        Arbitraries.of(BoardState.class),
                        upTo(31).map(Inputs::ofBits),
                        u16())
                .as(Sample::new);
    }

    private static Arbitrary<AnalogWindow> window() {
        return u16().list().ofSize(3).map(readings -> {
            List<Integer> sorted = readings.stream().sorted().toList();
            return new AnalogWindow(sorted.get(1), sorted.get(0), sorted.get(2));
        });
    }

    private static Arbitrary<Message> event() {
        Arbitrary<EventKind> kinds = Arbitraries.of(EventKind.class);
        return kinds.flatMap(kind -> {
            Arbitrary<SafeReason> reasons = switch (kind) {
                case STARTED -> Arbitraries.just(SafeReason.RESET);
                case ARMED -> Arbitraries.just(SafeReason.NONE);
                case LOCKED -> Arbitraries.just(SafeReason.HARDWARE);
                case MADE_SAFE -> between(1, 14).filter(code -> code != 6).map(SafeReason::ofCode);
            };
            return Combinators.combine(u16(), u32(), reasons, Arbitraries.integers())
                    .as((number, time, reason, detail) -> new Event(number, time, kind, reason, detail));
        });
    }

    private static Arbitrary<Message> identity() {
        Arbitrary<String> names = Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(8);
        return Combinators.combine(
                        Arbitraries.longs().map(UniqueId::new),
                        Combinators.combine(u8(), u8(), u8()).as(FirmwareVersion::new),
                        u32(),
                        upTo(15).map(ResetCause::new),
                        Combinators.combine(upTo(2), upTo(2), upTo(4)).as(ChannelCounts::new),
                        Arbitraries.longs().between(1, 0xFFFF_FFFFL),
                        u16().list().ofSize(2),
                        Combinators.combine(roles(), names.map(BoardKind::new)).as(Fitted::new))
                .as((id, firmware, boot, cause, counts, hertz, pwm, fitted) ->
                        new Identity(id, firmware, boot, cause, counts, hertz, pwm, fitted.roles, fitted.kind));
    }

    private record Fitted(List<AnalogRole> roles, BoardKind kind) {}

    /** Any four roles, those that are watched at most once each. */
    private static Arbitrary<List<AnalogRole>> roles() {
        List<AnalogRole> pool = new ArrayList<>(List.of(AnalogRole.values()));
        pool.addAll(Collections.nCopies(3, AnalogRole.NONE));
        pool.addAll(Collections.nCopies(3, AnalogRole.TEMPERATURE));
        pool.addAll(Collections.nCopies(3, AnalogRole.OTHER));
        return Arbitraries.shuffle(pool).map(shuffled -> List.copyOf(shuffled.subList(0, 4)));
    }

    private static Arbitrary<Long> duty() {
        return Arbitraries.longs().between(0, Drive.FULL_DUTY);
    }

    private static Arbitrary<Long> u32() {
        return Arbitraries.longs().between(0, 0xFFFF_FFFFL);
    }

    private static Arbitrary<Integer> u8() {
        return upTo(0xFF);
    }

    private static Arbitrary<Integer> upTo(int highest) {
        return between(0, highest);
    }

    private static Arbitrary<Integer> between(int lowest, int highest) {
        return Arbitraries.integers().between(lowest, highest);
    }
}
