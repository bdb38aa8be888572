package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Batches against the rest of the fleet. */
final class BatchWatchTest {
    private static final LocalDate UNTIL = LocalDate.of(2026, 6, 30);

    private static Shipment batch(int month, int count, String code) {
        return new Shipment(YearMonth.of(2026, month), count, Optional.of(code));
    }

    private static List<ReturnFact> failures(String code, int count, int month) {
        List<ReturnFact> facts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            facts.add(Returned.unit(code + i).code(code).on(2026, month, 10).failedOf("leak"));
        }
        return facts;
    }

    /** A rest so great that its 2 % are as good as known: 2.4 of 120 expected, 7 seen. */
    @Test
    void sevenFailuresWhereTheRestMakesExpectTwoPointFourAreAnAlert() throws ShipmentException {
        List<ReturnFact> facts = failures("bad", 7, 3);
        facts.addAll(failures("rest", 200, 3));
        BatchWatch watch =
                BatchWatch.of(Fleet.of(List.of(batch(1, 120, "bad"), batch(1, 10_000, "rest")), facts, UNTIL), 0.02);
        BatchFinding first = watch.findings().get(0);

        assertThat(first.batch()).isEqualTo("bad");
        assertThat(first.expected()).isCloseTo(2.4, within(1e-9));
        assertThat(first.failures()).isEqualTo(7);
        assertThat(first.chance()).isCloseTo(UpperTail.poisson(2.4, 7), within(0.002));
        assertThat(watch.alerts()).containsExactly(first);
        assertThat(watch.expectedFalseAlerts()).isCloseTo(0.04, within(1e-12));
    }

    /** The rest's own rate is not known for certain when the rest is small: the same counts then are no alert. */
    @Test
    void aSmallRestMakesTheSameCountsLessSurprising() throws ShipmentException {
        List<ReturnFact> facts = failures("bad", 7, 3);
        facts.addAll(failures("rest", 4, 3));
        BatchFinding first = BatchWatch.of(
                        Fleet.of(List.of(batch(1, 120, "bad"), batch(1, 200, "rest")), facts, UNTIL), 0.02)
                .findings()
                .get(0);

        assertThat(first.expected()).isCloseTo(2.4, within(1e-9));
        assertThat(first.chance()).isCloseTo(UpperTail.binomial(11, 120.0 / 320, 7), within(1e-12));
        assertThat(first.alert()).isFalse();
    }

    /** Units in their first month are compared with the first month of the others, not with their whole life. */
    @Test
    void aYoungBatchIsComparedAtItsOwnAge() throws ShipmentException {
        List<ReturnFact> facts = failures("old", 50, 6);
        facts.addAll(failures("new", 3, 6));
        Fleet fleet = Fleet.of(List.of(batch(1, 1000, "old"), batch(6, 1000, "new")), facts, UNTIL);
        BatchFinding young = BatchWatch.of(fleet, 0.02).findings().stream()
                .filter(finding -> finding.batch().equals("new"))
                .findFirst()
                .orElseThrow();

        assertThat(young.expected()).isZero();
        assertThat(young.chance()).isCloseTo(0.125, within(1e-12));
    }

    @Test
    void oneBatchAloneHasNothingToBeComparedWith() throws ShipmentException {
        assertThat(BatchWatch.of(Fleet.of(List.of(batch(1, 50, "only")), failures("only", 9, 2), UNTIL), 0.02)
                        .findings())
                .isEmpty();
    }

    @Test
    void aFleetWithoutFailuresRaisesNoAlert() throws ShipmentException {
        BatchWatch watch =
                BatchWatch.of(Fleet.of(List.of(batch(1, 50, "a"), batch(2, 50, "b")), List.of(), UNTIL), 0.02);

        assertThat(watch.findings()).hasSize(2).allMatch(finding -> finding.chance() == 1);
        assertThat(watch.alerts()).isEmpty();
    }

    /** 300 fleets of six like batches: no more false alerts than the setting allows. */
    @Test
    void likeBatchesRaiseNoMoreAlertsThanTheSettingSays() throws ShipmentException {
        SplittableRandom random = new SplittableRandom(51);
        int alerts = 0;
        int looked = 0;
        for (int fleet = 0; fleet < 300; fleet++) {
            List<Shipment> shipments = new ArrayList<>();
            List<ReturnFact> facts = new ArrayList<>();
            for (int month = 1; month <= 6; month++) {
                String code = "c" + month;
                shipments.add(batch(month, 80, code));
                for (int later = month; later <= 6; later++) {
                    int failed = 0;
                    for (int unit = 0; unit < 80; unit++) {
                        failed += random.nextDouble() < 0.01 ? 1 : 0;
                    }
                    facts.addAll(failures(code + later + "x", failed, later).stream()
                            .map(fact -> Returned.unit(fact.claim())
                                    .code(code)
                                    .on(2026, fact.returned().getMonthValue(), 9)
                                    .failedOf("leak"))
                            .toList());
                }
            }
            BatchWatch watch = BatchWatch.of(Fleet.of(shipments, facts, UNTIL), 0.02);
            alerts += watch.alerts().size();
            looked += watch.findings().size();
        }

        assertThat(looked).isEqualTo(1800);
        assertThat(alerts).isBetween(5, 50);
    }

    @Test
    void aSettingThatIsNoProbabilityIsRefused() {
        assertThatThrownBy(() -> new BatchWatch(List.of(), 2)).hasMessage("alert below 2.0: must lie between 0 and 1");
    }
}
