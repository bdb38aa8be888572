package org.pumpwright.host.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFileException;

/** Rules of grading as data. */
class RulesFileTest {
    private static final Path SHIPPED = Firmware.root().resolve("fixtures/rules");

    @TempDir
    private Path folder;

    private GradingRules changed(String what, String by) throws Exception {
        String text = Files.readString(SHIPPED.resolve("pump-12v.yaml"));
        assertThat(text).contains(what);
        return RulesFile.read(Files.writeString(folder.resolve("pump-12v.yaml"), text.replace(what, by)));
    }

    @Test
    void everyFileOfTheShelfIsReadAndNamedAsItsFile() throws Exception {
        try (Stream<Path> files = Files.list(SHIPPED)) {
            for (Path file : files.sorted().toList()) {
                GradingRules rules = RulesFile.read(file);
                assertThat(file).hasFileName(rules.name() + ".yaml");
                assertThat(rules.decision().mostRetests()).isBetween(0, 2);
                assertThat(rules.kind()).isEqualTo(UnitKind.ofWord(rules.name()));
            }
        }
    }

    @Test
    void limitsAreKeptInSiWithTheirLine() throws Exception {
        GradingRules rules = RulesFile.read(SHIPPED.resolve("pump-12v.yaml"));
        ReadingLimit closed =
                rules.limit("dead-head", "pressure, outlet closed, time 2 of 3").orElseThrow();
        assertThat(closed.low()).isCloseTo(80 * 6894.757293168, within(1e-6));
        assertThat(closed.lowSource().file()).isEqualTo("rules/pump-12v.yaml");
        assertThat(Files.readAllLines(SHIPPED.resolve("pump-12v.yaml"))
                        .get(closed.lowSource().line() - 1)
                        .strip())
                .isEqualTo("low: 80");
        assertThat(rules.limit("sweep", "start duty of another kind")).isEmpty();
    }

    @Test
    void theFirstRuleThatFitsAWordHolds() throws Exception {
        GradingRules rules = RulesFile.read(SHIPPED.resolve("pump-12v.yaml"));
        assertThat(rules.word("starts", "starts", "10 of 10").orElseThrow().meaning())
                .isEqualTo(WordRule.Meaning.PASS);
        assertThat(rules.word("starts", "starts", "9 of 10").orElseThrow().meaning())
                .isEqualTo(WordRule.Meaning.FAIL);
        assertThat(rules.word("starts", "time to run", "not measured")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "guard_factor: 1.645 | guard_factor: 11",
                "most_retests: 2 | most_retests: two",
                "unit: hertz | unit: furlongs",
                "role: judged | role: jury",
                "kind: pump-12v | kind: pump-24v"
            })
    void aValueThatWillNotDoIsToldWithFileAndLine(String what, String by) {
        assertThatThrownBy(() -> changed(what, by))
                .isInstanceOf(DataFileException.class)
                .hasMessageMatching("(?s).*pump-12v\\.yaml:\\d+.*");
    }

    @Test
    void aLimitThatBeginsAboveItsEndIsToldWithItsLine() {
        assertThatThrownBy(() -> changed("    low: 8\n    high: 24", "    low: 25\n    high: 24"))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining("it must not lie above high, 24");
    }

    @Test
    void aLimitWithoutLowAndHighIsTold() {
        assertThatThrownBy(() -> changed("    low: 8\n    high: 24\n", ""))
                .isInstanceOf(DataFileException.class)
                .hasMessageContaining("has neither low nor high");
    }

    @Test
    void theWeightOfTheNozzleIsLinearBetweenItsPointsAndConstantBeyond() throws Exception {
        NozzleEffect nozzle = RulesFile.read(SHIPPED.resolve("pump-12v.yaml")).nozzle();
        assertThat(nozzle.at(0.1).flow()).isEqualTo(0.12);
        assertThat(nozzle.at(0.4).flow()).isCloseTo((0.12 + 0.23) / 2, within(1e-12));
        assertThat(nozzle.at(0.4).motorAmps()).isCloseTo(-(0.31 + 0.66) / 2, within(1e-12));
        assertThat(nozzle.at(1).flow()).isEqualTo(0.41);
        assertThat(NozzleEffect.NONE.at(0.5).flow()).isZero();
    }
}
