package org.pumpwright.protocol;

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
            case "stream" -> new Stream(integer("periodMs"));
            case "keep-alive" -> new KeepAlive();
            case "make-safe" -> new MakeSafe();
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
                integer("rampLimit"),
                integer("linkTimeoutMs"),
                new OverCurrentRule(integer("currentChannel"), integer("overCurrentLimit"), integer("overCurrentMs")),
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
        }
        return fields;
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
        put(fields, "rampLimit", identity.rampLimit());
        put(fields, "linkTimeoutMs", identity.linkTimeoutMs());
        put(fields, "currentChannel", identity.overCurrent().channel());
        put(fields, "overCurrentLimit", identity.overCurrent().limit());
        put(fields, "overCurrentMs", identity.overCurrent().timeMs());
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
        put(fields, "applied0", sample.applied().get(0));
        put(fields, "applied1", sample.applied().get(1));
        put(fields, "state", sample.state().code());
        put(fields, "inputs", sample.inputs().bits());
        put(fields, "events", sample.events());
    }

    private static void put(Map<String, String> fields, String name, long value) {
        fields.put(name, Long.toString(value));
    }
}
