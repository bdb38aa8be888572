package org.pumpwright.host.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.Atlas;
import org.pumpwright.host.grade.cause.AtlasMaker;
import org.pumpwright.host.grade.cause.AtlasMaker.Unit;
import org.pumpwright.host.plan.Plan;
import tools.jackson.databind.json.JsonMapper;

/**
 * Makes the atlases of causes from simulated units that go through the shop's plans on the simulated stand. {@code main}
 * writes them anew: the folder with the data, the folder to write to, the kinds (none: all).
 */
final class CauseAtlasBuilder {
    private static final long SEED = 20_260;
    private static final int CURVE_UNITS = 40;
    private static final Map<UnitKind, String> PLANS = Map.of(
            UnitKind.PUMP_12V, "full-12v-pump",
            UnitKind.HYDRAULIC_PUMP, "valve-sweep",
            UnitKind.DRIVER, "driver-loads",
            UnitKind.METER, "meter-check",
            UnitKind.HARNESS, "harness-drop");

    private CauseAtlasBuilder() {}

    public static void main(String[] arguments) throws Exception {
        Shelf shelf = new Shelf(Path.of(arguments[0]));
        for (UnitKind kind : UnitKind.values()) {
            String word = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            if (arguments.length < 3
                    || List.of(arguments).subList(2, arguments.length).contains(word)) {
                Plan plan = shelf.plan(PLANS.get(kind));
                CauseSamples samples = new CauseSamples(shelf.stand("simulated"), plan, SEED, CURVE_UNITS);
                int count = healthyUnits(kind);
                Atlas atlas = make(
                        plan,
                        CauseSamples.units(samples.healthy(count)),
                        samples.faults(faultyUnits(kind), count, System.err));
                write(atlas, Path.of(arguments[1], "atlas-" + word + ".json"));
            }
        }
    }

    /** The meter of the stand may misread by these, as logarithms of the ratio. */
    private static final List<Double> MISREADINGS = List.of(0.05, 0.1, 0.2, 0.4);

    static Atlas make(Plan plan, List<Unit> healthy, Map<String, List<List<Unit>>> faults) {
        Map<String, List<List<Unit>>> all = new LinkedHashMap<>(faults);
        if (plan.kind() == UnitKind.PUMP_12V) {
            all.put(
                    "meter-low",
                    MISREADINGS.stream()
                            .map(by -> AtlasMaker.misread(healthy, -by))
                            .toList());
            all.put(
                    "meter-high",
                    MISREADINGS.stream()
                            .map(by -> AtlasMaker.misread(healthy, by))
                            .toList());
        }
        return AtlasMaker.make(
                "Made by a program from simulated units that went through the plan %s; see docs/metrology/causes.md."
                        .formatted(plan.label()),
                key -> used(plan.kind(), key),
                healthy,
                all);
    }

    /** Readings that tell nothing of their own only make the file large. */
    private static boolean used(UnitKind kind, String key) {
        if (key.contains("settling time") || key.endsWith("drift of the flow") || key.endsWith("/hysteresis")) {
            return false;
        }
        return switch (kind) {
            case PUMP_12V -> !key.startsWith("gap@") || key.equals("gap@25") || key.equals("gap@50");
            case METER -> true;
            case HYDRAULIC_PUMP ->
                !key.startsWith("gap@") || key.equals("gap@30") || key.equals("gap@60") || key.equals("gap@90");
            case DRIVER ->
                !key.startsWith("flow@")
                        && !key.startsWith("gap@")
                        && !key.startsWith("duty/amps")
                        && !key.startsWith("duty/volts")
                        && (!key.contains("frequency") || key.equals("duty/output frequency at 50 %"));
            case HARNESS ->
                key.startsWith("harness/")
                        || key.startsWith("wiggle/")
                        || key.endsWith("/resistance")
                        || key.endsWith("/offset")
                        || key.endsWith("-15a/volts")
                        || key.equals("battery-15a/amps");
        };
    }

    private static int healthyUnits(UnitKind kind) {
        return kind == UnitKind.PUMP_12V ? 120 : 40;
    }

    private static int faultyUnits(UnitKind kind) {
        return kind == UnitKind.PUMP_12V ? 10 : 6;
    }

    static void write(Atlas atlas, Path file) throws java.io.IOException {
        String json = JsonMapper.builder().build().writeValueAsString(atlas);
        Files.write(file, json.replace("{\"id\"", "\n{\"id\"").concat("\n").getBytes(StandardCharsets.UTF_8));
    }
}
