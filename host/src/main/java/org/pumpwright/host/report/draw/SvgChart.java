package org.pumpwright.host.report.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * A chart of two axes as inline SVG. What is drawn later lies on top. Colours and line styles are classes of the page's
 * style sheet. Confined to one thread.
 */
public final class SvgChart {
    private static final double LEFT = 40;
    private static final double RIGHT = 10;
    private static final double TOP = 20;
    private static final double BOTTOM = 34;
    /** A note further away than this gets a line to its point. */
    private static final double FAR = 18;

    private final double width;
    private final double height;
    private final Axis x;
    private final Axis y;
    private final List<Tag> drawn = new ArrayList<>();
    private final NotePlacer room;

    /** A place in the units of the axes. */
    public record Spot(double x, double y) {}

    /**
     * An empty chart.
     *
     * @param width of the drawing, in its own units; the page scales it
     * @param height of the drawing
     */
    public SvgChart(double width, double height, Axis x, Axis y) {
        this.width = width;
        this.height = height;
        this.x = x;
        this.y = y;
        this.room = new NotePlacer(LEFT, TOP, width - 1, height - BOTTOM);
    }

    /** Axes with their ticks and titles. */
    public SvgChart grid(String xTitle, String yTitle) {
        for (double tick : y.ticks()) {
            drawn.add(straight(left(), down(tick), right(), down(tick), "grid"));
            drawn.add(label(LEFT - 5, down(tick) + 3.5, y.label(tick), "end", "tick"));
        }
        for (double tick : x.ticks()) {
            drawn.add(straight(across(tick), bottom(), across(tick), bottom() + 4, "axis"));
            drawn.add(label(across(tick), bottom() + 15, x.label(tick), "middle", "tick"));
        }
        drawn.add(straight(left(), bottom(), right(), bottom(), "axis"));
        drawn.add(straight(left(), top(), left(), bottom(), "axis"));
        drawn.add(label((left() + right()) / 2, height - 5, xTitle, "middle", "title"));
        drawn.add(label(2, 11, yTitle, "start", "title"));
        return this;
    }

    /** A filled area with these corners. */
    public SvgChart area(List<Spot> corners, String styleClass) {
        drawn.add(Tag.of("polygon", styleClass).set("points", points(corners)));
        return keepClear(corners);
    }

    /** A line through these spots. */
    public SvgChart line(List<Spot> spots, String styleClass) {
        drawn.add(Tag.of("polyline", styleClass).set("points", points(spots)));
        return keepClear(spots);
    }

    private SvgChart keepClear(List<Spot> spots) {
        for (int i = 1; i < spots.size(); i++) {
            Spot a = spots.get(i - 1);
            Spot b = spots.get(i);
            room.avoidLine(across(a.x()), down(a.y()), across(b.x()), down(b.y()));
        }
        return this;
    }

    /** A bar of this half length in the units of the y axis, as far as the axis reaches. */
    public SvgChart errorBar(Spot spot, double half) {
        double cx = across(spot.x());
        double up = down(Math.min(y.to(), spot.y() + half));
        double low = down(Math.max(y.from(), spot.y() - half));
        drawn.add(straight(cx, up, cx, low, "error"));
        drawn.add(straight(cx - 3, up, cx + 3, up, "error"));
        drawn.add(straight(cx - 3, low, cx + 3, low, "error"));
        return this;
    }

    /** A point of this shape and half height. */
    public SvgChart marker(Spot spot, Marker marker, double size, String styleClass) {
        drawn.add(marker.at(across(spot.x()), down(spot.y()), size).set("class", styleClass));
        room.avoidPoint(across(spot.x()), down(spot.y()), size);
        return this;
    }

    /** Words beside a spot or at the end of a line from it, below or above it, where there is room; to be called when all else is drawn. */
    public SvgChart note(Spot spot, boolean below, String words) {
        double px = across(spot.x());
        double py = down(spot.y());
        NotePlacer.Place place = room.place(px, py, below, words);
        double nearX = place.nearestX(px);
        double nearY = place.nearestY(py);
        if (Math.hypot(nearX - px, nearY - py) > FAR) {
            drawn.add(straight(px, py, nearX, nearY, "leader"));
        }
        drawn.add(label(place.x(), place.y(), words, "start", "note"));
        return this;
    }

    /** The drawing, with words for those who cannot see it. */
    public Tag draw(String spoken) {
        return Tag.of("svg")
                .set("viewBox", "0 0 " + Math.round(width) + " " + Math.round(height))
                .set("role", "img")
                .set("aria-label", spoken)
                .add(drawn);
    }

    private static Tag label(double x, double y, String text, String anchor, String styleClass) {
        return Tag.of("text", styleClass)
                .set("x", x)
                .set("y", y)
                .set("text-anchor", anchor)
                .text(text);
    }

    private static Tag straight(double x1, double y1, double x2, double y2, String styleClass) {
        return Tag.of("line", styleClass)
                .set("x1", x1)
                .set("y1", y1)
                .set("x2", x2)
                .set("y2", y2);
    }

    private String points(List<Spot> spots) {
        List<String> places = spots.stream()
                .map(spot -> Tag.coordinate(across(spot.x())) + "," + Tag.coordinate(down(spot.y())))
                .toList();
        return String.join(" ", places);
    }

    private double across(double value) {
        return left() + x.share(value) * (right() - left());
    }

    private double down(double value) {
        return bottom() - y.share(value) * (bottom() - top());
    }

    private double left() {
        return LEFT;
    }

    private double right() {
        return width - RIGHT;
    }

    private double top() {
        return TOP;
    }

    private double bottom() {
        return height - BOTTOM;
    }
}
