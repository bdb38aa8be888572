package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** The plain readings of a run that judges no unit: what the stand showed, beside no healthy range. Thread-safe. */
final class ReadingTable {
    private ReadingTable() {}

    static Tag draw(RunRecord run, UnitSystem units, Interpreter in) {
        List<PlainReading> readings = PlainReading.of(run);
        if (readings.isEmpty() && !run.grade().findings().isEmpty()) {
            // A plan without a sweep has no points; what its steps read stands in a table of its own.
            return Tag.of("div");
        }
        if (readings.isEmpty()) {
            return Tag.withText("p", in.say("readings.none")).set("class", "empty");
        }
        Tag body = Tag.of("tbody");
        readings.forEach(reading -> body.add(row(reading, units, in)));
        Tag table = Tag.of("table", "points plain").add(Tag.of("thead").add(head(units, in)), body);
        return Tag.of("div")
                .add(table, Tag.withText("p", in.say("readings.footnote")).set("class", "small"));
    }

    private static Tag head(UnitSystem units, Interpreter in) {
        String flow = in.say("readings.flow", new FeaturePrinter(units, in).unit(Feature.Kind.FLOW));
        return Tag.of("tr")
                .add(Tag.withText("th", in.say("points.leg")).set("class", "words"))
                .add(List.of(
                                in.say("points.drive"),
                                flow,
                                in.say("readings.volts"),
                                in.say("readings.amps"),
                                in.say("readings.pressure"))
                        .stream()
                        .map(title -> Tag.withText("th", title))
                        .toList());
    }

    private static Tag row(PlainReading reading, UnitSystem units, Interpreter in) {
        String flow = new FeaturePrinter(units, in).number(Feature.Kind.FLOW, reading.flowM3PerSecond());
        return Tag.of("tr")
                .add(Tag.withText("td", new Words(in).leg(reading.point())).set("class", "words"))
                .add(List.of(
                                reading.point().commanded().print(),
                                flow,
                                reading.voltsWords(in),
                                reading.ampsWords(in),
                                reading.pressureWords(units, in))
                        .stream()
                        .map(value -> Tag.withText("td", value))
                        .toList());
    }
}
