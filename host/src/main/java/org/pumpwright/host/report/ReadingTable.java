package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;

/** The plain readings of a run that judges no unit: what the stand showed, beside no healthy range. Thread-safe. */
final class ReadingTable {
    private static final String FOOTNOTE =
            "Plain readings: counts over time and means, without uncertainty. Nothing is judged on them.";

    private ReadingTable() {}

    static Tag draw(RunRecord run, UnitSystem units) {
        List<PlainReading> readings = PlainReading.of(run);
        if (readings.isEmpty() && !run.grade().findings().isEmpty()) {
            // A plan without a sweep has no points; what its steps read stands in a table of its own.
            return Tag.of("div");
        }
        if (readings.isEmpty()) {
            return Tag.withText("p", "No point of the plan was finished, so there are no readings.")
                    .set("class", "empty");
        }
        Tag body = Tag.of("tbody");
        readings.forEach(reading -> body.add(row(reading, units)));
        Tag table = Tag.of("table", "points plain").add(Tag.of("thead").add(head(units)), body);
        return Tag.of("div").add(table, Tag.withText("p", FOOTNOTE).set("class", "small"));
    }

    private static Tag head(UnitSystem units) {
        String flow = "flow, " + new FeaturePrinter(units).unit(Feature.Kind.FLOW);
        return Tag.of("tr")
                .add(Tag.withText("th", "leg").set("class", "words"))
                .add(List.of("drive", flow, "volts at the pins", "supply current", "outlet pressure").stream()
                        .map(title -> Tag.withText("th", title))
                        .toList());
    }

    private static Tag row(PlainReading reading, UnitSystem units) {
        String flow = new FeaturePrinter(units).number(Feature.Kind.FLOW, reading.flowM3PerSecond());
        return Tag.of("tr")
                .add(Tag.withText("td", Words.leg(reading.point())).set("class", "words"))
                .add(List.of(
                                reading.point().commanded().print(),
                                flow,
                                reading.voltsWords(),
                                reading.ampsWords(),
                                reading.pressureWords(units))
                        .stream()
                        .map(value -> Tag.withText("td", value))
                        .toList());
    }
}
