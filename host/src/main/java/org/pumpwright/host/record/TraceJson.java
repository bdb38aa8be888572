package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.integer;
import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.word;

import java.util.List;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;
import tools.jackson.databind.node.ObjectNode;

/** What was measured as JSON: channels and points; the samples are in {@link SampleColumns}. Thread-safe. */
final class TraceJson {
    private TraceJson() {}

    static ObjectNode write(Trace trace) {
        ObjectNode node = writeAllButTheSamples(trace);
        node.set("samples", SampleColumns.write(trace.samples()));
        return node;
    }

    static ObjectNode writeAllButTheSamples(Trace trace) {
        ObjectNode node = object();
        node.set("meters", list(trace.channels().meters(), MeterJson::write));
        node.set("analogs", list(trace.channels().analogs(), TraceJson::analog));
        node.set("points", list(trace.points(), TraceJson::point));
        if (!trace.stretches().isEmpty()) {
            node.set("stretches", list(trace.stretches(), TraceJson::stretch));
        }
        if (!trace.answers().isEmpty()) {
            node.set("answers", list(trace.answers(), TraceJson::answer));
        }
        return node;
    }

    static Trace read(JsonPlace at) {
        return read(at, SampleColumns.read(at.at("samples")));
    }

    /** The same with samples that are kept elsewhere. */
    static Trace read(JsonPlace at, List<Sample> samples) {
        return new Trace(
                new Channels(
                        at.at("meters").list(MeterJson::read), at.at("analogs").list(TraceJson::analog)),
                samples,
                at.at("points").list(TraceJson::point),
                at.at("stretches").listOrNone(TraceJson::stretch),
                at.at("answers").listOrNone(TraceJson::answer));
    }

    private static ObjectNode stretch(Stretch stretch) {
        ObjectNode node = object().put("step", stretch.step()).put("kind", word(stretch.kind()));
        node.set("from_ns", integer(stretch.fromNanos()));
        node.set("to_ns", integer(stretch.toNanos()));
        return node;
    }

    private static Stretch stretch(JsonPlace at) {
        return new Stretch(
                at.at("step").text(),
                at.at("kind").choice(Stretch.Kind.class),
                at.at("from_ns").integer(),
                at.at("to_ns").integer());
    }

    private static ObjectNode answer(Answer answer) {
        ObjectNode node = object().put("step", answer.step())
                .put("question", answer.question())
                .put("word", answer.word());
        node.set("board_ns", integer(answer.boardNanos()));
        return node;
    }

    private static Answer answer(JsonPlace at) {
        return new Answer(
                at.at("step").text(),
                at.at("question").text(),
                at.at("word").text(),
                at.at("board_ns").integer());
    }

    private static ObjectNode analog(AnalogChannel channel) {
        ChannelRole role = channel.role();
        ObjectNode node =
                object().put("role", word(role)).put("index", channel.index()).put("unit", role.siUnit());
        CalibrationJson.write(channel.calibration(), node);
        CertificateJson.write(channel.certificate(), node);
        return node;
    }

    private static AnalogChannel analog(JsonPlace at) {
        ChannelRole role = at.at("role").choice(ChannelRole.class);
        String unit = at.at("unit").text();
        if (!unit.equals(role.siUnit())) {
            throw new UnfitRecordException(
                    "%s is %s, the unit of %s is %s".formatted(at.at("unit").way(), unit, role.words(), role.siUnit()));
        }
        return new AnalogChannel(
                role, at.at("index").smallInteger(), CalibrationJson.read(at), CertificateJson.read(at));
    }

    private static ObjectNode point(PointMark point) {
        ObjectNode node = object().put("number", point.number())
                .put("leg", word(point.leg()))
                .put("commanded_65536ths", point.commanded().parts());
        node.set("set_ns", integer(point.setNanos()));
        node.set("measure_from_ns", integer(point.measureFromNanos()));
        node.set("end_ns", integer(point.endNanos()));
        return node.put("settled", point.settled()).put("enough_pulses", point.enoughPulses());
    }

    private static PointMark point(JsonPlace at) {
        return new PointMark(
                at.at("number").smallInteger(),
                at.at("leg").choice(Leg.class),
                new Duty(at.at("commanded_65536ths").smallInteger()),
                at.at("set_ns").integer(),
                at.at("measure_from_ns").integer(),
                at.at("end_ns").integer(),
                at.at("settled").flag(),
                at.at("enough_pulses").flag());
    }
}
