package org.pumpwright.host.claim.statistics;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** Draws docs/metrology/returns.svg: the failure rate of one simulated fleet, its modes apart and pooled. */
final class PoolingPlot {
    private static final int LEFT = 60;
    private static final int TOP = 40;
    private static final int WIDTH = 420;
    private static final int HEIGHT = 240;
    private static final double MOST_HOURS = 320;
    private static final double MOST_RATE = 0.3;

    private final StringBuilder svg = new StringBuilder();

    private PoolingPlot() {}

    /** Argument: the file to write. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(Path.of(arguments[0]), new PoolingPlot().drawing(1));
    }

    private String drawing(long seed) {
        List<ModeLifeTest.Served> served = ModeLifeTest.pumps(seed);
        WeibullFit wear = ModeLifeTest.fit(served, List.of("worn"));
        WeibullFit pooled = ModeLifeTest.fit(served, List.of("worn", "early"));
        put(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 500 400\" font-family=\"sans-serif\" font-size=\"12\">");
        put("<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>");
        put(
                "<text x=\"%d\" y=\"20\" font-weight=\"bold\">Failures in 100 hours, %% of the units still serving</text>",
                LEFT);
        for (int percent = 0; percent <= 30; percent += 10) {
            double y = y(percent / 100.0);
            put("<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"#dddddd\"/>", LEFT, y, LEFT + WIDTH, y);
            put("<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%d %%</text>", LEFT - 6, y + 4, percent);
        }
        for (int hours = 0; hours <= MOST_HOURS; hours += 80) {
            put("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d h</text>", x(hours), TOP + HEIGHT + 16, hours);
        }
        line(0, "wear as it is: beta 2.2, eta 520 h", "#888888", "2 4", hours -> rate(2.2, 520, hours));
        line(1, "wear found, other failures suspended: " + words(wear), "#1a7f37", "", of(wear));
        line(2, "all failures pooled: " + words(pooled), "#b42318", "7 4", of(pooled));
        put("</svg>");
        return svg.toString();
    }

    private static DoubleUnaryOperator of(WeibullFit fit) {
        return hours -> rate(fit.beta(), fit.eta(), hours);
    }

    private static double rate(double beta, double eta, double hours) {
        return 100 * beta / eta * Math.pow(hours / eta, beta - 1);
    }

    private static String words(WeibullFit fit) {
        return String.format(
                Locale.ROOT,
                "beta %.2f (%.2f to %.2f)",
                fit.beta(),
                fit.betaInterval().low(),
                fit.betaInterval().high());
    }

    private void line(int number, String words, String colour, String dashes, DoubleUnaryOperator rate) {
        StringBuilder points = new StringBuilder();
        for (double hours = 2; hours <= MOST_HOURS; hours += 6) {
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(hours), y(rate.applyAsDouble(hours))));
        }
        put(
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                points.toString().strip(), colour, dashes);
        int y = TOP + HEIGHT + 44 + 18 * number;
        put(
                "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                LEFT, y - 4, LEFT + 34, y - 4, colour, dashes);
        put("<text x=\"%d\" y=\"%d\">%s</text>", LEFT + 42, y, words);
    }

    private static double x(double hours) {
        return LEFT + WIDTH * hours / MOST_HOURS;
    }

    private static double y(double rate) {
        return TOP + HEIGHT * (1 - rate / MOST_RATE);
    }

    private void put(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
