package org.pumpwright.host.report.pdf;

import java.awt.geom.Path2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the straight paths of a drawing: moves, lines, level and upright ones, and closings. Confined to one thread. */
final class PathWords {
    private static final Pattern WORD = Pattern.compile("[A-Za-z]|-?\\d*\\.?\\d+");

    private final Matcher words;
    private final Path2D.Double path = new Path2D.Double();
    private double x;
    private double y;

    private PathWords(String words) {
        this.words = WORD.matcher(words);
    }

    static Path2D parse(String words) {
        PathWords parser = new PathWords(words);
        while (parser.words.find()) {
            parser.step(parser.words.group().charAt(0));
        }
        return parser.path;
    }

    /** The corners of a polygon or a polyline. */
    static Path2D corners(String points, boolean closed) {
        String[] numbers = points.strip().split("[\\s,]+", -1);
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i + 1 < numbers.length; i += 2) {
            double x = Double.parseDouble(numbers[i]);
            double y = Double.parseDouble(numbers[i + 1]);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        if (closed && path.getCurrentPoint() != null) {
            path.closePath();
        }
        return path;
    }

    private void step(char command) {
        switch (command) {
            case 'M' -> move(number(), number());
            case 'm' -> move(x + number(), y + number());
            case 'L' -> line(number(), number());
            case 'l' -> line(x + number(), y + number());
            case 'H' -> line(number(), y);
            case 'h' -> line(x + number(), y);
            case 'V' -> line(x, number());
            case 'v' -> line(x, y + number());
            case 'Z', 'z' -> path.closePath();
            default -> throw new IllegalArgumentException("'" + command + "' is no step of a straight path");
        }
    }

    private void move(double toX, double toY) {
        path.moveTo(toX, toY);
        x = toX;
        y = toY;
    }

    private void line(double toX, double toY) {
        path.lineTo(toX, toY);
        x = toX;
        y = toY;
    }

    private double number() {
        if (!words.find()) {
            throw new IllegalArgumentException("a path ends within a step");
        }
        return Double.parseDouble(words.group());
    }
}
