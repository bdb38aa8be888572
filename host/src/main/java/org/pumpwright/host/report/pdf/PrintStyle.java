package org.pumpwright.host.report.pdf;

/**
 * A page's style sheet without what the document engine does not know: comments, blocks for browsers
 * ({@code @supports}) and for other media than print. Thread-safe.
 */
final class PrintStyle {
    private PrintStyle() {}

    static String of(String css) {
        StringBuilder out = new StringBuilder(css.length());
        String source = css.replaceAll("(?s)/\\*.*?\\*/", "");
        int at = 0;
        while (at < source.length()) {
            int block = nextForeign(source, at);
            if (block < 0) {
                return out.append(source, at, source.length()).toString();
            }
            out.append(source, at, block);
            at = endOfBlock(source, block);
        }
        return out.toString();
    }

    /** Where the next block begins that is not for print. */
    private static int nextForeign(String css, int from) {
        int at = css.indexOf('@', from);
        while (at >= 0 && !foreign(css, at)) {
            at = css.indexOf('@', at + 1);
        }
        return at;
    }

    private static boolean foreign(String css, int at) {
        return css.startsWith("@supports", at) || (css.startsWith("@media", at) && !css.startsWith("@media print", at));
    }

    /** Behind the brace that closes the block which begins here. */
    private static int endOfBlock(String css, int begin) {
        int depth = 0;
        for (int i = begin; i < css.length(); i++) {
            char c = css.charAt(i);
            if (c == '{') {
                depth++;
            } else if (c == '}' && --depth == 0) {
                return i + 1;
            }
        }
        return css.length();
    }
}
