package org.pumpwright.host.grade.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A small atlas by hand: two readings that go together, two that do not. */
final class CauseRankingTest {
    private static final List<String> KEYS = List.of("a", "b", "c@20", "c@40");
    private static final List<Double> OWN = List.of(0.1, 0.1, 0.1, 0.1);
    private static final List<List<Double>> TOGETHER = List.of(List.of(1.0, 1.0, 0.0, 0.0));

    private static Pattern at(double a, double b, double c20, double c40) {
        return new Pattern(List.of(a, b, c20, c40), OWN, TOGETHER);
    }

    private static final Atlas ATLAS = new Atlas(
            "by hand",
            KEYS,
            at(0, 0, 0, 0),
            List.of(
                    new Atlas.Fault("apart", List.of(at(1, -1, 0, 0), at(2, -2, 0, 0))),
                    new Atlas.Fault("both", List.of(at(1, 1, 0, 0), at(2, 2, 0, 0))),
                    new Atlas.Fault("slope", List.of(at(0, 0, 1, 2)))));

    private static Evidence evidence(Map<String, Double> values) {
        TreeMap<String, Observation> all = new TreeMap<>();
        values.forEach((key, value) -> all.put(key, new Observation(value, 0)));
        return new Evidence(all, false);
    }

    private static List<Ranked> rank(Map<String, Double> values) {
        return CauseRanking.rank(ATLAS, evidence(values));
    }

    private static Ranked of(List<Ranked> all, String id) {
        return all.stream()
                .filter(one -> one.ids().equals(List.of(id)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatHealthyUnitsDoTogetherIsNoSignOfAFault() {
        List<Ranked> together = rank(Map.of("a", 1.0, "b", 1.0, "c@20", 0.0, "c@40", 0.0));
        List<Ranked> apart = rank(Map.of("a", 1.0, "b", -1.0, "c@20", 0.0, "c@40", 0.0));

        assertThat(of(together, "healthy").squaredDistance()).isLessThan(2);
        assertThat(of(apart, "healthy").squaredDistance()).isGreaterThan(20);
        assertThat(apart.get(0).ids()).containsExactly("apart");
    }

    @Test
    void theSeverityIsFoundOnTheWayFromHealthyToGrave() {
        Ranked found =
                rank(Map.of("a", 1.5, "b", -1.5, "c@20", 0.0, "c@40", 0.0)).get(0);

        assertThat(found.severity()).isCloseTo(0.75, within(0.13));
    }

    @Test
    void aSetPointBetweenTwoOfTheAtlasLiesStraightBetweenThem() {
        List<Ranked> found = rank(Map.of("a", 0.0, "b", 0.0, "c@30", 1.5));

        assertThat(found.get(0).ids()).containsExactly("slope");
        assertThat(found.get(0).squaredDistance()).isLessThan(0.1);
    }

    @Test
    void readingsThatTheAtlasDoesNotKnowDropOut() {
        Map<String, Double> known = Map.of("a", 1.0, "b", -1.0);
        Map<String, Double> more = Map.of("a", 1.0, "b", -1.0, "z", 7.0, "c@90", 3.0);

        assertThat(rank(more)).isEqualTo(rank(known));
    }

    @Test
    void twoFaultsAtOnceAreNamedWhereNoneFitsAlone() {
        Ranked found =
                rank(Map.of("a", 1.2, "b", -1.2, "c@20", 1.0, "c@40", 2.0)).get(0);

        assertThat(found.ids()).containsExactlyInAnyOrder("apart", "slope");
    }

    @Test
    void aReadingThatSuchUnitsDoNotGiveDecidesNothing() {
        Pattern silent = new Pattern(List.of(0.0, 0.0, 0.0, Double.NaN), OWN, TOGETHER);
        Atlas atlas = new Atlas("by hand", KEYS, at(0, 0, 0, 0), List.of(new Atlas.Fault("silent", List.of(silent))));

        Ranked found = of(CauseRanking.rank(atlas, evidence(Map.of("a", 0.0, "c@40", 3.0))), "silent");

        assertThat(found.squaredDistance()).isLessThan(1.1);
    }

    @Test
    void aFaultThatBeatsNothingWrongByNoMoreThanChanceGoesAfterIt() {
        List<Ranked> little = rank(Map.of("a", 0.2, "b", -0.2, "c@20", 0.0, "c@40", 0.0));
        List<Ranked> much = rank(Map.of("a", 0.8, "b", -0.8, "c@20", 0.0, "c@40", 0.0));

        assertThat(little.get(0).ids()).containsExactly("healthy");
        assertThat(of(little, "apart").logLikelihood())
                .isGreaterThan(little.get(0).logLikelihood());
        assertThat(much.get(0).ids()).containsExactly("apart");
    }

    @Test
    void noReadingsRankAllCausesAlikeButForTheirOrder() {
        List<Ranked> found = rank(Collections.emptyMap());

        assertThat(found).extracting(Ranked::logLikelihood).containsOnly(0.0);
    }
}
