package org.pumpwright.host.report.pdf;

import java.util.Locale;

/** What a paper is printed on. Thread-safe. */
public enum Sheet {
    /** US Letter, 8.5 in by 11 in. */
    LETTER(215.9, 279.4, 10),
    /** ISO 216 A4. */
    A4(210, 297, 10),
    /** A label that is tied or glued on. */
    LABEL(90, 50, 0);

    private static final String FOOT =
            "font: 6.5pt 'DejaVu Sans'; color: #333; vertical-align: middle; white-space: nowrap;";

    /** What fits on Letter and A4 alike, with a margin for the punch. */
    private static final double NARROW_MM = 186;

    private final double widthMm;
    private final double heightMm;
    private final double marginMm;

    Sheet(double widthMm, double heightMm, double marginMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.marginMm = marginMm;
    }

    /** In millimetres, upright. */
    public double widthMm() {
        return widthMm;
    }

    /** In millimetres, upright. */
    public double heightMm() {
        return heightMm;
    }

    /** The style class that a page bears when it is laid out for this sheet. */
    String styleClass() {
        return "on-" + name().toLowerCase(Locale.ROOT);
    }

    /**
     * The rules that give a page this size, and that name the paper and count its sheets at the foot.
     *
     * @param foot what stands at the foot of every sheet; blank where the page has feet of its own
     * @param narrow whether the page is set {@link #NARROW_MM} wide, so that its feet stand below its edges
     */
    String pageRule(String foot, boolean narrow) {
        String feet =
                foot.isBlank() || this == LABEL ? "" : """
                @bottom-left { content: "%s"; %s }
                @bottom-right { content: counter(page) " / " counter(pages); %s text-align: right; }
                """.formatted(foot.replaceAll("[\"\\\\<>&]", " "), FOOT, FOOT);
        double sideMm = narrow && this != LABEL ? (widthMm - NARROW_MM) / 2 : marginMm;
        return String.format(
                Locale.ROOT,
                "@page { size: %.1fmm %.1fmm; margin: %.1fmm %.2fmm; %s}",
                widthMm,
                heightMm,
                marginMm,
                sideMm,
                feet);
    }
}
