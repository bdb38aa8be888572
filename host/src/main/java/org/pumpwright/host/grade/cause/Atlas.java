package org.pumpwright.host.grade.cause;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.catalog.UnitKind;
import tools.jackson.databind.json.JsonMapper;

/**
 * How healthy and faulty units of one kind read, computed from simulated units that went through a plan of the shop, and
 * the words that belong to each cause. A file of figures ({@code atlas-*.json}) is made by a program and never by hand; a
 * file of words ({@code words-*.json}) by hand only. Thread-safe.
 *
 * @param about where the figures come from
 * @param keys the readings, in the order of every pattern's figures
 * @param healthy units in good order
 * @param faults everything else
 */
public record Atlas(String about, List<String> keys, Pattern healthy, List<Fault> faults) {
    /**
     * A fault of the unit or of the stand.
     *
     * @param id its short name
     * @param severities its states from the mildest to the gravest; one for a fault that has no lesser degree
     */
    public record Fault(String id, List<Pattern> severities) {
        public Fault {
            severities = List.copyOf(severities);
            if (severities.isEmpty()) {
                throw new IllegalArgumentException("fault " + id + " has no pattern");
            }
        }
    }

    public Atlas {
        keys = List.copyOf(keys);
        faults = List.copyOf(faults);
        Set<String> ids = new HashSet<>();
        for (Fault fault : faults) {
            if (!ids.add(fault.id())) {
                throw new IllegalArgumentException("fault " + fault.id() + " is given twice");
            }
            fault.severities().forEach(Atlas.ofSize(keys.size())::check);
        }
        ofSize(keys.size()).check(healthy);
    }

    private interface SizeCheck {
        void check(Pattern pattern);
    }

    private static SizeCheck ofSize(int size) {
        return pattern -> {
            if (pattern.mean().size() != size) {
                throw new IllegalArgumentException("a pattern has %d readings, the atlas %d"
                        .formatted(pattern.mean().size(), size));
            }
        };
    }

    /** The atlas that comes with the program; empty for a kind of unit that has none. */
    public static Optional<Atlas> of(UnitKind kind) {
        return Standard.ALL.getOrDefault(kind, Optional.empty());
    }

    /** Read once, when it is first needed. */
    private static final class Standard {
        static final Map<UnitKind, Optional<Atlas>> ALL = all();

        private static Map<UnitKind, Optional<Atlas>> all() {
            Map<UnitKind, Optional<Atlas>> all = new EnumMap<>(UnitKind.class);
            for (UnitKind kind : UnitKind.values()) {
                all.put(kind, read("atlas-" + fileWord(kind) + ".json", Atlas.class));
            }
            return all;
        }
    }

    static String fileWord(UnitKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static <T> Optional<T> read(String name, Class<T> type) {
        try (InputStream data = Atlas.class.getResourceAsStream(name)) {
            return data == null
                    ? Optional.empty()
                    : Optional.of(JsonMapper.builder().build().readValue(data, type));
        } catch (IOException e) {
            throw new UncheckedIOException("the program's " + name + " cannot be read", e);
        }
    }
}
