package org.pumpwright.host.report.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.report.sheet.Picture;
import org.pumpwright.host.report.sheet.SheetRules;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

class ClerkPageTest {
    private static final Texts ENGLISH = Texts.in(Language.EN);

    private static String page(ClaimFile file, boolean whole) {
        return ClerkPage.html(ClaimSamples.evidence(file, whole), ENGLISH);
    }

    @Test
    void theEvidenceStandsOnThePage() {
        assertThat(page(ClaimSamples.full(), true))
                .contains("Claim evidence", "C-2026-0117", "demo-pump", "D-10442", "25-31")
                .contains("2025-03-11 (by document)", "2025-04-20 (customer says)", "112 h (customer says)")
                .contains("Rows on the left run out at the end of the field", ">low<", ">YES<")
                .contains("C1  ", "Outside limits; condition consistent with a material or workmanship cause.")
                .contains("20260402-081530-7f3a", "A. Tester", "master check: 2026-04-02, within its limits")
                .contains("11 of 11 checks of the run hold", "Look at: serial D-10442 was here before")
                .contains("2026-04-02 08:30 tested: A. Tester, stand 1; tag T-0412 red")
                .contains("Nothing that is asked for is missing.");
    }

    @Test
    void measurementAndDecisionAreBlocksOfTheirOwnWithSignersOfTheirOwn() {
        String page = page(ClaimSamples.full(), true);
        assertThat(page)
                .containsSubsequence(
                        "MEASUREMENT",
                        "FAIL",
                        "Signed: A. Tester, 2026-04-02 08:55",
                        "COVERAGE DECISION",
                        "Approved",
                        "Coverage rules looked at: coverage-example v3",
                        "Signed: Pat Clerk, 2026-04-02 10:20",
                        "Second signer: Lee Second");
        String measurement = page.substring(page.indexOf("MEASUREMENT"), page.indexOf("COVERAGE DECISION"));
        assertThat(measurement).doesNotContain("Approved", "Pat Clerk");
    }

    @Test
    void everyRuleSaysWhetherItHoldsAndWhyWithTheVersionOfTheRules() {
        assertThat(page(ClaimSamples.full(), true))
                .contains("Coverage rules coverage-example v3", ">holds<", ">does NOT hold<", ">unknown<")
                .contains("nobody has said whether the unit is registered", "coverage-example.yaml line 12");
    }

    @Test
    void everyItemOfEvidenceHasItsDigest() {
        String page = page(ClaimSamples.full(), true);
        for (String item : new String[] {"plate", "connector", "ports", "whole", "trace", "record", "technician"}) {
            assertThat(page).contains(ClaimSamples.digest(item).hex());
        }
    }

    @Test
    void whatIsMissingIsNamed() {
        String page = page(ClaimSamples.sparse(), false);
        for (Missing missing : Missing.values()) {
            assertThat(page).contains(Tag.escape(ENGLISH.say(missing.key())));
        }
        assertThat(page)
                .contains("check of the stand by a master unit", "coverage rules", "photo of plate MISSING")
                .contains("no decision yet", "no signed finding yet", "master check: MISSING");
    }

    @Test
    void photosLieWithinThePageAndOneThatIsNotPrintedIsNamed() {
        assertThat(page(ClaimSamples.full(), true))
                .contains("<img class=\"picture\" src=\"data:image/png;base64,", "on record, not printed here");
        assertThatThrownBy(() -> Picture.of(new byte[] {1, 2, 3}, "plate"))
                .hasMessage("picture 'plate' is neither JPEG nor PNG");
        assertThatThrownBy(() -> Picture.of(new byte[Picture.LARGEST_BYTES + 1], "plate"))
                .hasMessageContaining("at most 2000000 are allowed");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPageIsWellFormedAndInItsLanguage(Language language) throws IOException {
        Path folder = Path.of("target", "papers");
        Files.createDirectories(folder);
        Map<String, ClerkEvidence> samples = Map.of(
                "full", ClaimSamples.evidence(ClaimSamples.full(), true),
                "sparse", ClaimSamples.evidence(ClaimSamples.sparse(), false),
                "wordy", ClaimSamples.evidence(ClaimSamples.wordy(), true));
        for (Map.Entry<String, ClerkEvidence> sample : samples.entrySet()) {
            String page = ClerkPage.html(sample.getValue(), Texts.in(language));
            SheetRules.check(page, language);
            assertThat(page).doesNotContain("<b>\"D");
            Files.writeString(folder.resolve("clerk-" + sample.getKey() + "-" + language.code() + ".html"), page);
        }
    }
}
