package org.pumpwright.host.app.bucket;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Volume;

/**
 * Amounts of a sheet whose unit stands in the name of the key. A sheet keeps to one unit for each kind of amount: who writes
 * grams in one run and pounds in the next has most likely written the wrong figure. Confined to the reading thread.
 */
final class SheetUnits {
    /** The units of a kind by the end of the key, each with its SI factor. */
    @SuppressWarnings("ImmutableEnumChecker") // the maps are those of Map.of, which nobody can change
    private enum Kind {
        MASS(Map.of("grams", 1e-3, "kilograms", 1.0, "pounds", 0.45359237)),
        VOLUME(Map.of("litres", 1e-3, "us_gallons", Volume.M3_PER_US_GALLON)),
        FLOW(Map.of(
                "gpm",
                FlowRate.ofGallonsPerMinute(1).m3PerSecond(),
                "litres_per_minute",
                new FlowRate(1.0 / 60_000).m3PerSecond())),
        K(Map.of("pulses_per_us_gallon", 1 / Volume.M3_PER_US_GALLON, "pulses_per_litre", 1000.0));

        private final Map<String, Double> toSi;

        Kind(Map<String, Double> toSi) {
            this.toSi = toSi;
        }
    }

    private record Used(String unit, int line) {}

    private final Map<Kind, Used> used = new HashMap<>();

    Optional<Double> massKg(Node in, String prefix) {
        return amount(in, prefix, Kind.MASS);
    }

    Optional<Volume> volume(Node in) {
        return amount(in, "", Kind.VOLUME).map(Volume::new);
    }

    Optional<FlowRate> flow(Node in, String prefix) {
        return amount(in, prefix, Kind.FLOW).map(FlowRate::new);
    }

    /** A flow that must be there. */
    FlowRate requiredFlow(Node in, String prefix) {
        return flow(in, prefix).orElseThrow(() -> missing(in, prefix, Kind.FLOW));
    }

    Optional<KFactor> k(Node in, String prefix) {
        return amount(in, prefix, Kind.K).map(KFactor::new);
    }

    private Optional<Double> amount(Node in, String prefix, Kind kind) {
        Optional<Double> found = Optional.empty();
        String before = "";
        for (Map.Entry<String, Double> known : new TreeMap<>(kind.toSi).entrySet()) {
            String unit = known.getKey();
            Optional<Node> value = in.find(prefix + unit);
            if (value.isPresent()) {
                if (found.isPresent()) {
                    value.get().refuse("is there and so is %s: give one of the two".formatted(before));
                }
                checkSame(value.get(), kind, unit);
                found = Optional.of(value.get().number() * known.getValue());
                before = prefix + unit;
            }
        }
        return found;
    }

    private void checkSame(Node value, Kind kind, String unit) {
        Used first = used.putIfAbsent(kind, new Used(unit, value.line()));
        if (first != null && !first.unit().equals(unit)) {
            value.refuse("is in %s, line %d is in %s: units are mixed. Keep to one of them in the whole sheet"
                    .formatted(unit, first.line(), first.unit()));
        }
    }

    private static IllegalArgumentException missing(Node in, String prefix, Kind kind) {
        List<String> keys =
                kind.toSi.keySet().stream().sorted().map(unit -> prefix + unit).toList();
        String says = "needs %s".formatted(String.join(" or ", keys));
        in.refuse(says);
        return new IllegalArgumentException(says);
    }

    static IllegalArgumentException missing(Node in, String says) {
        in.refuse(says);
        return new IllegalArgumentException(says);
    }
}
