package org.pumpwright.host.app.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.statistics.Outcome;
import org.pumpwright.host.claim.statistics.ReturnFact;
import org.pumpwright.host.claim.statistics.ReturnStatistics;

/** From claims on record and a CSV file to statistics. */
final class StatisticsDeskTest {
    @TempDir
    private Path folder;

    private static final List<ClaimFile> CLAIMS = List.of(
            ClaimToCount.cameIn("W1", "2026-03-05")
                    .unit("pump", "s-1", "2603")
                    .sold("2026-01-20")
                    .found(Category.C2, "valve", "diaphragm")
                    .returned("2026-03-09")
                    .file(),
            ClaimToCount.cameIn("W2", "2026-03-06")
                    .unit("other", "S2", "2603")
                    .found(Category.C4)
                    .file(),
            ClaimToCount.cameIn("W3", "2026-03-07")
                    .unit("pump", "S3", "2603")
                    .practice()
                    .file());

    private ReturnStatistics answer(Optional<String> model, Optional<Path> shipped, boolean practice)
            throws OrderException {
        return new StatisticsDesk(() -> CLAIMS)
                .answer(new StatisticsDesk.Question(
                        model, Optional.empty(), LocalDate.of(2026, 6, 30), shipped, 0.02, practice));
    }

    private Path csv(String... lines) throws IOException {
        return Files.write(folder.resolve("shipped.csv"), List.of(lines));
    }

    @Test
    void aClaimIsReadAsWhatCountsOfIt() {
        assertThat(ReturnReading.of(CLAIMS.get(0)))
                .isEqualTo(new ReturnFact(
                        "W1",
                        new ReturnFact.Unit("pump", Optional.of("S-1")),
                        Optional.of("2603"),
                        Optional.of(YearMonth.of(2026, 1)),
                        Optional.empty(),
                        LocalDate.of(2026, 3, 5),
                        OptionalDouble.of(80),
                        Optional.of(Outcome.CONFIRMED_FAILURE),
                        Optional.of("diaphragm + valve"),
                        Optional.of(LocalDate.of(2026, 3, 9)),
                        OptionalDouble.empty(),
                        false));
    }

    @Test
    void aUnitWithoutAPlateAndWithoutAFindingIsReadWithoutBoth() {
        ReturnFact fact =
                ReturnReading.of(ClaimToCount.cameIn("W9", "2026-03-05").file());

        assertThat(fact.unit().serial()).isEmpty();
        assertThat(fact.concluded()).isFalse();
        assertThat(fact.mode()).isEmpty();
    }

    @Test
    void practiceClaimsAreCountedAloneOrNotAtAll() throws OrderException {
        assertThat(answer(Optional.empty(), Optional.empty(), false).counts().returns())
                .isEqualTo(2);
        assertThat(answer(Optional.empty(), Optional.empty(), true).counts().returns())
                .isEqualTo(1);
    }

    @Test
    void oneModelIsCountedWithoutTheOthersAndAgainstWhatWasShipped() throws Exception {
        Path shipped = csv("# as delivered", "month,count,date_code", "2026-01,120,2603", "", "2026-02,80,2607");
        ReturnStatistics statistics = answer(Optional.of("pump"), Optional.of(shipped), false);

        assertThat(statistics.counts().returns()).isEqualTo(1);
        assertThat(statistics.fleet()).hasValueSatisfying(fleet -> {
            assertThat(fleet.shipped()).isEqualTo(200);
            assertThat(fleet.failed()).isEqualTo(1);
            assertThat(fleet.unplaced()).isEmpty();
        });
    }

    @Test
    void whatWasShippedWithoutAModelIsRefused() {
        assertThatThrownBy(() -> answer(Optional.empty(), Optional.of(csv("month,count", "2026-01,5")), false))
                .hasMessage("--shipped needs --model: what was shipped is of one model, and its returns must be too");
    }

    @Test
    void moreReturnsThanWereShippedNameTheFile() throws IOException {
        Path shipped = csv("month,count", "2026-01,1");
        List<ClaimFile> two = List.of(
                ClaimToCount.cameIn("W1", "2026-03-05")
                        .unit("pump", "S1", "a")
                        .sold("2026-01-02")
                        .file(),
                ClaimToCount.cameIn("W2", "2026-03-05")
                        .unit("pump", "S2", "a")
                        .sold("2026-01-02")
                        .file());

        assertThatThrownBy(() -> new StatisticsDesk(() -> two)
                        .answer(new StatisticsDesk.Question(
                                Optional.of("pump"),
                                Optional.empty(),
                                LocalDate.of(2026, 6, 30),
                                Optional.of(shipped),
                                0.02,
                                false)))
                .isInstanceOf(OrderException.class)
                .hasMessageStartingWith(shipped + ": 2026-01: 2 units came back, but only 1 were shipped.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "month,count/2026-13,5|:2: month is '2026-13': write year and month as 2026-04.",
                "month,count/2026-01,1.000|:2: count is '1.000': a whole number is needed, without a thousands sign.",
                "month,count/2026-01,0|:2: count is 0: must be 1 or more; leave the line out where nothing was shipped.",
                "month,count/2026-01|:2: 1 values for 2 columns.",
                "month,count/2026-01,5/2026-01,6|:3: 2026-01 is in line 2 already: add the two counts up.",
                "month,number|:1: column 'number' is not known. Columns are month,count and, where kept, date_code, parted by commas.",
                "count,date_code|:1: column month is missing.",
                "month,count|: no shipment is in it. First line: month,count,date_code; then one line a month, as 2026-04,120,2615."
            })
    void aLineThatCannotBeReadIsNamedWithItsNumber(String lines, String complaint) throws IOException {
        Path shipped = csv(lines.split("/", -1));

        assertThatThrownBy(() -> ShippedCsv.read(shipped))
                .isInstanceOf(OrderException.class)
                .hasMessage(shipped + complaint);
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> ShippedCsv.read(folder.resolve("none.csv")))
                .hasMessage(folder.resolve("none.csv") + ": is not there: check the name and the folder");
    }
}
