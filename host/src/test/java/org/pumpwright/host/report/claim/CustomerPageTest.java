package org.pumpwright.host.report.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.demand.ApplicationRate;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.bucket.BucketSamples;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.report.sheet.SheetRules;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

class CustomerPageTest {
    private static final String HOSTILE = "\"><script>alert('1')</script>&amp;";
    private static final Texts ENGLISH = Texts.in(Language.EN);

    private static String page(RunRecord run, CustomerFacts facts) {
        return CustomerPage.html(run, facts, UnitSystem.US, ENGLISH);
    }

    private static PlanterNeed need(RunRecord run, double gallonsPerAcre) {
        Planter planter =
                new Planter(16, 0.762, ApplicationRate.ofGallonsPerAcre(gallonsPerAcre), GroundSpeed.ofMilesPerHour(6));
        return PlanterNeed.of(run, planter, "10-34-0", false, planter.whole(), PlanterNeed.USUAL_SPARE)
                .orElseThrow();
    }

    private static CustomerFacts everything(RunRecord run) {
        return new CustomerFacts(
                Optional.of("Example Shop (invented)"),
                Optional.of("C-2026-0117"),
                Optional.of("Rows on the left run out at the end of the field"),
                Optional.of(need(run, 5)),
                Optional.of(BucketSamples.plain()),
                List.of("Cleaned the inlet and fitted a new seal."));
    }

    @Test
    void theVerdictStandsInPlainWordsWithTheFigureThatShowsItBest() {
        assertThat(page(SampleRecords.pass(), CustomerFacts.NONE)).contains("<h1>It works as it should.</h1>");
        assertThat(page(SampleRecords.fail(), CustomerFacts.NONE))
                .contains(
                        "<h1>It does not work as it should.</h1>",
                        "At 100 % drive it gives 3.05 gal/min; healthy units give 3.53 to 4.19 gal/min.");
        assertThat(page(SampleRecords.inconclusive(), CustomerFacts.NONE)).contains("tell for sure yet");
        assertThat(page(SampleRecords.withoutCurve(), CustomerFacts.NONE))
                .contains("We could not judge it.", "nothing good and nothing bad");
    }

    @Test
    void anInvalidRunGetsNoPageAndTheReasonIsTold() {
        assertThat(CustomerPage.refusal(SampleRecords.invalid(), ENGLISH))
                .hasValue(
                        "run 20260402-081530-7f3a is invalid: it says nothing of the unit, so there is no page for the"
                                + " customer. Put the stand right and run again.");
        assertThatThrownBy(() -> page(SampleRecords.invalid(), CustomerFacts.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("there is no page for the customer");
        assertThat(CustomerPage.refusal(SampleRecords.pass(), ENGLISH)).isEmpty();
    }

    @Test
    void whatThePlanterNeedsStandsAgainstWhatTheUnitGives() {
        RunRecord run = SampleRecords.pass();
        assertThat(page(run, everything(run)))
                .contains("Your planter needs 2.42 gal/min", "This unit gives up to 3.85 gal/min", "Yes: 59 % to spare")
                .contains("16 rows of 30 in, 5.00 gal/acre, 6.00 mph, 10-34-0");
        CustomerFacts tooMuch = new CustomerFacts(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(need(run, 12)),
                Optional.empty(),
                List.of());
        assertThat(page(run, tooMuch)).contains("No: it falls short (-34 %)", "Fastest speed at this rate: 3.97 mph");
    }

    @Test
    void numbersOfThePlanterThatNobodyGaveAreNamedWithRoomToWrite() {
        String page = page(SampleRecords.pass(), CustomerFacts.NONE);
        for (String name : List.of("rows", "row spacing", "rate on an area", "speed", "product")) {
            assertThat(page).containsPattern("<th>" + name + "</th>\\s*<td class=\"missing\">not given");
        }
        assertThat(page)
                .containsPattern("Claim or job</th>\\s*<td class=\"missing\">not given")
                .contains("no bucket test was made");
    }

    @Test
    void theNewCalibrationNumberStandsInBothUnitsAndInTheListForThePlanter() {
        RunRecord run = SampleRecords.pass();
        String number =
                new PlainWords(run, new FeatureWords(UnitSystem.US, ENGLISH), ENGLISH).number(BucketSamples.plain());
        assertThat(number).matches("\\d+\\.?\\d* pulses/gal = \\d+\\.?\\d* pulses/L");
        assertThat(page(run, everything(run)).split(Pattern.quote(number), -1)).hasSize(3);
    }

    @Test
    void theListForThePlanterNamesVoltsStrainerAirReturnsAndNumber() {
        assertThat(page(SampleRecords.fail(), CustomerFacts.NONE))
                .containsSubsequence("☐ Volts", "☐ Strainer", "☐ Air", "☐ Returns", "☐ Calibration number");
    }

    @Test
    void howManyTestsWereMadeStandsOnThePage() {
        assertThat(page(SampleRecords.traced(), CustomerFacts.NONE)).contains("This was test number 2 of this unit");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void thereAreNoCodesNoJargonAndNoSignature(Language language) {
        for (RunRecord run : runs().values()) {
            String words = CustomerPage.html(run, everything(SampleRecords.pass()), UnitSystem.US, Texts.in(language))
                    .replaceAll("(?s)<style.*?</style>", "")
                    .replaceAll("<[^>]*>", " ");
            assertThat(words)
                    .doesNotContain("C1", "C2", "C3", "C4", "C5", "C6", "C7", "C8", "guard", "k = 2", "curve demo")
                    .doesNotContainIgnoringCase(
                            "uncertainty", "incertidumbre", "signature", "firma", "warranty", "garantía");
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPageIsWellFormedAndInItsLanguage(Language language) throws IOException {
        Path folder = Path.of("target", "papers");
        Files.createDirectories(folder);
        for (Map.Entry<String, RunRecord> sample : runs().entrySet()) {
            RunRecord run = sample.getValue();
            for (UnitSystem units : UnitSystem.values()) {
                String full = CustomerPage.html(run, everything(SampleRecords.pass()), units, Texts.in(language));
                String bare = CustomerPage.html(run, CustomerFacts.NONE, units, Texts.in(language));
                SheetRules.check(full, language);
                SheetRules.check(bare, language);
                String end = units.name().toLowerCase(Locale.ROOT) + "-" + language.code() + ".html";
                Files.writeString(folder.resolve("customer-" + sample.getKey() + "-full-" + end), full);
                Files.writeString(folder.resolve("customer-" + sample.getKey() + "-bare-" + end), bare);
            }
        }
    }

    private static Map<String, RunRecord> runs() {
        Map<String, RunRecord> runs = new LinkedHashMap<>();
        runs.put("pass", SampleRecords.pass());
        runs.put("fail", SampleRecords.fail());
        runs.put("inconclusive", SampleRecords.inconclusive());
        runs.put("no-curve", SampleRecords.withoutCurve());
        runs.put("readings", SampleRecords.readings());
        runs.put("hostile", SampleRecords.withSerial(SampleRecords.traced(), HOSTILE + "W-1234567890 ".repeat(8)));
        return runs;
    }

    @Test
    void aComplaintGivenOnlyAsACodeIsSaidInWords() {
        RunRecord run = ClaimSamples.withIntake(SampleRecords.fail(), Intake.NONE.complaining("quits-hot"));
        assertThat(page(run, CustomerFacts.NONE)).contains("You told us: &quot;it quits when hot&quot;.");
    }
}
