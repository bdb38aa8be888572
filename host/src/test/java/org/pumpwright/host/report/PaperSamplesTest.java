package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** Writes every kind of paper to {@code target/papers}, so that a person can look at them. */
class PaperSamplesTest {
    private static final Path FOLDER = Path.of("target", "papers");

    @Test
    void everyKindOfRunGetsBothPapersInBothSystemsOfUnits() throws IOException {
        Files.createDirectories(FOLDER);
        for (Map.Entry<String, RunRecord> sample : samples().entrySet()) {
            for (UnitSystem units : UnitSystem.values()) {
                String name = sample.getKey() + "-" + units.name().toLowerCase(java.util.Locale.ROOT);
                String html = HtmlReport.page(sample.getValue(), units);
                String text = TextReport.page(sample.getValue(), units, true);
                Files.writeString(FOLDER.resolve(name + ".html"), html);
                Files.writeString(FOLDER.resolve(name + ".txt"), text);
                Files.writeString(
                        FOLDER.resolve(name + "-es.html"),
                        HtmlReport.page(sample.getValue(), units, Texts.in(Language.ES)));
                assertThat(html).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
                assertThat(html + text)
                        .as(name)
                        .doesNotContain("NaN")
                        .doesNotContain("Infinity")
                        .doesNotContain("null")
                        .doesNotContain("Optional");
            }
        }
    }

    static Map<String, RunRecord> samples() {
        Map<String, RunRecord> samples = new LinkedHashMap<>();
        samples.put("pass", SampleRecords.pass());
        samples.put("pass-real", SampleRecords.real(SampleRecords.pass()));
        samples.put("fail", SampleRecords.fail());
        samples.put("traced", SampleRecords.traced());
        samples.put("crowded", SampleRecords.crowded());
        samples.put("inconclusive", SampleRecords.inconclusive());
        samples.put("invalid", SampleRecords.invalid());
        samples.put("stopped", SampleRecords.stoppedByBoard());
        samples.put("no-curve", SampleRecords.withoutCurve());
        samples.put("readings", SampleRecords.readings());
        samples.put("manual", SampleRecords.manual());
        return samples;
    }
}
