package org.pumpwright.protocol;

import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Turns the fields column of the golden frames into a message, and a message into such fields. */
final class GoldenFields {
    private final Map<String, String> fields;

    private GoldenFields(Map<String, String> fields) {
        this.fields = fields;
    }

    static Message message(Map<String, String> fields) {
        return new GoldenFields(fields).message();
    }

    private Message message() {
        return switch (fields.get("type")) {
            case "hello" -> new Hello();
            case "arm" -> new Arm(number("bootId"));
            case "drive" -> new Drive(integer("channel"), number("duty"), integer("ramp"));
            case "stream" -> new Stream(integer("periodMs"), SampleKind.ofCode(integer("kind")));
            case "keep-alive" -> new KeepAlive();
            case "make-safe" -> new MakeSafe();
            case "read-limits" -> new ReadLimits();
            case "tighten" -> new Tighten(Limit.ofIndex(integer("limit")), number("value"));
            case "events-from" -> new EventsFrom(integer("number"));
            case "self-test" -> new SelfTest();
            case "blob-read" -> new BlobRead(blob(), integer("offset"), integer("length"));
            case "blob-write" -> new BlobWrite(blob(), integer("offset"), bytes());
            case "blob-commit" -> new BlobCommit(blob(), integer("length"), integer("crc"));
            case "windows" -> new Windows(integer("periodMs"));
            case "dither" -> new Dither(integer("channel"), integer("amplitude"), integer("frequency"));
            case "limits" -> new Limits(numbers("limit", Limit.COUNT));
            case "self-test-result" -> new SelfTestResult(integer("tried"), integer("failed"));
            case "blob-data" -> new BlobData(blob(), integer("offset"), integer("total"), bytes());
            case "short-sample" -> shortSample();
            case "pulse-window" -> pulseWindow();
            case "identity" -> identity();
            case "acknowledge" -> new Acknowledge(integer("answered"), integer("answeredType"));
            case "refuse" ->
                new Refuse(
                        integer("answered"),
                        integer("answeredType"),
                        RefuseReason.ofCode(integer("reason")),
                        integer("detail"));
            case "sample" -> sample();
            case "event" ->
                new Event(
                        integer("number"),
                        number("time"),
                        EventKind.ofCode(integer("kind")),
                        SafeReason.ofCode(integer("reason")),
                        integer("detail"));
            default -> throw new IllegalStateException("no such type: " + fields);
        };
    }

    private Identity identity() {
        String[] firmware = fields.get("firmware").split("\\.");
        return new Identity(
                UniqueId.parse(fields.get("uniqueId")),
                new FirmwareVersion(
                        Integer.parseInt(firmware[0]), Integer.parseInt(firmware[1]), Integer.parseInt(firmware[2])),
                number("bootId"),
                new ResetCause(integer("resetCause")),
                new ChannelCounts(integer("meters"), integer("drives"), integer("analogs")),
                number("tickHz"),
                List.of(integer("pwmHz0"), integer("pwmHz1")),
                integers("role", 4).stream().map(AnalogRole::ofCode).toList(),
                new BoardKind(fields.get("kind")));
    }

    private Sample sample() {
        return new Sample(
                number("time"),
                IntStream.range(0, 2)
                        .mapToObj(meter -> new MeterCount(number("count" + meter), number("edge" + meter)))
                        .toList(),
                IntStream.range(0, 4)
                        .mapToObj(channel -> new AnalogWindow(
                                integer("mean" + channel), integer("min" + channel), integer("max" + channel)))
                        .toList(),
                integer("conversions"),
                List.of(number("applied0"), number("applied1")),
                BoardState.ofCode(integer("state")),
                Inputs.ofBits(integer("inputs")),
                integer("events"));
    }

    private ShortSample shortSample() {
        return new ShortSample(
                number("time"),
                IntStream.range(0, 2)
                        .mapToObj(meter -> new ShortCount(integer("count" + meter), number("edge" + meter)))
                        .toList(),
                integers("mean", 4),
                integers("applied", 2),
                BoardState.ofCode(integer("state")),
                Inputs.ofBits(integer("inputs")));
    }

    private PulseWindow pulseWindow() {
        return new PulseWindow(
                integer("meter"),
                number("begin"),
                number("end"),
                integer("edges"),
                number("first"),
                number("last"),
                new PulseIntervals(
                        integer("intervals"),
                        number("sum"),
                        Long.parseUnsignedLong(fields.get("squares")),
                        Long.parseUnsignedLong(fields.get("lagged")),
                        number("least"),
                        number("most"),
                        integer("long"),
                        integer("short"),
                        number("reference")));
    }

    private Blob blob() {
        return Blob.ofCode(integer("blob"));
    }

    private Octets bytes() {
        return Octets.of(HexFormat.of().parseHex(fields.get("bytes")));
    }

    private List<Integer> integers(String field, int count) {
        return IntStream.range(0, count)
                .mapToObj(index -> integer(field + index))
                .toList();
    }

    private List<Long> numbers(String field, int count) {
        return IntStream.range(0, count)
                .mapToObj(index -> number(field + index))
                .toList();
    }

    private long number(String field) {
        return Long.parseLong(fields.get(field));
    }

    private int integer(String field) {
        return Integer.parseInt(fields.get(field));
    }

    static Map<String, String> of(int sequence, Message message) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("type", message.type().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        fields.put("sequence", Integer.toString(sequence));
        if (message instanceof Arm arm) {
            put(fields, "bootId", arm.bootId());
        } else if (message instanceof Drive drive) {
            put(fields, "channel", drive.channel());
            put(fields, "duty", drive.duty());
            put(fields, "ramp", drive.ramp());
        } else if (message instanceof Stream stream) {
            put(fields, "periodMs", stream.periodMs());
            put(fields, "kind", stream.kind().code());
        } else if (message instanceof Identity identity) {
            putIdentity(fields, identity);
        } else if (message instanceof Acknowledge acknowledge) {
            put(fields, "answered", acknowledge.answered());
            put(fields, "answeredType", acknowledge.answeredType());
        } else if (message instanceof Refuse refuse) {
            put(fields, "answered", refuse.answered());
            put(fields, "answeredType", refuse.answeredType());
            put(fields, "reason", refuse.reason().code());
            put(fields, "detail", refuse.detail());
        } else if (message instanceof Sample sample) {
            putSample(fields, sample);
        } else if (message instanceof Event event) {
            put(fields, "number", event.number());
            put(fields, "time", event.time());
            put(fields, "kind", event.kind().code());
            put(fields, "reason", event.reason().code());
            put(fields, "detail", event.detail());
        } else {
            putRarer(fields, message);
        }
        return fields;
    }

    private static void putRarer(Map<String, String> fields, Message message) {
        if (message instanceof Tighten tighten) {
            put(fields, "limit", tighten.limit().index());
            put(fields, "value", tighten.value());
        } else if (message instanceof EventsFrom from) {
            put(fields, "number", from.number());
        } else if (message instanceof BlobRead read) {
            put(fields, "blob", read.blob().code());
            put(fields, "offset", read.offset());
            put(fields, "length", read.length());
        } else if (message instanceof BlobWrite write) {
            put(fields, "blob", write.blob().code());
            put(fields, "offset", write.offset());
            putBytes(fields, write.bytes());
        } else if (message instanceof BlobCommit commit) {
            put(fields, "blob", commit.blob().code());
            put(fields, "length", commit.length());
            put(fields, "crc", commit.crc());
        } else if (message instanceof Windows windows) {
            put(fields, "periodMs", windows.periodMs());
        } else if (message instanceof Dither dither) {
            put(fields, "channel", dither.channel());
            put(fields, "amplitude", dither.amplitude());
            put(fields, "frequency", dither.frequencyHz());
        } else if (message instanceof Limits limits) {
            putAll(fields, "limit", limits.values());
        } else if (message instanceof SelfTestResult result) {
            put(fields, "tried", result.tried());
            put(fields, "failed", result.failed());
        } else if (message instanceof BlobData data) {
            put(fields, "blob", data.blob().code());
            put(fields, "offset", data.offset());
            put(fields, "total", data.total());
            putBytes(fields, data.bytes());
        } else if (message instanceof ShortSample sample) {
            putShortSample(fields, sample);
        } else if (message instanceof PulseWindow window) {
            putWindow(fields, window);
        }
    }

    private static void putShortSample(Map<String, String> fields, ShortSample sample) {
        put(fields, "time", sample.time());
        for (int meter = 0; meter < sample.meters().size(); meter++) {
            put(fields, "count" + meter, sample.meters().get(meter).count());
            put(fields, "edge" + meter, sample.meters().get(meter).lastEdge());
        }
        putAll(fields, "mean", sample.means());
        putAll(fields, "applied", sample.applied());
        put(fields, "state", sample.state().code());
        put(fields, "inputs", sample.inputs().bits());
    }

    private static void putWindow(Map<String, String> fields, PulseWindow window) {
        put(fields, "meter", window.meter());
        put(fields, "begin", window.begin());
        put(fields, "end", window.end());
        put(fields, "edges", window.edges());
        put(fields, "first", window.firstEdge());
        put(fields, "last", window.lastEdge());
        PulseIntervals intervals = window.intervals();
        put(fields, "intervals", intervals.count());
        put(fields, "sum", intervals.sum());
        fields.put("squares", Long.toUnsignedString(intervals.squares()));
        fields.put("lagged", Long.toUnsignedString(intervals.lagged()));
        put(fields, "least", intervals.least());
        put(fields, "most", intervals.most());
        put(fields, "long", intervals.tooLong());
        put(fields, "short", intervals.tooShort());
        put(fields, "reference", intervals.reference());
    }

    private static void putIdentity(Map<String, String> fields, Identity identity) {
        fields.put("uniqueId", identity.uniqueId().toString());
        fields.put("firmware", identity.firmware().toString());
        put(fields, "bootId", identity.bootId());
        put(fields, "resetCause", identity.resetCause().bits());
        put(fields, "meters", identity.channels().meters());
        put(fields, "drives", identity.channels().drives());
        put(fields, "analogs", identity.channels().analogs());
        put(fields, "tickHz", identity.tickHz());
        put(fields, "pwmHz0", identity.pwmHz().get(0));
        put(fields, "pwmHz1", identity.pwmHz().get(1));
        putAll(fields, "role", identity.roles().stream().map(AnalogRole::code).toList());
        fields.put("kind", identity.kind().name());
    }

    private static void putSample(Map<String, String> fields, Sample sample) {
        put(fields, "time", sample.time());
        for (int meter = 0; meter < sample.meters().size(); meter++) {
            put(fields, "count" + meter, sample.meters().get(meter).count());
            put(fields, "edge" + meter, sample.meters().get(meter).lastEdge());
        }
        for (int channel = 0; channel < sample.analogs().size(); channel++) {
            put(fields, "mean" + channel, sample.analogs().get(channel).mean());
            put(fields, "min" + channel, sample.analogs().get(channel).min());
            put(fields, "max" + channel, sample.analogs().get(channel).max());
        }
        put(fields, "conversions", sample.conversions());
        putAll(fields, "applied", sample.applied());
        put(fields, "state", sample.state().code());
        put(fields, "inputs", sample.inputs().bits());
        put(fields, "events", sample.events());
    }

    private static void putBytes(Map<String, String> fields, Octets bytes) {
        fields.put("bytes", HexFormat.of().formatHex(bytes.toArray()));
    }

    private static void putAll(Map<String, String> fields, String name, List<? extends Number> values) {
        for (int index = 0; index < values.size(); index++) {
            put(fields, name + index, values.get(index).longValue());
        }
    }

    private static void put(Map<String, String> fields, String name, long value) {
        fields.put(name, Long.toString(value));
    }
}
