package org.pumpwright.host.report.pdf;

/** A face of the DejaVu fonts that papers are set in. Thread-safe. */
enum Face {
    SANS("DejaVu Sans", "DejaVuSans.ttf", Face.REGULAR),
    SANS_BOLD("DejaVu Sans", "DejaVuSans-Bold.ttf", Face.BOLD),
    CONDENSED("DejaVu Sans Condensed", "DejaVuSansCondensed.ttf", Face.REGULAR),
    CONDENSED_BOLD("DejaVu Sans Condensed", "DejaVuSansCondensed-Bold.ttf", Face.BOLD),
    MONO("DejaVu Sans Mono", "DejaVuSansMono.ttf", Face.REGULAR),
    MONO_BOLD("DejaVu Sans Mono", "DejaVuSansMono-Bold.ttf", Face.BOLD);

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    private final String family;
    private final String file;
    private final int weight;

    Face(String family, String file, int weight) {
        this.family = family;
        this.file = file;
        this.weight = weight;
    }

    String family() {
        return family;
    }

    /** Where it lies on the class path. */
    String resource() {
        return "/net/sf/jasperreports/fonts/dejavu/" + file;
    }

    /** As style sheets give it, 400 or 700. */
    int weight() {
        return weight;
    }
}
