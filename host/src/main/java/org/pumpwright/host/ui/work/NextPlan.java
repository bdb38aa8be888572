package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.plan.Plan;

/**
 * The plan that carries out a next test, told by the words of the test. Most tests are done with hands and a meter and have none. Common
 * practice, no source. Thread-safe.
 */
final class NextPlan {
    /** What a test for a 12 V pump says, and the plan that does it. */
    private static final List<Map.Entry<String, String>> PUMP = List.of(
            Map.entry("bend the lead", "wiggle-12v-pump"),
            Map.entry("tap the brush", "wiggle-12v-pump"),
            Map.entry("10 minutes", "soak-12v-pump"),
            Map.entry("close the outlet", "dead-head-12v-pump"),
            Map.entry("winding", "restart-12v-pump"),
            Map.entry("full sweep", "full-12v-pump"));

    private static final List<Map.Entry<String, String>> HYDRAULIC =
            List.of(Map.entry("override", "override-split"), Map.entry("up and down", "valve-sweep"));

    /** Words of a test that is the same plan once more. */
    private static final List<String> AGAIN = List.of("run again", "repeat", "retest");

    private NextPlan() {}

    /**
     * The plan of a test.
     *
     * @param done the plan that the unit went through
     * @param plans what the shop has
     */
    static Optional<Plan> of(String test, Plan done, List<Plan> plans) {
        String words = test.toLowerCase(Locale.ROOT);
        List<Map.Entry<String, String>> known = switch (done.kind()) {
            case PUMP_12V -> PUMP;
            case HYDRAULIC_PUMP -> HYDRAULIC;
            case DRIVER, METER, HARNESS -> List.of();
        };
        Optional<Plan> other = known.stream()
                .filter(each -> words.contains(each.getKey()))
                .flatMap(each -> plans.stream().filter(plan -> fits(plan, each.getValue(), done.kind())))
                .findFirst();
        return other.or(() -> AGAIN.stream().anyMatch(words::contains) ? Optional.of(done) : Optional.empty());
    }

    private static boolean fits(Plan plan, String id, UnitKind kind) {
        return plan.id().equals(id) && plan.kind() == kind;
    }
}
