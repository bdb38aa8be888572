package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.finding.Window;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** Whether the pressure sensor gives what water can have: not much below the air's, and no reading at the rail. Thread-safe. */
final class PressureSensorCheck {
    /** Less than the worst zero error of a sensor that can be used, and water cannot pull on an open nozzle. */
    private static final Pressure LEAST_AT_REST = Pressure.ofPsi(-2);

    /** The highest reading of a 10-bit converter, left-justified; that of a finer one lies above. */
    private static final int RAIL = 1023 * 64;

    /** Fewer samples than this may be a spike. */
    private static final int LEAST_SAMPLES = 3;

    private PressureSensorCheck() {}

    /** Empty where the stand has no such sensor, or was not at rest. */
    static Optional<StandCheck> of(Trace trace, UnitSystem units) {
        List<Sample> rest = RestReading.samples(trace);
        return rest.isEmpty()
                ? Optional.empty()
                : trace.channels()
                        .analog(ChannelRole.OUTLET_PRESSURE)
                        .map(channel -> check(trace, new Window(rest, trace.channels(), 0), channel, units));
    }

    private static StandCheck check(Trace trace, Window rest, AnalogChannel channel, UnitSystem units) {
        long atRail = trace.samples().stream()
                .filter(Sample::armed)
                .filter(sample -> channel.raw(sample) >= RAIL)
                .count();
        Pressure atRest =
                new Pressure(rest.required(ChannelRole.OUTLET_PRESSURE).value());
        boolean railed = atRail >= LEAST_SAMPLES;
        String finding = railed
                ? format("at the converter's rail in %d samples", atRail)
                : format("%s at rest, at least %s expected", atRest.print(units), LEAST_AT_REST.print(units));
        return StandChecks.check(
                "pressure sensor",
                !railed && atRest.pascals() >= LEAST_AT_REST.pascals(),
                finding,
                "check the pressure sensor, its plug and its supply, then run again");
    }
}
