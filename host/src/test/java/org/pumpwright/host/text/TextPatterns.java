package org.pumpwright.host.text;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Texts with their gaps, for tests that hold what is shown against the file of texts. */
public final class TextPatterns {
    /** Stands in no text. */
    private static final String GAP = "\u0001";

    private TextPatterns() {}

    /** The keys of every text in this language that may have come out as this. */
    public static List<String> keysOf(Language language, String shown) {
        return Texts.in(language).keys().stream()
                .filter(key -> matches(language, key, shown))
                .toList();
    }

    /** Whether the text with this key may have come out as this. */
    public static boolean matches(Language language, String key, String shown) {
        Template template = Texts.in(language).template(key);
        Object[] gaps = new Object[template.gaps()];
        Arrays.fill(gaps, GAP);
        String expression = Arrays.stream(template.filled(gaps).split(GAP, -1))
                .map(Pattern::quote)
                .collect(Collectors.joining(".+"));
        return Pattern.compile(expression, Pattern.DOTALL).matcher(shown).matches();
    }
}
