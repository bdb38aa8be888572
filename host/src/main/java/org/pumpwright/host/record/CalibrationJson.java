package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.list;

import java.util.OptionalDouble;
import org.pumpwright.host.calibration.Calibration;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.calibration.MonitorVolts;
import org.pumpwright.host.calibration.Polynomial;
import org.pumpwright.host.calibration.Ratiometric;
import org.pumpwright.host.calibration.SteinhartHart;
import org.pumpwright.host.calibration.StraightLine;
import org.pumpwright.host.calibration.Thermistor;
import org.pumpwright.host.calibration.UncertaintyParts;
import tools.jackson.databind.node.ObjectNode;

/**
 * The calibration of an analogue channel as JSON, in the SI unit of the channel. The kind is named except for a straight line,
 * and what is 0 or says nothing is left out, so that a channel of the first records looks as it always did. Thread-safe.
 */
final class CalibrationJson {
    private static final String KIND = "kind";
    private static final String STRAIGHT = "straight-line";
    private static final String SOUND_LEAST = "sound_from_65536ths";
    private static final String SOUND_MOST = "sound_to_65536ths";

    private CalibrationJson() {}

    /** Adds the calibration to its channel. */
    static void write(Calibration calibration, ObjectNode channel) {
        if (calibration instanceof StraightLine line) {
            put(channel, "at_zero", line.atZero());
            put(channel, "span", line.span());
            parts(line.parts(), channel);
            if (!line.sound().equals(CodeRange.WHOLE)) {
                sound(line.sound(), channel);
            }
        } else if (calibration instanceof Polynomial polynomial) {
            channel.put(KIND, "polynomial");
            channel.set("coefficients", list(polynomial.coefficients(), RecordLayout::number));
            parts(polynomial.parts(), channel);
            sound(polynomial.sound(), channel);
        } else if (calibration instanceof Ratiometric ratio) {
            channel.put(KIND, "ratiometric");
            put(channel, "low_share", ratio.lowShare());
            put(channel, "high_share", ratio.highShare());
            put(channel, "at_low", ratio.siAtLow());
            put(channel, "at_high", ratio.siAtHigh());
            parts(ratio.parts(), channel);
            sound(ratio.sound(), channel);
        } else if (calibration instanceof Thermistor thermistor) {
            thermistor(thermistor, channel);
        } else if (calibration instanceof MonitorVolts volts) {
            channel.put(KIND, "monitor-volts");
            parts(volts.parts(), channel);
        } else if (calibration instanceof MonitorAmps amps) {
            channel.put(KIND, "monitor-amps");
            put(channel, "shunt_ohms", amps.shuntOhms());
            amps.wantedStep().ifPresent(step -> put(channel, "current_step_amps", step));
            parts(amps.parts(), channel);
        } else {
            throw new IllegalArgumentException("a record has no form for a " + calibration.kind());
        }
    }

    private static void thermistor(Thermistor thermistor, ObjectNode channel) {
        channel.put(KIND, "thermistor");
        put(channel, "steinhart_hart_a", thermistor.curve().a());
        put(channel, "steinhart_hart_b", thermistor.curve().b());
        put(channel, "steinhart_hart_c", thermistor.curve().c());
        put(channel, "pull_up_ohms", thermistor.pullUpOhms());
        put(channel, "least_kelvin", thermistor.leastKelvin());
        put(channel, "most_kelvin", thermistor.mostKelvin());
        parts(thermistor.parts(), channel);
    }

    static Calibration read(JsonPlace at) {
        String kind = at.at(KIND).ifThere(JsonPlace::text).orElse(STRAIGHT);
        UncertaintyParts parts = parts(at);
        return switch (kind) {
            case STRAIGHT ->
                new StraightLine(
                        number(at, "at_zero"),
                        number(at, "span"),
                        parts,
                        at.at(SOUND_LEAST).ifThere(any -> sound(at)).orElse(CodeRange.WHOLE));
            case "polynomial" -> new Polynomial(at.at("coefficients").list(JsonPlace::number), sound(at), parts);
            case "ratiometric" ->
                new Ratiometric(
                        number(at, "low_share"),
                        number(at, "high_share"),
                        number(at, "at_low"),
                        number(at, "at_high"),
                        parts,
                        sound(at));
            case "thermistor" ->
                new Thermistor(
                        new SteinhartHart(
                                number(at, "steinhart_hart_a"),
                                number(at, "steinhart_hart_b"),
                                number(at, "steinhart_hart_c")),
                        number(at, "pull_up_ohms"),
                        number(at, "least_kelvin"),
                        number(at, "most_kelvin"),
                        parts);
            case "monitor-volts" -> new MonitorVolts(parts);
            case "monitor-amps" -> new MonitorAmps(number(at, "shunt_ohms"), wantedStep(at), parts);
            default ->
                throw new UnfitRecordException("%s is \"%s\", which is not known here"
                        .formatted(at.at(KIND).way(), kind));
        };
    }

    private static OptionalDouble wantedStep(JsonPlace at) {
        return at.at("current_step_amps")
                .ifThere(step -> OptionalDouble.of(step.number()))
                .orElse(OptionalDouble.empty());
    }

    private static void parts(UncertaintyParts parts, ObjectNode channel) {
        put(channel, "gain_relative_uncertainty", parts.gainShare());
        put(channel, "offset_uncertainty", parts.offset());
        if (parts.fit() != 0) {
            put(channel, "fit_uncertainty", parts.fit());
        }
        if (parts.stepCodes() != 0) {
            put(channel, "converter_step_65536ths", parts.stepCodes());
        }
    }

    private static UncertaintyParts parts(JsonPlace at) {
        return new UncertaintyParts(
                number(at, "gain_relative_uncertainty"),
                number(at, "offset_uncertainty"),
                at.at("fit_uncertainty").ifThere(JsonPlace::number).orElse(0.0),
                at.at("converter_step_65536ths").ifThere(JsonPlace::number).orElse(0.0));
    }

    private static void sound(CodeRange sound, ObjectNode channel) {
        put(channel, SOUND_LEAST, sound.least());
        put(channel, SOUND_MOST, sound.most());
    }

    private static CodeRange sound(JsonPlace at) {
        return new CodeRange(number(at, SOUND_LEAST), number(at, SOUND_MOST));
    }

    private static void put(ObjectNode node, String key, double value) {
        node.set(key, RecordLayout.number(value));
    }

    private static double number(JsonPlace at, String key) {
        return at.at(key).number();
    }
}
