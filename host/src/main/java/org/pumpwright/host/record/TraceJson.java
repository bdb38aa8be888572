package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.integer;
import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.word;

import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Trace;
import tools.jackson.databind.node.ObjectNode;

/** What was measured as JSON: channels and points; the samples are in {@link SampleColumns}. Thread-safe. */
final class TraceJson {
    private TraceJson() {}

    static ObjectNode write(Trace trace) {
        ObjectNode node = object();
        node.set("meters", list(trace.channels().meters(), TraceJson::meter));
        node.set("analogs", list(trace.channels().analogs(), TraceJson::analog));
        node.set("points", list(trace.points(), TraceJson::point));
        node.set("samples", SampleColumns.write(trace.samples()));
        return node;
    }

    static Trace read(JsonPlace at) {
        return new Trace(
                new Channels(
                        at.at("meters").list(TraceJson::meter), at.at("analogs").list(TraceJson::analog)),
                SampleColumns.read(at.at("samples")),
                at.at("points").list(TraceJson::point));
    }

    private static ObjectNode meter(MeterChannel meter) {
        ObjectNode node = object().put("index", meter.index());
        node.set("k_pulses_per_m3", number(meter.k().pulsesPerM3()));
        node.set("k_relative_uncertainty", number(meter.relativeUncertainty()));
        node.set("least_m3_per_second", number(meter.least().m3PerSecond()));
        return node.put("certificate", meter.certificate());
    }

    private static MeterChannel meter(JsonPlace at) {
        return new MeterChannel(
                at.at("index").smallInteger(),
                new KFactor(at.at("k_pulses_per_m3").number()),
                at.at("k_relative_uncertainty").number(),
                new FlowRate(at.at("least_m3_per_second").number()),
                at.at("certificate").text());
    }

    private static ObjectNode analog(AnalogChannel channel) {
        ChannelRole role = channel.role();
        ObjectNode node =
                object().put("role", word(role)).put("index", channel.index()).put("unit", role.siUnit());
        node.set("at_zero", number(channel.atZero()));
        node.set("span", number(channel.span()));
        node.set("gain_relative_uncertainty", number(channel.relativeUncertainty()));
        node.set("offset_uncertainty", number(channel.offsetUncertainty()));
        return node.put("certificate", channel.certificate());
    }

    private static AnalogChannel analog(JsonPlace at) {
        ChannelRole role = at.at("role").choice(ChannelRole.class);
        String unit = at.at("unit").text();
        if (!unit.equals(role.siUnit())) {
            throw new UnfitRecordException(
                    "%s is %s, the unit of %s is %s".formatted(at.at("unit").way(), unit, role.words(), role.siUnit()));
        }
        return new AnalogChannel(
                role,
                at.at("index").smallInteger(),
                at.at("at_zero").number(),
                at.at("span").number(),
                at.at("gain_relative_uncertainty").number(),
                at.at("offset_uncertainty").number(),
                at.at("certificate").text());
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
