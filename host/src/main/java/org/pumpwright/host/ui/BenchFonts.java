package org.pumpwright.host.ui;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.List;
import javafx.scene.text.Font;

/** The fonts and the style sheet that the window brings along, so that it looks the same on every machine. JavaFX thread only. */
final class BenchFonts {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/inter/Inter-";
    private static final List<String> CUTS = List.of("Regular", "SemiBold", "Bold");

    private BenchFonts() {}

    static void load() {
        for (String cut : CUTS) {
            try (InputStream in = BenchFonts.class.getResourceAsStream(FOLDER + cut + ".otf")) {
                if (in == null) {
                    throw new IllegalStateException("the program is not whole: font " + cut + " is missing");
                }
                Font.loadFont(in, 18);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    static String styleSheet() {
        URL sheet = BenchFonts.class.getResource("bench.css");
        if (sheet == null) {
            throw new IllegalStateException("the program is not whole: bench.css is missing");
        }
        return sheet.toExternalForm();
    }
}
