package org.pumpwright.host.report;

import java.util.Locale;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.report.draw.Tag;

/**
 * The sign of a verdict: one outline each, so that it is known without colour and without reading. Colours, in the style
 * sheet, are those of Okabe and Ito, told apart by most people with a colour deficiency. Thread-safe.
 */
public final class VerdictMark {
    private VerdictMark() {}

    /** The style class that carries the verdict's colour. */
    public static String styleClass(Verdict verdict) {
        return "is-" + word(verdict).replace('_', '-');
    }

    /** The verdict as it stands in the keys of texts. */
    static String word(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    /** The sign; the style sheet gives it its colour. */
    public static Tag draw(Verdict verdict) {
        Tag svg = Tag.of("svg", "mark").set("viewBox", "0 0 100 100").set("aria-hidden", "true");
        return switch (verdict) {
            case PASS ->
                svg.add(Tag.of("circle", "sign").set("cx", 50).set("cy", 50).set("r", 46))
                        .add(stroke("26,52 43,69 75,33"));
            case FAIL ->
                svg.add(sign("31,4 69,4 96,31 96,69 69,96 31,96 4,69 4,31"))
                        .add(stroke("32,32 68,68"))
                        .add(stroke("68,32 32,68"));
            case INCONCLUSIVE ->
                svg.add(sign("50,2 98,50 50,98 2,50"))
                        .add(Tag.of("text", "sign-text")
                                .set("x", 50)
                                .set("y", 71)
                                .set("text-anchor", "middle")
                                .text("?"));
            case INVALID ->
                svg.add(Tag.of("rect", "sign-open")
                                .set("x", 7)
                                .set("y", 7)
                                .set("width", 86)
                                .set("height", 86))
                        .add(Tag.of("polyline", "sign-bar").set("points", "10,90 90,10"))
                        .add(Tag.of("polyline", "sign-bar").set("points", "10,10 90,90"));
            case NOT_TESTED ->
                svg.add(Tag.of("circle", "sign-open")
                                .set("cx", 50)
                                .set("cy", 50)
                                .set("r", 43))
                        .add(Tag.of("polyline", "sign-bar").set("points", "30,50 70,50"));
        };
    }

    private static Tag sign(String points) {
        return Tag.of("polygon", "sign").set("points", points);
    }

    private static Tag stroke(String points) {
        return Tag.of("polyline", "sign-stroke").set("points", points);
    }
}
