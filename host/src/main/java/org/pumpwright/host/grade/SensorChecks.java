package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.StandChecks.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.Certificate.Standing;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** Whether the stand's sensors give readings that a sound sensor can give, and whether their calibrations are in date. Thread-safe. */
final class SensorChecks {
    /** Fewer samples than this may be a spike. */
    private static final int LEAST_SAMPLES = 3;

    private SensorChecks() {}

    static List<StandCheck> of(Trace trace, Optional<LocalDate> day) {
        List<StandCheck> checks = new ArrayList<>();
        sound(trace).ifPresent(checks::add);
        day.ifPresent(today -> {
            checks.add(flowMeter(trace.channels().flowMeter().certificate(), today));
            checks.add(others(trace.channels(), today));
        });
        return checks;
    }

    /** Empty where no channel's calibration can tell a broken sensor. */
    private static Optional<StandCheck> sound(Trace trace) {
        List<AnalogChannel> telling = trace.channels().analogs().stream()
                .filter(channel -> !channel.calibration().sound().equals(CodeRange.WHOLE))
                .toList();
        if (telling.isEmpty()) {
            return Optional.empty();
        }
        List<String> troubles = telling.stream()
                .filter(channel -> channel.role() != ChannelRole.WATER_TEMPERATURE)
                .flatMap(channel -> trouble(channel, trace).stream())
                .toList();
        // Nothing is computed from the water's temperature, so its sensor alone makes no run invalid.
        List<String> notes = telling.stream()
                .filter(channel -> channel.role() == ChannelRole.WATER_TEMPERATURE)
                .flatMap(channel -> trouble(channel, trace).stream())
                .toList();
        List<String> all = Stream.concat(troubles.stream(), notes.stream()).toList();
        return Optional.of(check(
                "sensors",
                troubles.isEmpty(),
                all.isEmpty() ? "every reading is one that a sound sensor gives" : String.join("; ", all),
                "mend the sensor, its plug or its wire, then run again"));
    }

    private static Optional<String> trouble(AnalogChannel channel, Trace trace) {
        List<String> found = trace.samples().stream()
                .filter(Sample::armed)
                .filter(sample -> !isOverload(channel, channel.raw(sample)))
                .flatMap(sample -> channel.trouble(sample).stream())
                .toList();
        return found.size() < LEAST_SAMPLES
                ? Optional.empty()
                : Optional.of(channel.role().words() + ": " + found.get(0));
    }

    /** More current than the sensor can tell may be the unit's doing; the stop rules and the board speak of that. */
    private static boolean isOverload(AnalogChannel channel, int code) {
        return channel.role() == ChannelRole.SUPPLY_AMPS
                && code > channel.calibration().sound().most();
    }

    /** What a unit is judged by: out of date, nothing may be said of a unit. */
    private static StandCheck flowMeter(Certificate certificate, LocalDate day) {
        return check(
                "meter calibration",
                certificate.standing(day) != Standing.PAST_DUE,
                "flow meter: " + certificate.words(day),
                "calibrate the flow meter and enter the new K-factor, certificate and days in the stand's file, then run again");
    }

    /** Only told: a sensor that is a little late is watched by the checks of the supply, the zeros and the nozzle. */
    private static StandCheck others(Channels channels, LocalDate day) {
        Stream<String> meters = channels.meters().stream()
                .skip(1)
                .filter(meter -> isPastDue(meter.certificate(), day))
                .map((MeterChannel meter) ->
                        "meter " + meter.index() + ": " + meter.certificate().words(day));
        Stream<String> sensors = channels.analogs().stream()
                .filter(channel -> isPastDue(channel.certificate(), day))
                .map(channel ->
                        channel.role().words() + ": " + channel.certificate().words(day));
        String late = Stream.concat(meters, sensors).collect(Collectors.joining("; "));
        return check("calibration due", true, late.isEmpty() ? "nothing is past due" : "note: " + late, "");
    }

    private static boolean isPastDue(Certificate certificate, LocalDate day) {
        return certificate.standing(day) == Standing.PAST_DUE;
    }
}
