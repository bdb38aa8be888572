package org.pumpwright.host.grade.cause;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.catalog.UnitKind;

/**
 * The words that belong to the causes of one kind of unit, and the tests that tell them apart. Thread-safe.
 *
 * @param causes the words of each cause
 * @param tests the cheapest first
 */
record CauseTexts(List<Text> causes, List<Test> tests) {
    /**
     * The words of one cause.
     *
     * @param id its id in the atlas
     * @param name in plain words
     * @param pattern how it shows, in words
     * @param nextTest what confirms it
     * @param needs what must have been read before it may be named
     * @param surer what need not have been read, but would tell it from its rivals more surely
     */
    record Text(String id, String name, String pattern, String nextTest, List<Need> needs, List<Need> surer) {
        Text {
            needs = List.copyOf(needs);
            surer = List.copyOf(surer);
        }

        /** The words of readings that are asked for and were not taken. */
        static List<String> missing(List<Need> asked, Evidence evidence) {
            return asked.stream()
                    .filter(need -> !need.met(evidence))
                    .map(Need::words)
                    .toList();
        }
    }

    /**
     * Readings that a cause can't do without.
     *
     * @param keys how their keys begin
     * @param least how many of them
     * @param words for people, after "read as well"
     */
    record Need(List<String> keys, int least, String words) {
        Need {
            keys = List.copyOf(keys);
        }

        boolean met(Evidence evidence) {
            long found = evidence.observations().keySet().stream()
                    .filter(key -> keys.stream().anyMatch(key::startsWith))
                    .count();
            return found >= least;
        }
    }

    /**
     * A test and what it comes out as.
     *
     * @param words what to do, and how to read it
     * @param outcomes ids of causes under which it comes out alike; a cause in none of them is not told by it
     */
    record Test(String words, List<List<String>> outcomes) {
        Test {
            outcomes = outcomes.stream().map(List::copyOf).toList();
        }
    }

    CauseTexts {
        causes = List.copyOf(causes);
        tests = List.copyOf(tests);
    }

    /** The words that come with the program. */
    static Optional<CauseTexts> of(UnitKind kind) {
        return Optional.ofNullable(Standard.ALL.get(kind));
    }

    Optional<Text> text(String id) {
        return causes.stream().filter(text -> text.id().equals(id)).findFirst();
    }

    /** Read once, when they are first needed. */
    private static final class Standard {
        static final Map<UnitKind, CauseTexts> ALL = new TreeMap<>();

        static {
            for (UnitKind kind : UnitKind.values()) {
                Atlas.read("words-" + Atlas.fileWord(kind) + ".json", CauseTexts.class)
                        .ifPresent(texts -> ALL.put(kind, texts));
            }
        }
    }
}
