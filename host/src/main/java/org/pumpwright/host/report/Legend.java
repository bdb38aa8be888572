package org.pumpwright.host.report;

import java.util.List;
import org.pumpwright.host.report.draw.Marker;
import org.pumpwright.host.report.draw.Tag;
import org.pumpwright.host.text.Interpreter;

/** What the lines and shapes of the charts mean, drawn with the same styles. Thread-safe. */
final class Legend {
    private static final double WIDTH = 30;
    private static final double MIDDLE = 7;
    private static final double SIZE = 4.5;

    private Legend() {}

    static Tag draw(Interpreter in) {
        return Tag.of("p", "legend")
                .add(List.of(
                        entry(
                                Tag.of("rect", "band")
                                        .set("x", 1)
                                        .set("y", 2)
                                        .set("width", 28)
                                        .set("height", 10),
                                in.say("legend.healthy")),
                        entry(line("mean"), in.say("legend.mean")),
                        entry(line("up"), in.say("legend.up")),
                        entry(line("down"), in.say("legend.down")),
                        entry(shape(Marker.DIAMOND, "point open"), in.say("legend.again")),
                        entry(shape(Marker.DISC, "point"), in.say("legend.judged")),
                        entry(
                                Tag.of("g")
                                        .add(Marker.TRIANGLE_DOWN
                                                .at(8, MIDDLE, SIZE)
                                                .set("class", "point fail"))
                                        .add(Marker.TRIANGLE_UP
                                                .at(22, MIDDLE, SIZE)
                                                .set("class", "point fail")),
                                in.say("legend.fails")),
                        entry(shape(Marker.SQUARE, "point near"), in.say("legend.near"))));
    }

    private static Tag entry(Tag sign, String words) {
        Tag svg = Tag.of("svg")
                .set("viewBox", "0 0 30 14")
                .set("aria-hidden", "true")
                .add(sign);
        return Tag.of("span").add(svg).text(words);
    }

    private static Tag line(String styleClass) {
        return Tag.of("polyline", styleClass).set("points", "0,7 30,7");
    }

    private static Tag shape(Marker marker, String styleClass) {
        return marker.at(WIDTH / 2, MIDDLE, SIZE).set("class", styleClass);
    }
}
