package org.pumpwright.host.report.draw;

/** The shapes of a chart's points, told apart without colour. Thread-safe. */
public enum Marker {
    DISC,
    DIAMOND,
    SQUARE,
    TRIANGLE_DOWN,
    TRIANGLE_UP;

    /** The shape around a place, r being about half its height; lengths in the drawing's units. */
    public Tag at(double x, double y, double r) {
        return switch (this) {
            case DISC -> Tag.of("circle").set("cx", x).set("cy", y).set("r", r);
            case DIAMOND -> path(x, y, 0, -1.3 * r, 1.3 * r, 0, 0, 1.3 * r, -1.3 * r, 0);
            case SQUARE -> path(x, y, -r, -r, r, -r, r, r, -r, r);
            case TRIANGLE_DOWN -> path(x, y, -1.2 * r, -r, 1.2 * r, -r, 0, 1.2 * r);
            case TRIANGLE_UP -> path(x, y, -1.2 * r, r, 1.2 * r, r, 0, -1.2 * r);
        };
    }

    private static Tag path(double x, double y, double... offsets) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < offsets.length; i += 2) {
            points.append(i == 0 ? "" : " ")
                    .append(Tag.coordinate(x + offsets[i]))
                    .append(',')
                    .append(Tag.coordinate(y + offsets[i + 1]));
        }
        return Tag.of("polygon").set("points", points.toString());
    }
}
