package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;

/**
 * What a harness takes at the current of the pump that it feeds: as a whole, on its ground side, and place by place. One
 * voltmeter reads all places. Between the battery's posts and the pump's plug its zero falls out of the difference; elsewhere
 * the zero is what the wires have left at no current, for a wire is a plain resistance. Places with names of their own are
 * {@code probe-battery}, {@code probe-plug}, {@code probe-ground-side} and {@code probe-fuse-holder}. Thread-safe.
 */
final class HarnessFindings {
    static final String STEP = "harness";

    private static final String BATTERY = "probe-battery";
    private static final String PLUG = "probe-plug";
    private static final String GROUND_SIDE = "probe-ground-side";
    private static final String FUSE = "probe-fuse-holder";
    private static final Set<String> NO_CONNECTORS = Set.of(BATTERY, PLUG, GROUND_SIDE, FUSE);

    private final List<PlaceDrop> places;
    private final double rated;
    private final Uncertain zero;
    private final double gain;

    private HarnessFindings(FindingInput input, List<PlaceDrop> places) {
        this.places = places;
        double most = places.stream().mapToDouble(PlaceDrop::mostAmps).min().orElseThrow();
        rated = input.nominal().ratedAmps().orElse(most);
        Channels channels = input.trace().channels();
        AnalogChannel volts = channels.required(ChannelRole.VOLTS_AT_PINS);
        AnalogChannel amps = channels.required(ChannelRole.SUPPLY_AMPS);
        zero = zero(places).orElse(Uncertain.of(0, Common.zero(volts)));
        gain = Math.hypot(Common.gain(volts, 1), amps.calibrationUncertainty(rated) / rated);
    }

    static List<Finding> of(FindingInput input) {
        if (input.plan().kind() != UnitKind.HARNESS) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>(HarnessPath.of(input));
        List<PlaceDrop> places = HarnessPlaces.of(input).stream()
                .flatMap(place -> PlaceDrop.of(place).stream())
                .toList();
        if (!places.isEmpty()) {
            findings.addAll(new HarnessFindings(input, places).findings());
        }
        return findings;
    }

    /** The mean of the wires' intercepts; empty where none was read. */
    private static Optional<Uncertain> zero(List<PlaceDrop> places) {
        List<PlaceDrop> wires =
                places.stream().filter(place -> place.place().isWire()).toList();
        if (wires.isEmpty()) {
            return Optional.empty();
        }
        double n = wires.size();
        double sum = 0;
        double squares = 0;
        for (PlaceDrop wire : wires) {
            sum += wire.offset();
            squares += wire.offsetUncertainty() * wire.offsetUncertainty();
        }
        return Optional.of(Uncertain.of(sum / n, Math.sqrt(squares) / n));
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        places.stream()
                .filter(place -> !place.place().name().equals(BATTERY)
                        && !place.place().name().equals(PLUG))
                .forEach(place -> findings.addAll(of(place)));
        total().ifPresent(findings::add);
        named(GROUND_SIDE)
                .ifPresent(place ->
                        findings.add(figure("ground side drop", drop(place), "from the plug's minus pin back")));
        named(FUSE).ifPresent(place -> findings.add(figure("fuse holder drop", drop(place), "with its fuse")));
        places.stream()
                .filter(place -> !place.place().isWire())
                .filter(place -> !NO_CONNECTORS.contains(place.place().name()))
                .max(Comparator.comparingDouble(place -> drop(place).value()))
                .ifPresent(worst -> findings.add(figure(
                        "largest connector drop",
                        drop(worst),
                        "the worst is " + worst.place().name())));
        return findings;
    }

    private Optional<PlaceDrop> named(String name) {
        return places.stream()
                .filter(place -> place.place().name().equals(name))
                .findFirst();
    }

    private Finding figure(String name, Uncertain volts, String note) {
        return Finding.figure(STEP, name, volts, FindingUnit.VOLTS, format("%s, at %.1f A", note, rated));
    }

    private List<Finding> of(PlaceDrop place) {
        return List.of(
                Finding.figure(
                        place.place().name(),
                        "drop at rated amps",
                        drop(place),
                        FindingUnit.VOLTS,
                        format("at %.1f A", rated)),
                Finding.figure(
                        place.place().name(),
                        "offset",
                        Uncertain.of(place.offset() - zero.value(), place.offsetUncertainty())
                                .with(zero.standardUncertainty(), zero.degreesOfFreedom()),
                        FindingUnit.VOLTS,
                        "left at no current: much of it tells a joint that is no plain resistance"));
    }

    private Uncertain drop(PlaceDrop place) {
        Uncertain volts = place.voltsAt(rated);
        double value = volts.value() - zero.value();
        return new Uncertain(value, volts.standardUncertainty(), volts.degreesOfFreedom())
                .with(zero.standardUncertainty(), zero.degreesOfFreedom())
                .with(Math.abs(value) * gain, Double.POSITIVE_INFINITY);
    }

    /** The voltmeter's zero falls out; its gain acts on the difference (JCGM 100, 5.2.2). */
    private Optional<Finding> total() {
        return named(BATTERY)
                .flatMap(battery -> named(PLUG).map(plug -> {
                    Uncertain at = plug.voltsAt(rated);
                    Uncertain post = battery.voltsAt(rated);
                    double value = post.value() - at.value();
                    return figure(
                            "total drop",
                            new Uncertain(value, post.standardUncertainty(), post.degreesOfFreedom())
                                    .with(at.standardUncertainty(), at.degreesOfFreedom())
                                    .with(Math.abs(value) * gain, Double.POSITIVE_INFINITY),
                            "the battery's posts less the pump's plug");
                }));
    }
}
