package org.pumpwright.host.plant.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.pumpwright.host.plant.Range;
import org.pumpwright.host.plant.UsUnits;

/**
 * A harness and its source: everything the model needs except randomness. Thread-safe.
 *
 * @param openCircuitVolts source without load
 * @param sourceOhms its inner resistance
 * @param supplySide from battery plus to the pump's plus pin, in order
 * @param groundSide from the pump's minus pin to battery minus, in order
 * @param fuseAmps what the fuse is rated for
 * @param leakOhms leakage between the pump's pins; infinite when dry
 * @param shortsPerMinute how often the chafed supply wire touches the frame
 * @param openingsPerMinute how often the loose pin opens
 */
public record HarnessParameters(
        double openCircuitVolts,
        double sourceOhms,
        List<Element> supplySide,
        List<Element> groundSide,
        double fuseAmps,
        double leakOhms,
        double shortsPerMinute,
        double openingsPerMinute) {

    /** Names of the places where faults sit. */
    static final String SPLICE = "splice";

    static final String FUSE_HOLDER = "fuse holder";
    static final String GROUND_STUD = "ground stud";
    static final String SUPPLY_WIRE = "supply wire";
    static final String GROUND_WIRE = "ground wire";

    /** Copies the lists. */
    public HarnessParameters {
        Range.check("open-circuit voltage", openCircuitVolts, 0.1, 1000, "V");
        Range.check("source resistance", sourceOhms, 0, 10, "ohm");
        Range.check("fuse", fuseAmps, 0.1, 1000, "A");
        Range.check("leakage", leakOhms, 1, Double.POSITIVE_INFINITY, "ohm");
        Range.check("shorts", shortsPerMinute, 0, 1000, "per min");
        Range.check("openings", openingsPerMinute, 0, 1000, "per min");
        supplySide = List.copyOf(supplySide);
        groundSide = List.copyOf(groundSide);
    }

    /** 24 ft of 6 AWG each way for a pump of 13 A, all joints clean; assumed. */
    public static HarnessParameters healthy() {
        double kelvin = UsUnits.ZERO_CELSIUS_KELVIN + 20;
        double metres = 24 * 0.3048;
        return new HarnessParameters(
                13.8,
                0.01,
                List.of(
                        Joint.clean("battery terminal", 0.0005),
                        Joint.clean(FUSE_HOLDER, 0.0030),
                        new WireRun(SUPPLY_WIRE, WireGauge.AWG6, metres, kelvin),
                        Joint.clean(SPLICE, 0.0005),
                        Joint.clean("pump plug, plus", 0.0015)),
                List.of(
                        Joint.clean("pump plug, minus", 0.0015),
                        new WireRun(GROUND_WIRE, WireGauge.AWG6, metres, kelvin),
                        Joint.clean(GROUND_STUD, 0.0005)),
                20,
                Double.POSITIVE_INFINITY,
                0,
                0);
    }

    /** Places a probe can reach, from battery plus to battery minus. */
    public List<String> points() {
        List<String> points = new ArrayList<>();
        points.add("battery plus");
        supplySide.forEach(element -> points.add("after " + element.name()));
        points.add("pump minus pin");
        groundSide.forEach(element -> points.add("after " + element.name()));
        return List.copyOf(points);
    }

    HarnessParameters withElement(String name, UnaryOperator<Element> change) {
        return withSides(changed(supplySide, name, change), changed(groundSide, name, change));
    }

    HarnessParameters withSides(List<Element> supply, List<Element> ground) {
        return new HarnessParameters(
                openCircuitVolts, sourceOhms, supply, ground, fuseAmps, leakOhms, shortsPerMinute, openingsPerMinute);
    }

    HarnessParameters withFuse(double amps) {
        return new HarnessParameters(
                openCircuitVolts,
                sourceOhms,
                supplySide,
                groundSide,
                amps,
                leakOhms,
                shortsPerMinute,
                openingsPerMinute);
    }

    HarnessParameters withLeak(double ohms) {
        return new HarnessParameters(
                openCircuitVolts,
                sourceOhms,
                supplySide,
                groundSide,
                fuseAmps,
                ohms,
                shortsPerMinute,
                openingsPerMinute);
    }

    HarnessParameters withEvents(double shorts, double openings) {
        return new HarnessParameters(
                openCircuitVolts, sourceOhms, supplySide, groundSide, fuseAmps, leakOhms, shorts, openings);
    }

    private static List<Element> changed(List<Element> side, String name, UnaryOperator<Element> change) {
        return side.stream()
                .map(element -> element.name().equals(name) ? change.apply(element) : element)
                .toList();
    }
}
