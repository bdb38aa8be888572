package org.pumpwright.host.claim.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Shipped per month against returned per month. */
final class FleetTest {
    private static final LocalDate UNTIL = LocalDate.of(2026, 6, 30);
    private static final Shipment JANUARY = new Shipment(YearMonth.of(2026, 1), 100, Optional.empty());

    @Test
    void aReturnIsPutAtItsMonthInServiceAndTheRestAreSuspensions() throws ShipmentException {
        Fleet fleet = Fleet.of(
                List.of(JANUARY),
                List.of(
                        Returned.unit("A").shipped(2026, 1).on(2026, 4, 3).failedOf("worn"),
                        Returned.unit("B").shipped(2026, 1).on(2026, 1, 20).failedOf("leak")),
                UNTIL);
        ServiceRow row = ServiceRow.of(fleet).get(0);

        assertThat(row.returned()).containsExactly(1, 0, 0, 1, 0, 0);
        assertThat(row.confirmed()).containsExactly(1, 0, 0, 1, 0, 0);
        assertThat(row.stillServing()).isEqualTo(98);
        assertThat(fleet.lives(Optional.of("worn")))
                .containsExactlyInAnyOrder(Life.failed(3, 1), Life.suspended(1.0 / 3, 1), Life.suspended(5.5, 98));
    }

    @Test
    void aUnitWithoutAFaultGoesBackToWorkAndItsLaterFailureCounts() throws ShipmentException {
        List<ReturnFact> twice = List.of(
                Returned.unit("A").shipped(2026, 1).on(2026, 2, 3).noFault(),
                Returned.unit("A").shipped(2026, 1).on(2026, 5, 3).failedOf("worn"));

        Fleet early = Fleet.of(List.of(JANUARY), twice.subList(0, 1), UNTIL);
        Fleet late = Fleet.of(List.of(JANUARY), twice, UNTIL);

        assertThat(early.failed()).isZero();
        assertThat(early.lots().get(0).stillServing()).isEqualTo(100);
        assertThat(late.failed()).isEqualTo(1);
        assertThat(late.lives(Optional.of("worn"))).contains(Life.failed(4, 1), Life.suspended(5.5, 99));
        assertThat(ServiceRow.of(late).get(0).returned()).containsExactly(0, 1, 0, 0, 1, 0);
    }

    @Test
    void anOpenClaimIsASuspensionAtItsReturn() throws ShipmentException {
        Fleet fleet = Fleet.of(
                List.of(JANUARY),
                List.of(Returned.unit("A").shipped(2026, 1).on(2026, 3, 3).open()),
                UNTIL);

        assertThat(fleet.failed()).isZero();
        assertThat(fleet.lives(Optional.of("worn")))
                .containsExactlyInAnyOrder(Life.suspended(2, 1), Life.suspended(5.5, 99));
    }

    @Test
    void theSameUnitFailsOnlyOnce() throws ShipmentException {
        Fleet fleet = Fleet.of(
                List.of(JANUARY),
                List.of(
                        Returned.unit("A").shipped(2026, 1).on(2026, 2, 3).failedOf("worn"),
                        Returned.unit("A").on(2026, 4, 3).failedOf("worn")),
                UNTIL);

        assertThat(fleet.failed()).isEqualTo(1);
        assertThat(fleet.unplaced()).isEmpty();
        assertThat(fleet.lots().get(0).stillServing()).isEqualTo(99);
    }

    @Test
    void aReturnThatFitsNoShipmentIsNamed() throws ShipmentException {
        Fleet fleet = Fleet.of(
                List.of(JANUARY),
                List.of(
                        Returned.unit("A").on(2026, 4, 3).failedOf("worn"),
                        Returned.unit("B").shipped(2025, 12).on(2026, 4, 3).failedOf("worn")),
                UNTIL);

        assertThat(fleet.unplaced())
                .containsExactly(
                        "A-2026-04-03: ship month not known, no date code: not one line of the table of what was shipped fits it alone",
                        "B-2026-04-03: shipped 2025-12, no date code: no such line in the table of what was shipped");
    }

    @Test
    void aDateCodeAloneFindsItsShipment() throws ShipmentException {
        Shipment coded = new Shipment(YearMonth.of(2026, 2), 50, Optional.of("2605"));
        Fleet fleet = Fleet.of(
                List.of(JANUARY, coded),
                List.of(Returned.unit("A").code("2605").on(2026, 4, 3).failedOf("worn")),
                UNTIL);

        assertThat(fleet.lots().get(1).failures()).isEqualTo(1);
    }

    @Test
    void moreUnitsBackThanWereShippedIsRefused() {
        Shipment one = new Shipment(YearMonth.of(2026, 1), 1, Optional.empty());

        assertThatThrownBy(() -> Fleet.of(
                        List.of(one),
                        List.of(
                                Returned.unit("A")
                                        .shipped(2026, 1)
                                        .on(2026, 4, 3)
                                        .open(),
                                Returned.unit("B")
                                        .shipped(2026, 1)
                                        .on(2026, 4, 3)
                                        .open()),
                        UNTIL))
                .isInstanceOf(ShipmentException.class)
                .hasMessageStartingWith("2026-01: 2 units came back, but only 1 were shipped.");
    }

    @Test
    void aMonthThatIsThereTwiceIsRefused() {
        assertThatThrownBy(() -> Fleet.of(List.of(JANUARY, JANUARY), List.of(), UNTIL))
                .hasMessage("2026-01 is there twice: add the two counts up");
    }

    @Test
    void whatIsShippedAfterTheLastDayDoesNotCountYet() throws ShipmentException {
        assertThat(Fleet.of(List.of(JANUARY), List.of(), LocalDate.of(2025, 12, 31))
                        .shipped())
                .isZero();
    }

    /** 36 months of 300 pumps each, wear of shape 2 and 40 months: the table, which knows months only, gives it back. */
    @Test
    void monthsAloneAreEnoughToFindTheShapeOfWear() throws ShipmentException {
        SplittableRandom random = new SplittableRandom(41);
        List<Shipment> shipments = new ArrayList<>();
        List<ReturnFact> facts = new ArrayList<>();
        LocalDate first = LocalDate.of(2023, 7, 1);
        for (int month = 0; month < 36; month++) {
            LocalDate start = first.plusMonths(month);
            shipments.add(new Shipment(YearMonth.from(start), 300, Optional.empty()));
            for (int unit = 0; unit < 300; unit++) {
                LocalDate shipped = start.plusDays(random.nextInt(start.lengthOfMonth()));
                double months = WeibullDraw.age(2, 40, random);
                LocalDate failed = shipped.plusDays(Math.round(Math.min(months, 200) * 365.25 / 12));
                if (!failed.isAfter(UNTIL)) {
                    facts.add(Returned.unit(month + "-" + unit)
                            .shipped(start.getYear(), start.getMonthValue())
                            .on(failed.getYear(), failed.getMonthValue(), failed.getDayOfMonth())
                            .failedOf("worn"));
                }
            }
        }
        WeibullFit fit = WeibullFit.of(Fleet.of(shipments, facts, UNTIL).lives(Optional.of("worn")));

        assertThat(fit.betaInterval().holds(2)).isTrue();
        assertThat(fit.etaInterval().holds(40)).isTrue();
        assertThat(fit.beta()).isBetween(1.9, 2.1);
    }
}
