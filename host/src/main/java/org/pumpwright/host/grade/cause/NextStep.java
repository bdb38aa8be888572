package org.pumpwright.host.grade.cause;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.pumpwright.host.catalog.UnitKind;

/**
 * How the test of a cause is carried out. Records keep a test as its sentence, so the sentence is looked up in a table that comes with
 * the program, {@code steps-KIND.json}; a sentence that the program no longer says stays there for the records that hold it. Which plan
 * does what a sentence asks for is common practice, no source. Thread-safe.
 *
 * @param means with what it is carried out
 * @param plans names of the plans that do it, the first that the shop has is meant; empty unless a plan does it
 */
public record NextStep(Means means, List<String> plans) {
    /** Nothing that the program could begin. */
    public static final NextStep HANDS = new NextStep(Means.HANDS, List.of());

    /** The same plan once more. */
    public static final NextStep AGAIN = new NextStep(Means.AGAIN, List.of());
    /** What stands between two tests of one sentence, and before what was not read. */
    private static final Pattern JOINTS =
            Pattern.compile("; if that does not show it: |; then: |; not read, and would name the cause more surely: ");

    public NextStep {
        plans = List.copyOf(plans);
    }

    /** With what a test is carried out. */
    public enum Means {
        /** One of the shop's plans. */
        PLAN,
        /** The plan of the run itself, once more, when what the sentence asks for is done. */
        AGAIN,
        /** The bucket test of a meter. */
        BUCKET,
        /** Hands, eyes and a meter. */
        HANDS
    }

    /** The step of a sentence; of several tests in it, the first that the program can begin. */
    public static NextStep of(UnitKind kind, String sentence) {
        Optional<NextStep> whole = table(kind).step(sentence);
        if (whole.isPresent()) {
            return whole.get();
        }
        for (String part : JOINTS.split(sentence, -1)) {
            NextStep step = table(kind).step(part).orElse(HANDS);
            if (step.means() != Means.HANDS) {
                return step;
            }
        }
        return HANDS;
    }

    static Table table(UnitKind kind) {
        return Standard.ALL.getOrDefault(kind, Table.EMPTY);
    }

    /**
     * The sentences of one kind of unit by what carries them out.
     *
     * @param again the same plan
     * @param bucket the bucket test
     * @param hands nothing of the program
     * @param plans by the name of the plan
     */
    record Table(List<String> again, List<String> bucket, List<String> hands, Map<String, List<String>> plans) {
        static final Table EMPTY = new Table(List.of(), List.of(), List.of(), Map.of());

        Table {
            again = List.copyOf(again);
            bucket = List.copyOf(bucket);
            hands = List.copyOf(hands);
            plans = Map.copyOf(plans);
        }

        Optional<NextStep> step(String sentence) {
            if (again.contains(sentence)) {
                return Optional.of(AGAIN);
            }
            if (bucket.contains(sentence)) {
                return Optional.of(new NextStep(Means.BUCKET, List.of()));
            }
            if (hands.contains(sentence)) {
                return Optional.of(HANDS);
            }
            return plans.entrySet().stream()
                    .filter(plan -> plan.getValue().contains(sentence))
                    .findFirst()
                    .map(plan -> new NextStep(Means.PLAN, List.of(plan.getKey())));
        }
    }

    /** Read once, when they are first needed. */
    private static final class Standard {
        static final Map<UnitKind, Table> ALL = new EnumMap<>(UnitKind.class);

        static {
            for (UnitKind kind : UnitKind.values()) {
                Atlas.read("steps-" + Atlas.fileWord(kind) + ".json", Table.class)
                        .ifPresent(table -> ALL.put(kind, table));
            }
        }
    }
}
