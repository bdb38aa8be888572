package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.statistics.ReturnStatistics.Window;

/** Counts and the shop's own figures. */
final class ReturnStatisticsTest {
    private static final Window YEAR = new Window(LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31));

    private static ReturnStatistics of(ReturnFact... facts) throws ShipmentException {
        return ReturnStatistics.of(List.of(facts), List.of(), YEAR, 0.02);
    }

    @Test
    void returnsAreKeptApartFromConfirmedFailuresAndFromOpenClaims() throws ShipmentException {
        ReturnCounts counts = of(
                        Returned.unit("A").on(2026, 2, 1).failedOf("worn"),
                        Returned.unit("B").on(2026, 2, 2).noFault(),
                        Returned.unit("C").on(2026, 2, 3).found(Outcome.INCONCLUSIVE),
                        Returned.unit("D").on(2026, 2, 4).found(Outcome.NOT_TESTABLE),
                        Returned.unit("E").on(2026, 2, 5).open(),
                        Returned.unit("F").on(2025, 2, 5).failedOf("worn"))
                .counts();

        assertThat(counts).isEqualTo(new ReturnCounts(5, 1, 1, 1, 1, 1));
        assertThat(counts.noFaultFoundShare()).contains(new Share(1, 4));
        assertThat(counts.confirmedShare()).contains(new Share(1, 4));
    }

    @Test
    void withoutAConcludedClaimThereIsNoShare() throws ShipmentException {
        assertThat(of(Returned.unit("E").on(2026, 2, 5).open()).counts().noFaultFoundShare())
                .isEmpty();
    }

    @Test
    void categoriesOutsideLimitsAreConfirmedFailures() {
        assertThat(List.of("C1", "C2", "C3", "C8"))
                .allMatch(code -> Outcome.ofCategory(code) == Outcome.CONFIRMED_FAILURE);
        assertThat(List.of("C4", "C7")).allMatch(code -> Outcome.ofCategory(code) == Outcome.NO_FAULT_FOUND);
        assertThat(Outcome.ofCategory("C5")).isEqualTo(Outcome.INCONCLUSIVE);
        assertThat(Outcome.ofCategory("C6")).isEqualTo(Outcome.NOT_TESTABLE);
        assertThatThrownBy(() -> Outcome.ofCategory("C9")).hasMessage("category 'C9' is not known: C1 to C8");
    }

    @Test
    void aUnitThatComesAgainWithinThirtyDaysIsARepeat() throws ShipmentException {
        ShopFigures shop = of(
                        Returned.unit("A").on(2026, 2, 1).handedBackAfter(4).noFault(),
                        Returned.unit("A").on(2026, 3, 7).handedBackAfter(2).failedOf("worn"),
                        Returned.unit("B").on(2026, 2, 1).handedBackAfter(4).noFault(),
                        Returned.unit("B").on(2026, 3, 8).handedBackAfter(3).noFault(),
                        Returned.unit("").on(2026, 2, 1).handedBackAfter(4).noFault(),
                        Returned.unit("C").on(2026, 12, 20).handedBackAfter(2).noFault())
                .shop();

        assertThat(shop.repeats()).contains(new Share(1, 4));
    }

    @Test
    void daysAndMinutesAreGivenByTheirMiddleAndEnds() throws ShipmentException {
        ShopFigures shop = of(
                        Returned.unit("A")
                                .on(2026, 2, 1)
                                .handedBackAfter(1)
                                .minutes(20)
                                .noFault(),
                        Returned.unit("B")
                                .on(2026, 2, 1)
                                .handedBackAfter(3)
                                .minutes(40)
                                .noFault(),
                        Returned.unit("C").on(2026, 2, 1).handedBackAfter(9).noFault(),
                        Returned.unit("D").on(2026, 12, 1).open(),
                        Returned.unit("E").on(2026, 12, 21).open())
                .shop();

        assertThat(shop.turnaroundDays()).contains(new Middle(3, 1, 3, 9));
        assertThat(shop.touchMinutes()).contains(new Middle(2, 20, 30, 40));
        assertThat(shop.open()).isEqualTo(2);
        assertThat(shop.oldestOpenDays()).hasValue(30);
    }

    @Test
    void practiceUnitsAreNeverMixedWithRealOnes() {
        assertThatThrownBy(() -> of(
                        Returned.unit("A").on(2026, 2, 1).noFault(),
                        Returned.unit("B").practice().on(2026, 2, 1).noFault()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("practice units and real ones must not be counted together");
    }

    @Test
    void modesAreCountedAmongConfirmedFailures() throws ShipmentException {
        assertThat(of(
                                Returned.unit("A").on(2026, 2, 1).failedOf("worn"),
                                Returned.unit("B").on(2026, 2, 1).failedOf("leak"),
                                Returned.unit("C").on(2026, 2, 1).failedOf("worn"),
                                Returned.unit("D").on(2026, 2, 1).noFault())
                        .modes())
                .containsExactly(
                        new ModeCount(Optional.of("worn"), new Share(2, 3)),
                        new ModeCount(Optional.of("leak"), new Share(1, 3)));
    }

    @Test
    void handingBackBeforeComingInIsRefused() {
        assertThatThrownBy(() ->
                        Returned.unit("A").on(2026, 2, 1).handedBackAfter(-1).noFault())
                .hasMessage("claim A-2026-02-01: handed back 2026-01-31, before it came in on 2026-02-01");
    }

    @Test
    void aWindowThatEndsBeforeItBeginsIsRefused() {
        assertThatThrownBy(() -> new Window(YEAR.until(), YEAR.from()))
                .hasMessage("from 2026-12-31 until 2026-01-01: the first day must come first");
    }
}
