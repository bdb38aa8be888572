package org.pumpwright.benchmarks.judgement;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.grade.Verdict;

/**
 * Draws how often units are passed and failed over their true distance from the limit: one panel for each kind of physics.
 * Thread-safe.
 */
final class OperatingPlot {
    private static final int WIDTH = 460;
    private static final int HEIGHT = 380;
    private static final int LEFT = 56;
    private static final int TOP = 44;
    private static final int PLOT_WIDTH = 380;
    private static final int PLOT_HEIGHT = 230;

    private OperatingPlot() {}

    /**
     * One panel.
     *
     * @param title over it
     * @param points by distance
     */
    record Panel(String title, List<OperatingPoint> points) {}

    /**
     * Shares of units at one distance.
     *
     * @param distance outside the limit in u
     * @param pass of the program
     * @param fail of the program
     * @param best passed by the best possible judge
     * @param flat passed by the flat band
     */
    record OperatingPoint(double distance, double pass, double fail, double best, double flat) {
        static OperatingPoint of(BorderlinePart.Step step, double best, double flat) {
            return new OperatingPoint(
                    step.distance(),
                    step.share(Verdict.PASS).value(),
                    step.share(Verdict.FAIL).value(),
                    best,
                    flat);
        }
    }

    private record Line(String words, String colour, String dashes, ToDoubleFunction<OperatingPoint> of) {}

    private static final List<Line> LINES = List.of(
            new Line("Pumpwright: PASS", "#1a7f37", "", OperatingPoint::pass),
            new Line("Pumpwright: INCONCLUSIVE", "#9a6700", "2 3", p -> 1 - p.pass() - p.fail()),
            new Line("Pumpwright: FAIL", "#b42318", "", OperatingPoint::fail),
            new Line("best possible judge: passes", "#1f4e9c", "7 4", OperatingPoint::best),
            new Line("flat band on flow at full duty: passes", "#666666", "2 5", OperatingPoint::flat));

    static String svg(List<Panel> panels) {
        StringBuilder svg = new StringBuilder();
        put(
                svg,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"12\">",
                WIDTH * panels.size(),
                HEIGHT);
        put(svg, "<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>");
        for (int i = 0; i < panels.size(); i++) {
            put(svg, "<g transform=\"translate(%d 0)\">", i * WIDTH);
            draw(svg, panels.get(i));
            put(svg, "</g>");
        }
        put(svg, "</svg>");
        return svg.toString();
    }

    private static void draw(StringBuilder svg, Panel panel) {
        put(svg, "<text x=\"%d\" y=\"20\" font-weight=\"bold\">%s</text>", LEFT, panel.title());
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = y(percent / 100.0);
            put(
                    svg,
                    "<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"#dddddd\"/>",
                    LEFT,
                    y,
                    LEFT + PLOT_WIDTH,
                    y);
            put(svg, "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%d %%</text>", LEFT - 6, y + 4, percent);
        }
        for (int u = -3; u <= 3; u++) {
            put(svg, "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%+d u</text>", x(u), TOP + PLOT_HEIGHT + 16, u);
        }
        put(
                svg,
                "<line x1=\"%.1f\" y1=\"%d\" x2=\"%.1f\" y2=\"%d\" stroke=\"#888888\"/>",
                x(0),
                TOP,
                x(0),
                TOP + PLOT_HEIGHT);
        put(
                svg,
                "<text x=\"%d\" y=\"36\">inside</text><text x=\"%d\" y=\"36\" text-anchor=\"end\">outside</text>",
                LEFT,
                LEFT + PLOT_WIDTH);
        for (int i = 0; i < LINES.size(); i++) {
            draw(svg, panel, LINES.get(i), i);
        }
    }

    private static void draw(StringBuilder svg, Panel panel, Line line, int number) {
        StringBuilder points = new StringBuilder();
        for (OperatingPoint point : panel.points()) {
            points.append(String.format(
                    Locale.ROOT, "%.1f,%.1f ", x(point.distance()), y(line.of().applyAsDouble(point))));
        }
        put(
                svg,
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                points.toString().strip(),
                line.colour(),
                line.dashes());
        int y = TOP + PLOT_HEIGHT + 36 + 14 * number;
        put(
                svg,
                "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                LEFT,
                y - 4,
                LEFT + 34,
                y - 4,
                line.colour(),
                line.dashes());
        put(svg, "<text x=\"%d\" y=\"%d\">%s</text>", LEFT + 42, y, line.words());
    }

    private static double x(double distance) {
        return LEFT + PLOT_WIDTH * (distance + 3) / 6;
    }

    private static double y(double share) {
        return TOP + PLOT_HEIGHT * (1 - share);
    }

    private static void put(StringBuilder svg, String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
