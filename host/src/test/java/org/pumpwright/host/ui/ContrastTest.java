package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The colours of the style sheet. Contrast by WCAG 2.2, "contrast ratio" and "relative luminance"; 7 to 1 is its success criterion 1.4.6
 * for text, 3 to 1 its 1.4.11 for shapes that mean something.
 */
final class ContrastTest {
    private static final Pattern COLOUR = Pattern.compile("(-pw-[a-z-]+): (#[0-9a-f]{6})");

    private final Map<String, String> light = colours(".bench {");
    private final Map<String, String> dark = colours(".bench:dark {");

    @ParameterizedTest
    @CsvSource({
        "-pw-ink, -pw-ground, 7",
        "-pw-ink, -pw-plate, 7",
        "-pw-faint, -pw-ground, 7",
        "-pw-faint, -pw-plate, 7",
        "-pw-key-ink, -pw-key, 7",
        "-pw-next-ink, -pw-next, 7",
        "-pw-good, -pw-plate, 3",
        "-pw-good, -pw-ground, 3",
        "-pw-bad, -pw-plate, 3",
        "-pw-bad, -pw-ground, 3",
        "-pw-unknown, -pw-plate, 3",
        "-pw-focus, -pw-plate, 3",
        "-pw-focus, -pw-ground, 3"
    })
    void standsOutInBothLights(String upon, String ground, double least) {
        assertThat(contrast(colour(light, upon), colour(light, ground)))
                .as("light")
                .isGreaterThanOrEqualTo(least);
        assertThat(contrast(colour(dark, upon), colour(dark, ground)))
                .as("dark")
                .isGreaterThanOrEqualTo(least);
    }

    @ParameterizedTest
    @CsvSource({"#ffffff, #a10f00", "#ffffff, #5e0800", "#14181a, #56b4e9", "#14181a, #22c493", "#14181a, #f0e442"})
    void textOnAColourOfItsOwnStandsOut(String text, String ground) {
        assertThat(sheet()).contains(ground);
        assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(7);
    }

    /** Black on white is 21 to 1 by the standard's own words. */
    @ParameterizedTest
    @CsvSource({"#000000, #ffffff, 21.0", "#ffffff, #ffffff, 1.0"})
    void theScaleEndsWhereTheStandardSays(String one, String other, double ratio) {
        assertThat(contrast(one, other)).isEqualTo(ratio, within(1e-9));
    }

    /** The dark block names only what differs. */
    private String colour(Map<String, String> from, String name) {
        return from.getOrDefault(name, light.getOrDefault(name, "missing " + name));
    }

    private static Map<String, String> colours(String block) {
        String sheet = sheet();
        int begin = sheet.indexOf(block);
        Matcher found = COLOUR.matcher(sheet.substring(begin, sheet.indexOf('}', begin)));
        Map<String, String> colours = new HashMap<>();
        while (found.find()) {
            colours.put(found.group(1), found.group(2));
        }
        return colours;
    }

    private static String sheet() {
        try (InputStream in = BenchWindow.class.getResourceAsStream("bench.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
