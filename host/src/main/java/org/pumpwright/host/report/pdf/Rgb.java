package org.pumpwright.host.report.pdf;

import java.util.Optional;

/** A colour of a style sheet, each part from 0 to 255. Thread-safe. */
record Rgb(int red, int green, int blue) {
    private static final int HEX = 16;
    private static final int SHORT = 4;
    private static final int LONG = 7;

    /** Empty for none. */
    static Optional<Rgb> of(String words) {
        String colour = words.strip();
        if (colour.equals("none") || colour.equals("transparent")) {
            return Optional.empty();
        }
        if (colour.equals("black") || colour.equals("currentColor")) {
            return Optional.of(new Rgb(0, 0, 0));
        }
        if (colour.equals("white")) {
            return Optional.of(new Rgb(0xFF, 0xFF, 0xFF));
        }
        if (colour.matches("#[0-9a-fA-F]{3}")) {
            return Optional.of(hex("" + colour.charAt(1) + colour.charAt(1) + colour.charAt(2) + colour.charAt(2)
                    + colour.charAt(SHORT - 1) + colour.charAt(SHORT - 1)));
        }
        if (colour.length() == LONG && colour.matches("#[0-9a-fA-F]{6}")) {
            return Optional.of(hex(colour.substring(1)));
        }
        throw new IllegalArgumentException(
                "'" + colour + "' is no colour of a drawing: #rgb, #rrggbb, black, white or none");
    }

    private static Rgb hex(String digits) {
        int all = Integer.parseInt(digits, HEX);
        return new Rgb(all >> 16, all >> 8 & 0xFF, all & 0xFF);
    }
}
