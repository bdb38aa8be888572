package org.pumpwright.host.report.draw;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for words beside the points of a chart, clear of lines, points and each other as far as there is room. Lengths
 * are those of the drawing. Confined to one thread.
 */
final class NotePlacer {
    /** Mean width of a bold letter of the chart's notes. */
    private static final double LETTER = 7.6;

    private static final double ASCENT = 9;
    private static final double DESCENT = 2.5;
    private static final double ASIDE = 8;
    private static final double[] STEPS = {13, 20, 28, 38, 50};
    private static final double LINE_STEP = 3;

    private final double left;
    private final double top;
    private final double right;
    private final double bottom;
    private final List<Box> drawn = new ArrayList<>();
    private final List<Box> words = new ArrayList<>();

    /** A rectangle, y growing downwards. */
    record Box(double x1, double y1, double x2, double y2) {
        boolean meets(Box other) {
            return x1 < other.x2 && other.x1 < x2 && y1 < other.y2 && other.y1 < y2;
        }
    }

    /** Where the words begin, their baseline, and how long they are. */
    record Place(double x, double y, double width) {
        /** The spot of the words that is nearest to a point. */
        double nearestX(double pointX) {
            return Math.max(x, Math.min(x + width, pointX));
        }

        double nearestY(double pointY) {
            return Math.max(y - ASCENT, Math.min(y + DESCENT, pointY));
        }
    }

    NotePlacer(double left, double top, double right, double bottom) {
        this.left = left;
        this.top = top;
        this.right = right;
        this.bottom = bottom;
    }

    void avoidLine(double x1, double y1, double x2, double y2) {
        int pieces = (int) Math.ceil(Math.hypot(x2 - x1, y2 - y1) / LINE_STEP);
        for (int i = 0; i <= pieces; i++) {
            double share = pieces == 0 ? 0 : (double) i / pieces;
            avoidPoint(x1 + share * (x2 - x1), y1 + share * (y2 - y1), 1);
        }
    }

    void avoidPoint(double x, double y, double r) {
        drawn.add(new Box(x - r, y - r, x + r, y + r));
    }

    /** The best place for words about a point, below it where that is as good as above; taken from then on. */
    Place place(double x, double y, boolean below, String note) {
        double width = note.length() * LETTER;
        Place best = new Place(x, y, width);
        double least = Double.MAX_VALUE;
        for (double step : STEPS) {
            for (double begin : new double[] {x + ASIDE, x - width / 2, x - ASIDE - width}) {
                for (boolean down : new boolean[] {below, !below}) {
                    Place place = new Place(begin, down ? y + step : y - step + ASCENT / 2, width);
                    double cost = cost(box(place)) + step + (down == below ? 0 : 15);
                    if (cost < least) {
                        least = cost;
                        best = place;
                    }
                }
            }
        }
        words.add(box(best));
        return best;
    }

    private static Box box(Place place) {
        return new Box(place.x(), place.y() - ASCENT, place.x() + place.width(), place.y() + DESCENT);
    }

    private double cost(Box box) {
        boolean outside = box.x1() < left || box.x2() > right || box.y1() < top || box.y2() > bottom;
        return (outside ? 1000 : 0)
                + 300.0 * words.stream().filter(box::meets).count()
                + 10.0 * drawn.stream().filter(box::meets).count();
    }
}
