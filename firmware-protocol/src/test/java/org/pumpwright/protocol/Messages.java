package org.pumpwright.protocol;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Every message there can be, for property tests. */
final class Messages {
    private Messages() {}

    static Arbitrary<Message> any() {
        return Arbitraries.oneOf(List.of(
                Arbitraries.of(new Hello(), new KeepAlive(), new MakeSafe()),
                u32().map(Arm::new),
                Combinators.combine(upTo(1), duty(), u16()).as(Drive::new),
                Arbitraries.oneOf(Arbitraries.just(0), between(2, 1000)).map(Stream::new),
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
                        upTo(3).map(Inputs::ofBits),
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
            Arbitrary<SafeReason> reasons = kind == EventKind.ARMED
                    ? Arbitraries.just(SafeReason.NONE)
                    : between(1, 6).map(SafeReason::ofCode);
            return Combinators.combine(u16(), u32(), reasons, Arbitraries.integers())
                    .as((number, time, reason, detail) -> new Event(number, time, kind, reason, detail));
        });
    }

    private static Arbitrary<Message> identity() {
        Arbitrary<String> names = Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(8);
        Arbitrary<ChannelCounts> channels =
                Combinators.combine(upTo(2), upTo(2), upTo(4)).as(ChannelCounts::new);
        return Combinators.combine(
                        Arbitraries.longs().map(UniqueId::new),
                        Combinators.combine(u8(), u8(), u8()).as(FirmwareVersion::new),
                        u32(),
                        upTo(15).map(ResetCause::new),
                        channels,
                        Arbitraries.longs().between(1, 0xFFFF_FFFFL),
                        u16().list().ofSize(4),
                        Combinators.combine(between(100, 1000), upTo(3), names).as(Rest::new))
                .as((id, firmware, boot, cause, counts, hertz, small, rest) -> new Identity(
                        id,
                        firmware,
                        boot,
                        cause,
                        counts,
                        hertz,
                        small.subList(0, 2),
                        small.get(2),
                        rest.linkTimeoutMs,
                        rest.rule(counts, small.get(3)),
                        new BoardKind(rest.name)));
    }

    private record Rest(int linkTimeoutMs, int channel, String name) {
        OverCurrentRule rule(ChannelCounts counts, int limit) {
            return channel < counts.analogs()
                    ? new OverCurrentRule(channel, limit, 0xFFFF - limit)
                    : new OverCurrentRule(OverCurrentRule.NO_CHANNEL, limit, limit);
        }
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
