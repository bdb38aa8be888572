package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.quantity.FlowRate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code --json} prints, over a whole run. */
@Timeout(60)
final class EventLinesTest {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(tools.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(tools.jackson.databind.DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    /** Names that say what they are without a unit. */
    private static final Set<String> WORDS = Set.of(
            "event",
            "plan",
            "curve",
            "points",
            "step",
            "part",
            "phase",
            "leg",
            "point",
            "settled",
            "enough_pulses",
            "checks",
            "check",
            "ok",
            "finding",
            "ending",
            "reason",
            "stand",
            "verdict",
            "record",
            "page",
            "reasons",
            "trouble",
            "fault",
            "severity",
            "words");

    @TempDir
    private Path folder;

    private final CommandLineBench bench = new CommandLineBench();
    private List<JsonNode> events = List.of();

    @BeforeEach
    void run() {
        bench.run(
                "practice",
                "--fault",
                "slip",
                "--severity",
                "severe",
                "--seed",
                "3",
                "--json",
                "--records",
                folder.toString());
        events = bench.out().lines().map(JSON::readTree).toList();
    }

    private List<JsonNode> named(String event) {
        return events.stream()
                .filter(node -> node.path("event").stringValue("").equals(event))
                .toList();
    }

    @Test
    void theRunIsToldFromBeginningToResult() {
        assertThat(events.stream()
                        .map(node -> node.path("event").stringValue(""))
                        .distinct())
                .containsExactly(
                        "begins",
                        "counts",
                        "began",
                        "live",
                        "stand_at_rest",
                        "step",
                        "point",
                        "ended",
                        "result",
                        "unit");
        assertThat(named("point")).hasSize(9);
        assertThat(named("result").get(0).path("verdict").stringValue("")).isEqualTo("fail");
        assertThat(Path.of(named("result").get(0).path("record").stringValue("")))
                .exists();
        assertThat(named("ended").get(0).path("ending").stringValue("")).isEqualTo("completed");
        assertThat(named("unit").get(0).path("fault").stringValue("")).isEqualTo("slip");
        assertThat(bench.err()).isEmpty();
    }

    @Test
    void everyNumberNamesItsSiUnitOrIsACountOrShare() {
        Set<String> numbers = new TreeSet<>();
        events.forEach(node -> names(node, numbers));

        numbers.removeAll(WORDS);
        assertThat(numbers)
                .containsExactlyInAnyOrder(
                        "run_of_unit",
                        "at_most",
                        "earlier",
                        "least_seconds",
                        "seconds_left",
                        "duty",
                        "flow_m3_per_second",
                        "flow_relative_uncertainty",
                        "supply_amps",
                        "volts_at_pins");
    }

    private static void names(JsonNode node, Set<String> into) {
        node.properties().forEach(property -> {
            into.add(property.getKey());
            names(property.getValue(), into);
        });
        if (node.isArray()) {
            node.values().forEach(value -> names(value, into));
        }
    }

    @Test
    void valuesAreInSi() {
        JsonNode top = named("point").stream()
                .filter(node -> node.path("duty").doubleValue() == 1)
                .findFirst()
                .orElseThrow();

        double flow = top.path("flow_m3_per_second").doubleValue();
        assertThat(new FlowRate(flow).gallonsPerMinute()).isBetween(2.0, 4.5);
        assertThat(top.path("flow_relative_uncertainty").doubleValue()).isBetween(1e-6, 0.01);
        assertThat(top.path("volts_at_pins").doubleValue()).isBetween(12.0, 14.0);
        assertThat(top.path("supply_amps").doubleValue()).isBetween(5.0, 20.0);
    }

    @Test
    void timeLeftRunsDown() {
        List<Double> left = named("live").stream()
                .map(node -> node.path("seconds_left").doubleValue())
                .toList();

        assertThat(left).isSortedAccordingTo(java.util.Comparator.reverseOrder());
        assertThat(left.get(left.size() - 1)).isLessThan(20);
    }
}
