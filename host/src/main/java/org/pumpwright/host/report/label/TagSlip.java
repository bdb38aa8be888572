package org.pumpwright.host.report.label;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.AsciiText;

/**
 * What a label is made of. Thread-safe.
 *
 * @param run the run whose verdict it bears
 * @param colour of the tag
 * @param hot whether the unit is still too hot to be touched
 * @param corrected whether the record was corrected afterwards, so that what is first written there reads otherwise
 */
public record TagSlip(RunRecord run, TagColour colour, boolean hot, boolean corrected) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);

    public TagSlip {
        if (run.grade().verdict() == Verdict.INVALID) {
            throw new IllegalArgumentException(
                    "an invalid run says nothing of the unit: it gets a stand ticket, no label");
        }
    }

    /** The label that follows from the run alone. */
    public static TagSlip of(RunRecord run) {
        return new TagSlip(run, TagColour.of(run.grade().verdict()), false, false);
    }

    /** The day of the test where the stand is. */
    String day() {
        return DAY.format(run.startedAt());
    }

    /** What the square code says, in one line of plain ASCII. */
    public String code() {
        return "PUMPWRIGHT-TAG/1;no=" + field(run.id())
                + ";verdict=" + run.grade().verdict().name().replace('_', ' ')
                + ";model=" + field(run.subject().model())
                + ";serial=" + field(run.subject().serial())
                + run.intake().claim().map(claim -> ";claim=" + field(claim)).orElse("")
                + ";tested=" + day()
                + (run.subject().practice() ? ";practice=yes" : "");
    }

    private static String field(String text) {
        return AsciiText.of(text).replace(';', ',');
    }
}
