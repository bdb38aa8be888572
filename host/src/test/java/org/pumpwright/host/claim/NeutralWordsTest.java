package org.pumpwright.host.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** No text of a claim puts intent or fault on a person. */
class NeutralWordsTest {
    private static final Pattern FORBIDDEN = Pattern.compile(
            "abus|fraud|misus|neglig|(customer|user|operator) error|tamper|culp|fault of|blame|mal uso|uso indebido"
                    + "|uso incorrecto|engañ|error del (cliente|usuario)|manipulad|maltrat|descuid",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    @Test
    void noTextOfAClaimAccuses() {
        for (Language language : Language.values()) {
            Texts texts = Texts.in(language);
            List<String> keys = texts.keys().stream()
                    .filter(key -> key.startsWith("claim."))
                    .toList();
            assertThat(keys).hasSizeGreaterThan(100);
            for (String key : keys) {
                int gaps = language == Language.EN ? gaps(texts, key) : gaps(Texts.in(Language.EN), key);
                Object[] values = java.util.Collections.nCopies(gaps, "x").toArray();
                assertThat(texts.say(key, values)).as(key).doesNotContainPattern(FORBIDDEN);
            }
        }
    }

    private static int gaps(Texts texts, String key) {
        for (int gaps = 0; gaps < 8; gaps++) {
            try {
                texts.say(key, java.util.Collections.nCopies(gaps, "x").toArray());
                return gaps;
            } catch (IllegalArgumentException e) {
                assertThat(e).hasMessageContaining("gaps");
            }
        }
        throw new AssertionError(key);
    }

    @Test
    void noFileOfTheDeskAccuses() throws IOException {
        Path root = Firmware.root();
        List<Path> places = List.of(
                root.resolve("fixtures/claims"),
                root.resolve("fixtures/coverage"),
                root.resolve("host/src/main/java/org/pumpwright/host/claim"),
                root.resolve("host/src/main/java/org/pumpwright/host/app/claim"),
                root.resolve("host/src/main/java/org/pumpwright/host/cli/claim"),
                root.resolve("host/src/main/resources/org/pumpwright/host/claim"));
        int files = 0;
        for (Path place : places) {
            try (Stream<Path> all = Files.walk(place)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    files++;
                    assertThat(Files.readString(file).toLowerCase(Locale.ROOT))
                            .as(file.toString())
                            .doesNotContainPattern(FORBIDDEN);
                }
            }
        }
        assertThat(files).isGreaterThan(50);
    }

    @Test
    void theCategoriesArePrintedInTheseWords() {
        Texts texts = Texts.in(Language.EN);
        assertThat(java.util.Arrays.stream(Category.values())
                        .map(category -> texts.say(category.key()))
                        .toList())
                .containsExactly(
                        "Outside limits; condition consistent with a material or workmanship cause",
                        "Outside limits; condition consistent with normal wear for reported use",
                        "Outside limits; condition consistent with installation, contamination or operation outside stated range",
                        "Within limits at every test performed; reported symptom not reproduced",
                        "Measurement inconclusive at the stated uncertainty",
                        "Not testable as received",
                        "Unit within limits; cause found elsewhere",
                        "Outside limits; cause not determined");
    }
}
