package org.pumpwright.host.claim.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageAssessment.Holds;
import org.pumpwright.host.claim.CoverageAssessment.Line;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CoverageDecision.Outcome;
import org.pumpwright.host.claim.InventedClaim;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.coverage.CoverageRules.CountedFrom;
import org.pumpwright.host.claim.coverage.CoverageRules.Period;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Verdict;

class CoverageTest {
    private static final Season SPRING = new Season(MonthDay.of(3, 15), MonthDay.of(6, 30));

    private static CoverageRules rules(String name) throws DataFileException {
        return CoverageRulesFile.read(
                Firmware.root().resolve("fixtures/coverage").resolve(name), "coverage/" + name);
    }

    private static Line line(CoverageRules rules, InventedClaim claim, String rule) {
        return Coverage.assess(rules, new Circumstances(claim.file(), List.of(), new Amount(0))).lines().stream()
                .filter(line -> line.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theLastDayOfAPeriodIsCoveredAndTheNextIsNot() throws Exception {
        CoverageRules rules = rules("example-2025.yaml");
        InventedClaim claim = new InventedClaim().sold("2024-06-10");
        assertThat(line(rules, claim.received("2025-06-10"), "period").holds()).isEqualTo(Holds.YES);
        assertThat(line(rules, claim.received("2025-06-11"), "period").holds()).isEqualTo(Holds.NO);
        assertThat(line(rules, claim, "period").where()).isEqualTo("coverage/example-2025.yaml:7");
    }

    @Test
    void twelveMonthsFromALeapDayEndOnTheLastOfFebruary() {
        Period year = new Period(CountedFrom.SALE, 12, Optional.empty(), false, 1);
        assertThat(year.lastCovered(LocalDate.of(2024, 2, 29))).isEqualTo(LocalDate.of(2025, 2, 28));
        assertThat(year.lastCovered(LocalDate.of(2023, 2, 28))).isEqualTo(LocalDate.of(2024, 2, 28));
    }

    @Test
    void aSeasonOfWhichOnlyAPartWasLeftIsFree() {
        LocalDate firstDay = LocalDate.of(2025, 3, 15);
        assertThat(SPRING.lastCovered(firstDay, 1, true)).isEqualTo(LocalDate.of(2025, 6, 30));
        assertThat(SPRING.lastCovered(firstDay.plusDays(1), 1, true)).isEqualTo(LocalDate.of(2026, 6, 30));
        assertThat(SPRING.lastCovered(firstDay.plusDays(1), 1, false)).isEqualTo(LocalDate.of(2025, 6, 30));
        assertThat(SPRING.lastCovered(LocalDate.of(2025, 6, 30), 2, true)).isEqualTo(LocalDate.of(2027, 6, 30));
        assertThat(SPRING.lastCovered(LocalDate.of(2025, 7, 1), 2, true)).isEqualTo(LocalDate.of(2027, 6, 30));
    }

    @Test
    void aSeasonMayGoOverNewYear() {
        Season south = new Season(MonthDay.of(10, 15), MonthDay.of(2, 29));
        assertThat(south.lastCovered(LocalDate.of(2025, 10, 15), 1, true)).isEqualTo(LocalDate.of(2026, 2, 28));
        assertThat(south.lastCovered(LocalDate.of(2026, 1, 10), 1, true)).isEqualTo(LocalDate.of(2027, 2, 28));
        assertThat(south.lastCovered(LocalDate.of(2027, 9, 1), 1, true)).isEqualTo(LocalDate.of(2028, 2, 29));
    }

    @Test
    void hoursUpToTheCapHoldAndUnknownOnesFollowThePolicy() throws Exception {
        CoverageRules rules = rules("example-2026.yaml");
        assertThat(line(rules, new InventedClaim().hours(500, Source.CUSTOMER), "hours")
                        .holds())
                .isEqualTo(Holds.YES);
        assertThat(line(rules, new InventedClaim().hours(500.5, Source.CUSTOMER), "hours")
                        .holds())
                .isEqualTo(Holds.NO);
        assertThat(line(rules, new InventedClaim().hours(10, Source.UNKNOWN), "hours")
                        .holds())
                .isEqualTo(Holds.UNKNOWN);
        assertThat(line(rules, new InventedClaim(), "hours").holds()).isEqualTo(Holds.UNKNOWN);
        assertThat(line(rules, new InventedClaim(), "acres").holds()).isEqualTo(Holds.YES);
    }

    @Test
    void whatIsNotKnownIsNeitherYesNorNo() throws Exception {
        CoverageRules rules = rules("example-2026.yaml");
        assertThat(line(rules, new InventedClaim(), "period").holds()).isEqualTo(Holds.UNKNOWN);
        assertThat(line(rules, new InventedClaim(), "registration").holds()).isEqualTo(Holds.UNKNOWN);
        assertThat(line(rules, new InventedClaim(), "consumables").holds()).isEqualTo(Holds.UNKNOWN);
    }

    @Test
    void aConsumablePartIsNamed() throws Exception {
        Line line = line(
                rules("example-2026.yaml"),
                new InventedClaim().found(Category.C2, "Terry Tester", "Diaphragm", "spring"),
                "consumables");
        assertThat(line.holds()).isEqualTo(Holds.NO);
        assertThat(line.because().values()).containsExactly("Diaphragm");
    }

    @Test
    void whoTestedDoesNotDecide() throws Exception {
        ClaimFile file = new InventedClaim()
                .worth("400")
                .photo(Shows.PLATE, "2026-03-02T08:00:00")
                .run("full-12v-pump", Verdict.FAIL)
                .found(Category.C1, "Pat Finder")
                .file();
        CoverageRules rules = rules("example-2026.yaml");
        for (String name : List.of("terry  TESTER", "Pat Finder ")) {
            assertThatThrownBy(
                            () -> DecisionRules.check(file, decision(Outcome.APPROVE, name, null), Optional.of(rules)))
                    .hasMessageContaining("Who measures does not decide");
        }
        assertThatCode(() -> DecisionRules.check(file, decision(Outcome.APPROVE, "Kim", null), Optional.of(rules)))
                .doesNotThrowAnyException();
    }

    @Test
    void aboveTheValueTwoPersonsSignAndAttachmentsAreNamed() throws Exception {
        CoverageRules rules = rules("example-2026.yaml");
        InventedClaim claim = new InventedClaim()
                .worth("1000.01")
                .run("full-12v-pump", Verdict.FAIL)
                .found(Category.C1, "Pat Finder");
        assertThatThrownBy(() ->
                        DecisionRules.check(claim.file(), decision(Outcome.DENY, "Kim", "Lee"), Optional.of(rules)))
                .hasMessageContaining("missing is sale-date, photo-plate, photo-connector, photo-whole");
        assertThatThrownBy(() ->
                        DecisionRules.check(claim.file(), decision(Outcome.GOODWILL, "Kim", null), Optional.of(rules)))
                .hasMessageContaining("above 1000.00 two persons sign");
        assertThatThrownBy(() ->
                        DecisionRules.check(claim.file(), decision(Outcome.GOODWILL, "Kim", "kim"), Optional.of(rules)))
                .hasMessageContaining("first and the second signer");
        assertThatCode(() ->
                        DecisionRules.check(claim.file(), decision(Outcome.GOODWILL, "Kim", "Lee"), Optional.of(rules)))
                .doesNotThrowAnyException();
    }

    @Test
    void nothingIsDecidedWithoutAFinding() {
        assertThatThrownBy(() -> DecisionRules.check(
                        new InventedClaim().file(), decision(Outcome.REFER, "Kim", null), Optional.empty()))
                .hasMessageContaining("there is no finding yet");
    }

    private static CoverageDecision decision(
            Outcome outcome, String signer, @org.jspecify.annotations.Nullable String second) {
        return new CoverageDecision(
                outcome,
                "invented",
                signer,
                Optional.ofNullable(second),
                Optional.empty(),
                Optional.empty(),
                InventedClaim.DAY);
    }

    @Test
    void aWrongDayIsToldWithItsLine(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("rules.yaml");
        Files.writeString(
                file,
                Files.readString(Firmware.root().resolve("fixtures/coverage/example-2026.yaml"))
                        .replace("2026-01-01", "2026-13-01"));
        assertThatThrownBy(() -> CoverageRulesFile.read(file, "rules.yaml"))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining("rules.yaml:6")
                .hasMessageContaining("allowed is a day, such as 2026-03-15");
    }
}
