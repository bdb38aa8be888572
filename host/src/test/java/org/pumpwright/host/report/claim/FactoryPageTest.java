package org.pumpwright.host.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.sheet.SheetRules;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

class FactoryPageTest {
    private static final Texts ENGLISH = Texts.in(Language.EN);

    private static String page(RunRecord run, Optional<ClaimFile> claim) {
        return FactoryPage.html(FactoryCase.of(run, claim, ClaimSamples.digest("record")), UnitSystem.US, ENGLISH);
    }

    @Test
    void theFactoryGetsUnitUseFailureModeParametersConditionsAndVersions() {
        assertThat(page(SampleRecords.traced(), Optional.of(ClaimSamples.full())))
                .contains("demo-pump", "D-10442", "25-31", "112 h (customer says), 840 acres (customer says)")
                .contains("C1  Outside limits; condition consistent with a material or workmanship cause")
                .contains("Complaint code: low. Reproduced: yes. Parts concerned: valve set.")
                .contains("1. one chamber not pumping")
                .contains("1.504 gal/min", "0.024 gal/min", "1.89 to 2.23", "FAIL low", "start duty")
                .contains(
                        "quick-12v-pump v1", "demo-pump-n060 v2, n = 10", "pump-12v v1", "Pumpwright 0.1.0", "7812 Hz")
                .contains(ClaimSamples.digest("record").hex());
    }

    @Test
    void nobodyIsOnIt() {
        FactoryCase unit =
                FactoryCase.of(SampleRecords.fail(), Optional.of(ClaimSamples.full()), ClaimSamples.digest("record"));
        ClaimSamples.IDENTITY.forEach(words -> {
            assertThat(unit.toString()).doesNotContain(words);
            assertThat(FactoryPage.html(unit, UnitSystem.US, ENGLISH)).doesNotContain(words);
        });
    }

    @Test
    void figuresThatStepsHaveReadStandThereWithTheirUncertainty() {
        assertThat(page(SampleRecords.readings(), Optional.empty()))
                .contains("resistance at rest", "0.484 Ω", "0.048 Ω", "judges nothing of the unit");
    }

    @Test
    void whatIsNotKnownIsNamed() {
        assertThat(page(SampleRecords.fail(), Optional.empty()))
                .contains("MISSING: maker&#39;s date code; hours or acres in use; a signed finding.");
    }

    @Test
    void anInvalidRunShowsNoParametersAgainstLimits() {
        assertThat(page(SampleRecords.invalid(), Optional.empty()))
                .contains("judges nothing of the unit")
                .doesNotContain("Judged parameters");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPageIsWellFormedAndInItsLanguage(Language language) throws IOException {
        Path folder = Path.of("target", "papers");
        Files.createDirectories(folder);
        Map<String, FactoryCase> samples = new LinkedHashMap<>();
        samples.put(
                "full",
                FactoryCase.of(SampleRecords.traced(), Optional.of(ClaimSamples.full()), ClaimSamples.digest("r")));
        samples.put(
                "sparse", FactoryCase.of(SampleRecords.stoppedByBoard(), Optional.empty(), ClaimSamples.digest("r")));
        samples.put(
                "readings",
                FactoryCase.of(SampleRecords.readings(), Optional.of(ClaimSamples.sparse()), ClaimSamples.digest("r")));
        samples.put(
                "hostile",
                FactoryCase.of(
                        SampleRecords.withSerial(SampleRecords.fail(), "<b>\"&'"),
                        Optional.empty(),
                        ClaimSamples.digest("r")));
        for (Map.Entry<String, FactoryCase> sample : samples.entrySet()) {
            String page = FactoryPage.html(sample.getValue(), UnitSystem.US, Texts.in(language));
            SheetRules.check(page, language);
            Files.writeString(folder.resolve("factory-" + sample.getKey() + "-" + language.code() + ".html"), page);
        }
    }
}
