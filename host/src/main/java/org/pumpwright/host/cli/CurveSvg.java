package org.pumpwright.host.cli;

import java.util.List;
import java.util.Locale;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.UnitSystem;

/** A healthy curve as a picture: a panel for each quantity, with the band, the mean and the points. Thread-safe. */
final class CurveSvg {
    private static final int WIDTH = 800;
    private static final int PANEL = 300;
    private static final int LEFT = 80;
    private static final int RIGHT = 40;
    private static final int TOP = 60;
    private static final int GAP = 70;
    private static final int STEPS = 120;
    private static final int Y_TICKS = 5;
    private static final int X_TICKS = 6;

    /** Blue and orange of M. Okabe and K. Ito's palette, which colour-blind eyes tell apart. */
    private static final String BAND = "#56B4E9";

    private static final String MEAN = "#0072B2";
    private static final String POINT = "#D55E00";

    private final StringBuilder svg = new StringBuilder();

    private CurveSvg() {}

    static String of(HealthyCurve curve, UnitSystem units) {
        List<CurveSeries> all = CurveSeries.of(curve, units);
        CurveSvg picture = new CurveSvg();
        int height = TOP + all.size() * (PANEL + GAP);
        picture.add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\""
                        + " font-family=\"sans-serif\" font-size=\"14\">",
                WIDTH, height, WIDTH, height);
        picture.add("<rect width=\"%d\" height=\"%d\" fill=\"white\"/>", WIDTH, height);
        picture.text(LEFT, 24, "start", curve.label() + ": " + curve.title());
        picture.text(LEFT, 44, "start", note(curve));
        for (int i = 0; i < all.size(); i++) {
            picture.panel(all.get(i), TOP + 20 + i * (PANEL + GAP));
        }
        picture.add("</svg>");
        return picture.svg.toString();
    }

    private static String note(HealthyCurve curve) {
        String standing = curve.provisional() ? ", advice only" : "";
        String origin = curve.simulated() ? " simulated units" : " known-good units";
        return String.format(
                Locale.ROOT,
                "%d%s, mean \u00b1 %.2f s%s; effective volts",
                curve.units(),
                origin,
                curve.toleranceFactor(),
                standing);
    }

    private void panel(CurveSeries series, int top) {
        NiceScale y = NiceScale.toCover(series.largest(), Y_TICKS);
        Panel panel = new Panel(series, y.end(), top);
        grid(panel, y);
        StringBuilder band = new StringBuilder();
        StringBuilder mean = new StringBuilder();
        for (int i = 0; i <= STEPS; i++) {
            double volts = panel.volts((double) i / STEPS);
            band.append(panel.place(volts, series.band().apply(volts).high())).append(' ');
            mean.append(panel.place(volts, series.band().apply(volts).centre())).append(' ');
        }
        for (int i = STEPS; i >= 0; i--) {
            double volts = panel.volts((double) i / STEPS);
            band.append(panel.place(
                            volts, Math.max(0, series.band().apply(volts).low())))
                    .append(' ');
        }
        add(
                "<polygon points=\"%s\" fill=\"%s\" fill-opacity=\"0.35\"/>",
                band.toString().strip(), BAND);
        add(
                "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/>",
                mean.toString().strip(), MEAN);
        for (double volts : series.pointVolts()) {
            double centre = series.band().apply(volts).centre();
            add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>", panel.x(volts), panel.y(centre), POINT);
        }
    }

    private void grid(Panel panel, NiceScale y) {
        for (int tick = 0; tick <= y.steps(); tick++) {
            double at = panel.y(y.tick(tick));
            add("<line x1=\"%d\" y1=\"%.1f\" x2=\"%d\" y2=\"%.1f\" stroke=\"#ccc\"/>", LEFT, at, WIDTH - RIGHT, at);
            text(LEFT - 8, at + 5, "end", y.label(tick));
        }
        for (int i = 0; i < X_TICKS; i++) {
            double volts = panel.volts((double) i / (X_TICKS - 1));
            text(panel.x(volts), panel.top() + PANEL + 20, "middle", String.format(Locale.ROOT, "%.1f V", volts));
        }
        text(LEFT, panel.top() - 8, "start", panel.series().name());
    }

    /** Where the values of one quantity lie in the picture. */
    private record Panel(CurveSeries series, double largest, int top) {
        double volts(double share) {
            return series.fromVolts() + share * (series.toVolts() - series.fromVolts());
        }

        double x(double volts) {
            double share = (volts - series.fromVolts()) / (series.toVolts() - series.fromVolts());
            return LEFT + share * (WIDTH - LEFT - RIGHT);
        }

        double y(double value) {
            return top + PANEL * (1 - value / largest);
        }

        String place(double volts, double value) {
            return String.format(Locale.ROOT, "%.1f,%.1f", x(volts), y(value));
        }
    }

    private void text(double x, double y, String anchor, String words) {
        add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, escaped(words));
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
