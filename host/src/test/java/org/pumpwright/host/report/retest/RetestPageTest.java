package org.pumpwright.host.report.retest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.sheet.SheetRules;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

class RetestPageTest {
    private static final RunSpread SPREAD = RunSpread.of(RetestSamples.curve(0.01));
    private static final Texts ENGLISH = Texts.in(Language.EN);

    private static String page(RunRecord one, RunRecord other) {
        return RetestPage.html(one, other, SPREAD, UnitSystem.US, ENGLISH);
    }

    @Test
    void theEarlierRunIsBeforeWhateverOrderTheyAreGivenIn() {
        String page = page(RetestSamples.before(), RetestSamples.after());
        assertThat(page(RetestSamples.after(), RetestSamples.before())).isEqualTo(page);
        assertThat(page).containsSubsequence("FAIL", "20260402-081530-7f3a", "→", "PASS", "20260403-101500-22cc");
    }

    @Test
    void bothRunsStandInBothChartsOneOpenAndDashedTheOtherFilled() {
        String page = page(RetestSamples.before(), RetestSamples.after());
        assertThat(page.split("<polyline class=\"before\"", -1)).hasSize(4);
        assertThat(page.split("<polyline class=\"after\"", -1)).hasSize(4);
        assertThat(page.split("class=\"open\"", -1)).hasSize(2 * 5 + 2);
        assertThat(page.split("class=\"solid\"", -1)).hasSize(2 * 5 + 2);
        assertThat(page).contains("<polygon class=\"band\"", "healthy range");
    }

    @Test
    void everyJudgedFeatureShowsValueBeforeAndAfterAndWhetherItMoved() {
        String page = page(RetestSamples.before(), RetestSamples.after());
        assertThat(page)
                .containsSubsequence(
                        "flow at 50\u00a0%",
                        "1.50 gal/min, FAIL low",
                        "2.08 gal/min, pass",
                        "+28.2 %",
                        "2.0 %",
                        "2.8 %",
                        "<td class=\"reverse\">yes</td>");
        assertThat(page).contains("motor amps at 100\u00a0%").doesNotContain("flow at 75");
    }

    @Test
    void aChangeSmallerThanRunsDifferByIsNone() {
        RunRecord again =
                RetestSamples.later(RetestSamples.before(), "20260402-093000-7f3b", "2026-04-02T09:30:00-05:00");
        assertThat(page(RetestSamples.before(), again))
                .contains("<td class=\"strong\">no</td>")
                .doesNotContain(">yes<");
    }

    @Test
    void withoutAKnownSpreadThePageSaysSoAndClaimsNoChange() {
        String page = RetestPage.html(
                RetestSamples.before(), RetestSamples.after(), RunSpread.NOT_KNOWN, UnitSystem.US, ENGLISH);
        assertThat(page).contains("is NOT KNOWN", "can&#39;t say").doesNotContain(">yes<");
        assertThat(RunSpread.of(RetestSamples.curve(0)).share(Feature.Kind.FLOW, 6))
                .isEmpty();
    }

    @Test
    void theSpreadLiesOnStraightLinesBetweenTheCurvesPoints() {
        assertThat(SPREAD.share(Feature.Kind.FLOW, 7).orElseThrow()).isCloseTo(0.01, within(1e-12));
        assertThat(SPREAD.share(Feature.Kind.MOTOR_AMPS, 99).orElseThrow()).isCloseTo(0.02, within(1e-12));
        assertThat(SPREAD.share(Feature.Kind.READING, 7)).isEmpty();
    }

    @Test
    void whatWasNotTheSameIsNamed() {
        String page = page(RetestSamples.before(), RetestSamples.onAnotherStand(RetestSamples.after()));
        assertThat(page).contains("NOT THE SAME in both runs: stand, nozzle.", "Second stand (bench-2)", "n-0.45");
        assertThat(page(RetestSamples.before(), RetestSamples.after()))
                .contains("Both runs were made with the same stand, nozzle, fluid, driver, plan, curve and rules.");
    }

    @Test
    void againstTwoCurvesTheChangeIsInTheOwnUnitAndNotCalledMoreThanChance() {
        String page = page(RetestSamples.before(), RetestSamples.onAnotherCurve(RetestSamples.after()));
        assertThat(page)
                .contains("+0.58 gal/min", "NOT THE SAME in both runs: healthy curve")
                .doesNotContain(">yes<");
    }

    @Test
    void anInvalidRunIsShownAndNothingIsComparedWithIt() {
        RunRecord invalid =
                RetestSamples.later(SampleRecords.invalid(), "20260403-101500-22cd", "2026-04-03T10:15:00-05:00");
        assertThat(page(RetestSamples.before(), invalid))
                .contains("One of the two runs says nothing of the unit")
                .doesNotContain(">yes<", "<polygon class=\"band\"");
    }

    @Test
    void runsOfDifferentUnitsAreRefused() {
        RunRecord other = SampleRecords.withSerial(RetestSamples.after(), "D-99");
        assertThatThrownBy(() -> Retest.of(RetestSamples.before(), other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "run 20260402-081530-7f3a is of serial 'D-10442', run 20260403-101500-22cc of serial 'D-99':"
                                + " a retest is of one unit");
        assertThatThrownBy(
                        () -> Retest.of(RetestSamples.before(), RetestSamples.ofModel(RetestSamples.after(), "other")))
                .hasMessageContaining("is of model demo-pump, run 20260403-101500-22cc of model other");
        assertThatThrownBy(() -> Retest.of(RetestSamples.before(), RetestSamples.before()))
                .hasMessageContaining("a retest needs two runs");
        assertThatThrownBy(() -> Retest.of(
                        SampleRecords.withSerial(RetestSamples.before(), "no plate"),
                        SampleRecords.withSerial(RetestSamples.after(), "no plate")))
                .hasMessageContaining("without a serial");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPaperIsWellFormedAndInItsLanguage(Language language) throws IOException {
        Path folder = Path.of("target", "papers");
        Files.createDirectories(folder);
        for (Map.Entry<String, List<RunRecord>> sample : samples().entrySet()) {
            String page = RetestPage.html(
                    sample.getValue().get(0), sample.getValue().get(1), SPREAD, UnitSystem.US, Texts.in(language));
            Files.writeString(folder.resolve("retest-" + sample.getKey() + "-" + language.code() + ".html"), page);
            SheetRules.check(page, language);
        }
    }

    private static Map<String, List<RunRecord>> samples() {
        Map<String, List<RunRecord>> samples = new LinkedHashMap<>();
        samples.put("repaired", List.of(RetestSamples.before(), RetestSamples.after()));
        samples.put(
                "otherwise",
                List.of(
                        RetestSamples.before(),
                        RetestSamples.onAnotherStand(RetestSamples.onAnotherCurve(RetestSamples.after()))));
        samples.put(
                "invalid",
                List.of(
                        RetestSamples.before(),
                        RetestSamples.later(SampleRecords.invalid(), "20260403-1", "2026-04-03T10:15:00-05:00")));
        samples.put(
                "sparse",
                List.of(
                        SampleRecords.stoppedByBoard(),
                        RetestSamples.later(SampleRecords.readings(), "20260403-1", "2026-04-03T10:15:00-05:00")));
        String hostile = "<b>\"&'" + "W-1234567890 ".repeat(12);
        samples.put(
                "long",
                List.of(
                        SampleRecords.withSerial(SampleRecords.traced(), hostile),
                        SampleRecords.withSerial(RetestSamples.after(), hostile)));
        return samples;
    }
}
