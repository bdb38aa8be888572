package org.pumpwright.host.app.bucket;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.pumpwright.host.calibrate.Bench;
import org.pumpwright.host.calibrate.Comparing;
import org.pumpwright.host.calibrate.FlowRange;
import org.pumpwright.host.calibrate.Measuring;
import org.pumpwright.host.calibrate.Method;
import org.pumpwright.host.calibrate.Scale;
import org.pumpwright.host.calibrate.Start;
import org.pumpwright.host.calibrate.Thermometer;
import org.pumpwright.host.calibrate.Timing;
import org.pumpwright.host.calibrate.Weighing;
import org.pumpwright.host.calibrate.fluid.Air;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.calibrate.fluid.Product;
import org.pumpwright.host.calibrate.fluid.Water;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.record.BucketRecord.Condition;
import org.pumpwright.host.record.BucketRecord.Equipment;

/** The bench of a sheet: scale, vessel or master meter, thermometer, liquid, air. Confined to the reading thread. */
final class BenchReader {
    private static final double GRAM = 1e-3;
    private static final double LITRE = 1e-3;
    private static final double MILLILITRE = 1e-6;
    private static final double PERCENT = 0.01;
    private static final double HECTOPASCAL = 100;
    private static final double USUAL_HUMIDITY = 50;
    /** Temperature, pressure and humidity guessed at the bench leave this in the air's density; common practice, no source. */
    private static final double USUAL_AIR_HALF_WIDTH = 0.06;

    private final Node sheet;
    private final SheetUnits units;
    private final List<Equipment> equipment = new ArrayList<>();
    private final List<Condition> conditions = new ArrayList<>();

    BenchReader(Node sheet, SheetUnits units) {
        this.sheet = sheet;
        this.units = units;
    }

    List<Equipment> equipment() {
        return equipment;
    }

    List<Condition> conditions() {
        return conditions;
    }

    Bench bench() {
        Method method = switch (sheet.text("method")) {
            case "weighed" -> weighing();
            case "vessel" -> vessel();
            default -> master();
        };
        Node thermometer = sheet.at("thermometer");
        Thermometer reads = made(
                thermometer,
                () -> new Thermometer(equipment("thermometer", thermometer), thermometer.number("half_width_kelvin")));
        return new Bench(
                method,
                timing(),
                reads,
                number(sheet, "line_millilitres", 0) * MILLILITRE,
                sheet.find("timing").map(t -> number(t, "pulse_step", 1)).orElse(1.0));
    }

    private Timing timing() {
        Start start = sheet.text("start").equals("flying") ? Start.FLYING : Start.STANDING;
        return sheet.find("timing")
                .map(node -> new Timing(
                        start, number(node, "excess_seconds", 0), number(node, "switch_half_width_seconds", 0)))
                .orElse(new Timing(start, 0, 0));
    }

    private Weighing weighing() {
        Node scale = needed("scale");
        Node bucket = needed("bucket");
        Scale under = made(
                scale,
                () -> new Scale(
                        equipment("scale", scale),
                        number(scale, "expanded_grams", 0) * GRAM,
                        number(scale, "coverage", 2),
                        number(scale, "linearity_grams", 0) * GRAM,
                        scale.number("step_grams") * GRAM,
                        number(scale, "drift_grams", 0) * GRAM,
                        scale.number("capacity_kilograms")));
        Node air = needed("air");
        return made(
                bucket,
                () -> new Weighing(
                        under,
                        air(air),
                        number(air, "half_width_kg_per_m3", USUAL_AIR_HALF_WIDTH),
                        number(bucket, "splash_grams", 0) * GRAM,
                        bucket.number("litres") * LITRE));
    }

    private Air air(Node node) {
        Air air = new Air(
                node.number("celsius"),
                node.number("hectopascals") * HECTOPASCAL,
                number(node, "humidity_percent", USUAL_HUMIDITY));
        conditions.add(new Condition("Air temperature", air.celsius(), "°C"));
        conditions.add(new Condition("Air pressure", air.pascals() / HECTOPASCAL, "hPa"));
        conditions.add(new Condition("Air humidity", air.humidityPercent(), "%"));
        conditions.add(new Condition("Air density", air.kgPerM3(), "kg/m3"));
        return air;
    }

    private Measuring vessel() {
        Node vessel = needed("vessel");
        return made(
                vessel,
                () -> new Measuring(
                        equipment("vessel", vessel),
                        vessel.number("marks_percent") * PERCENT,
                        number(vessel, "coverage", 2),
                        number(vessel, "level_millilitres", 0) * MILLILITRE,
                        number(vessel, "residue_millilitres", 0) * MILLILITRE,
                        number(vessel, "expansion_per_kelvin", 0),
                        number(vessel, "marked_celsius", 20),
                        vessel.number("litres") * LITRE));
    }

    private Comparing master() {
        Node master = needed("master");
        KFactor k = units.k(master, "")
                .orElseThrow(() -> SheetUnits.missing(master, "needs pulses_per_us_gallon or pulses_per_litre"));
        FlowRange range = range(units, master, "");
        return made(
                master,
                () -> new Comparing(
                        equipment("master meter", master),
                        KCurve.constant(k),
                        master.number("expanded_percent") * PERCENT,
                        number(master, "coverage", 2),
                        number(master, "drift_percent", 0) * PERCENT,
                        range));
    }

    /** A range of flows, by the keys that end its prefix with {@code least_} and {@code most_}. */
    static FlowRange range(SheetUnits units, Node in, String prefix) {
        FlowRate least = units.requiredFlow(in, prefix + "least_");
        FlowRate most = units.requiredFlow(in, prefix + "most_");
        return made(in, () -> new FlowRange(least, most));
    }

    /** Water, or a product whose density was measured; empty for a product without. */
    Optional<Liquid> liquid() {
        Node node = sheet.at("liquid");
        if (node.text("name").equalsIgnoreCase("water")
                && node.find("kg_per_m3").isEmpty()) {
            Water water = new Water(
                    false,
                    number(node, "allowance_kg_per_m3", Water.TAP.allowanceKgPerM3()),
                    number(node, "half_width_kg_per_m3", Water.TAP.halfWidthKgPerM3()));
            return Optional.of(water);
        }
        if (node.find("kg_per_m3").isEmpty()) {
            return Optional.empty();
        }
        if (node.find("celsius").isEmpty()) {
            throw SheetUnits.missing(node, "has a density without its temperature: add celsius");
        }
        return Optional.of(made(
                node,
                () -> new Product(
                        node.text("name"),
                        node.number("kg_per_m3"),
                        node.number("celsius"),
                        number(node, "kg_per_m3_per_kelvin", 0),
                        number(node, "half_width_kg_per_m3", 0))));
    }

    private Certificate equipment(String role, Node node) {
        Certificate certificate =
                new Certificate(SheetFile.filledIn(node.at("certificate")), day(node, "calibrated"), day(node, "due"));
        equipment.add(
                new Equipment(role, node.find("name").map(SheetFile::filledIn).orElse("not named"), certificate));
        return certificate;
    }

    private Node needed(String key) {
        return sheet.find(key)
                .orElseThrow(() -> SheetUnits.missing(
                        sheet.at("method"), "is %s, so the sheet needs %s".formatted(sheet.text("method"), key)));
    }

    /** A day that a person wrote. */
    static Optional<LocalDate> day(Node in, String key) {
        return in.find(key).map(node -> {
            try {
                return LocalDate.parse(node.text());
            } catch (DateTimeException e) {
                throw SheetUnits.missing(node, "is %s, there is no such day".formatted(node.found()));
            }
        });
    }

    static double number(Node in, String key, double otherwise) {
        return in.find(key).map(Node::number).orElse(otherwise);
    }

    /** What a type refuses is told with the line of what it was made from. */
    static <T> T made(Node from, Supplier<T> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            from.refuse("cannot be used: " + e.getMessage());
            throw e;
        }
    }
}
