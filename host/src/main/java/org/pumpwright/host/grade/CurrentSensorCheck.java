package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.finding.Window;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/**
 * Water that flows while no current is read: the current sensor lies, since a pump can't pump without. Not asked where the
 * supply's current is not the pump's, as with a valve's coil or without water. Thread-safe.
 */
final class CurrentSensorCheck {
    /** A hold is looked at in its last third, when what its begin stirred up has come to rest. */
    private static final double FROM_SHARE = 2.0 / 3;

    private static final double LEAST_HOLD_SECONDS = 3;

    /** Where a pump moves water and how much current was read, A. */
    private record Look(String where, boolean flows, double amps) {}

    private CurrentSensorCheck() {}

    /** Empty where nothing was driven that should draw current and move water. */
    static Optional<StandCheck> of(GradingInput input, List<PointReading> points) {
        UnitKind kind = input.plan().kind();
        if (kind != UnitKind.PUMP_12V && kind != UnitKind.METER) {
            return Optional.empty();
        }
        Stream<Look> atPoints = points.stream()
                .filter(PointReading::driven)
                .map(p -> new Look(
                        p.mark().commanded().print(),
                        p.pulses() > 0 && !p.belowRange(),
                        p.supplyAmps().value()));
        Stream<Look> inHolds = input.trace().stretches().stream()
                .filter(stretch -> stretch.kind() == Stretch.Kind.HOLD && stretch.seconds() >= LEAST_HOLD_SECONDS)
                .flatMap(stretch -> look(input, stretch).stream());
        return Stream.concat(atPoints, inHolds)
                .filter(Look::flows)
                .min(Comparator.comparingDouble(Look::amps))
                .map(CurrentSensorCheck::check);
    }

    private static Optional<Look> look(GradingInput input, Stretch stretch) {
        Trace trace = input.trace();
        long from = stretch.fromNanos() + Math.round(FROM_SHARE * stretch.seconds() * 1e9);
        int drive = input.plan().wiring().drive();
        Window window = new Window(trace.between(from, stretch.toNanos()), trace.channels(), drive);
        if (window.size() < 3) {
            return Optional.empty();
        }
        boolean driven = window.samples().stream()
                .allMatch(sample -> sample.applied().get(drive).parts() > 0);
        Window.Flow flow = window.flow();
        boolean flows = driven && flow.value().value() > 0 && !flow.belowRange();
        return Optional.of(new Look(
                stretch.step(), flows, window.required(ChannelRole.SUPPLY_AMPS).value()));
    }

    private static StandCheck check(Look least) {
        return StandChecks.check(
                "current sensor",
                least.amps() > RestChecks.MOST_ZERO_AMPS,
                format(
                        "%.2f A while water flows at %s, more than %.2f A expected",
                        least.amps(), least.where(), RestChecks.MOST_ZERO_AMPS),
                "check the current sensor, its plug and its supply: no pump pumps without current; then run again");
    }
}
