package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.grade.cause.CauseTexts.Need;
import org.pumpwright.host.grade.cause.CauseTexts.Text;

/** Words, ties, needs and the next test, on a small atlas by hand. */
final class CausesTest {
    private static final List<String> KEYS = List.of("a", "b", "c");

    private static Pattern at(double a, double b, double c) {
        return new Pattern(List.of(a, b, c), List.of(0.1, 0.1, 0.1), List.of());
    }

    private static final Atlas ATLAS = new Atlas(
            "by hand",
            KEYS,
            at(0, 0, 0),
            List.of(
                    new Atlas.Fault("one", List.of(at(1, 0, 0))),
                    new Atlas.Fault("twin", List.of(at(1, 0, 0.02))),
                    new Atlas.Fault("other", List.of(at(0, 1, 0))),
                    new Atlas.Fault("needy", List.of(at(1, 1, 1)))));

    private static Text text(String id, Need... needs) {
        return new Text(id, id + " is wrong", "as " + id, "look at " + id, List.of(needs), List.of());
    }

    private static final CauseTexts TEXTS = new CauseTexts(
            List.of(
                    text("healthy"),
                    text("one"),
                    text("twin"),
                    text("other"),
                    text("needy", new Need(List.of("c"), 1, "the reading c"))),
            List.of(
                    new CauseTexts.Test("tell other", List.of(List.of("one", "twin"), List.of("other"))),
                    new CauseTexts.Test("tell the twins", List.of(List.of("one"), List.of("twin")))));

    private static Causes of(Map<String, Double> values) {
        return of(values, TEXTS);
    }

    private static Causes of(Map<String, Double> values, CauseTexts texts) {
        TreeMap<String, Observation> all = new TreeMap<>();
        values.forEach((key, value) -> all.put(key, new Observation(value, 0)));
        return Causes.of(new Evidence(all, false), ATLAS, texts);
    }

    @Test
    void aTieIsSaidAndTheNextTestSplitsIt() {
        Causes causes = of(Map.of("a", 1.0, "b", 0.0, "c", 0.01));

        assertThat(causes.listed())
                .extracting(Cause::because)
                .startsWith("tied with the next; as one", "tied with the first; as twin");
        assertThat(causes.nextTest()).contains("tell the twins");
        assertThat(causes.listed().get(0).numbers().orElseThrow().share()).isBetween(0.45, 0.55);
    }

    @Test
    void aClearFirstIsConfirmedByItsOwnTest() {
        Causes causes = of(Map.of("a", 0.0, "b", 1.0, "c", 0.0));

        assertThat(causes.listed()).extracting(Cause::name).first().isEqualTo("other is wrong");
        assertThat(causes.nextTest()).contains("look at other");
    }

    @Test
    void aCauseIsNotNamedWithoutTheReadingsItNeedsAndTheyAreNamed() {
        Causes causes = of(Map.of("a", 1.0, "b", 1.0));

        assertThat(causes.listed()).extracting(Cause::name).noneMatch(name -> name.contains("needy"));
        assertThat(causes.missing()).containsExactly("the reading c");
        assertThat(causes.toRead()).isEqualTo("not read, and would name the cause more surely: the reading c");
    }

    @Test
    void aReadingThatWouldMakeAListedCauseSurerIsAskedForWithItsTest() {
        Text other = new Text(
                "other", "other", "as other", "look", List.of(), List.of(new Need(List.of("d"), 1, "the reading d")));
        CauseTexts texts = new CauseTexts(
                List.of(text("healthy"), text("one"), text("twin"), other, text("needy")), TEXTS.tests());

        Causes causes = of(Map.of("a", 0.0, "b", 1.0, "c", 0.0), texts);

        assertThat(causes.listed().get(0).nextTest())
                .isEqualTo("look; not read, and would name the cause more surely: the reading d");
        assertThat(causes.toRead()).isEqualTo("not read, and would name the cause more surely: the reading d");
    }

    @Test
    void nothingIsNamedWithoutAnyReadingAndWhatIsMissingIsSaid() {
        Need need = new Need(List.of("c"), 1, "the reading c");
        CauseTexts texts = new CauseTexts(
                Stream.of("healthy", "one", "twin", "other", "needy")
                        .map(id -> text(id, need))
                        .toList(),
                List.of());

        Causes causes = of(Map.of(), texts);

        assertThat(causes.listed()).isEmpty();
        assertThat(causes.toRead()).endsWith("the reading c");
    }

    @Test
    void readingsFarFromEveryCauseNameNone() {
        Causes causes = of(Map.of("a", -3.0, "b", 5.0, "c", -4.0));

        assertThat(causes.noneFits()).isTrue();
        assertThat(causes.listed()).isEmpty();
        assertThat(causes.nextTest()).isEmpty();
    }
}
