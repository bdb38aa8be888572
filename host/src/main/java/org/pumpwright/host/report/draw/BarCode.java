package org.pumpwright.host.report.draw;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import java.util.Map;

/** Words as bars (Code 128, ISO/IEC 15417), for the scanners that read no square code. Thread-safe. */
public final class BarCode {
    /** Of white on either side, in widths of the thinnest bar. */
    private static final int QUIET_ZONE = 10;

    private static final int LONGEST = 80;
    private static final char FIRST = ' ';
    private static final char LAST = '~';

    private BarCode() {}

    /** Whether bars can stand for these words: 1 to 80 signs of plain ASCII. */
    public static boolean canHold(String words) {
        return !words.isEmpty() && words.length() <= LONGEST && words.chars().allMatch(c -> c >= FIRST && c <= LAST);
    }

    /**
     * The code, one unit for the thinnest bar, its quiet zone with it.
     *
     * @param words that it {@link #canHold}
     * @param height in the same units
     * @param spoken what it is, for those who cannot see it
     * @throws IllegalArgumentException if bars cannot stand for the words
     */
    public static Tag draw(String words, int height, String spoken) {
        if (!canHold(words)) {
            throw new IllegalArgumentException(
                    "'%s' can't be drawn as bars: 1 to %d signs of plain ASCII are needed".formatted(words, LONGEST));
        }
        BitMatrix bits = new Code128Writer()
                .encode(words, BarcodeFormat.CODE_128, 0, 1, Map.of(EncodeHintType.MARGIN, 2 * QUIET_ZONE));
        return drawing(bits, height, "bar-code", spoken);
    }

    /** The dark squares of a pattern; of a single line of them each is as high as the drawing. */
    static Tag drawing(BitMatrix bits, int height, String styleClass, String spoken) {
        int rowHeight = height / bits.getHeight();
        StringBuilder path = new StringBuilder(4096);
        for (int y = 0; y < bits.getHeight(); y++) {
            int x = 0;
            while (x < bits.getWidth()) {
                int end = x;
                while (end < bits.getWidth() && bits.get(end, y)) {
                    end++;
                }
                if (end > x) {
                    run(path, x, y * rowHeight, end - x, rowHeight);
                }
                x = end + 1;
            }
        }
        return Tag.of("svg", styleClass)
                .set("viewBox", "0 0 " + bits.getWidth() + " " + height)
                .set("shape-rendering", "crispEdges")
                .set("role", "img")
                .set("aria-label", spoken)
                .add(Tag.of("path").set("d", path.toString()));
    }

    /** One rectangle for a whole run: thin gaps between squares would show in print. */
    private static void run(StringBuilder path, int x, int y, int width, int height) {
        path.append('M')
                .append(x)
                .append(' ')
                .append(y)
                .append('h')
                .append(width)
                .append('v')
                .append(height);
        path.append("h-").append(width).append('z');
    }
}
