package org.pumpwright.host.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/**
 * The texts of one language. A text is found by its key, such as {@code claim.decision}; {@code {}} stands where a value goes,
 * one for each in their order. Thread-safe.
 */
public final class Texts {
    private static final String FILE = "texts.yaml";
    private static final String GAP = "{}";
    private static final Map<Language, Texts> ALL = load();

    private final Language language;
    private final Map<String, String> byKey;

    private Texts(Language language, Map<String, String> byKey) {
        this.language = language;
        this.byKey = Map.copyOf(byKey);
    }

    /** The texts in this language. */
    public static Texts in(Language language) {
        Texts texts = ALL.get(language);
        if (texts == null) {
            throw new IllegalArgumentException("there are no texts in " + language);
        }
        return texts;
    }

    /** Which language it is. */
    public Language language() {
        return language;
    }

    /** Every key, in alphabetical order. */
    public SortedSet<String> keys() {
        return new TreeSet<>(byKey.keySet());
    }

    /**
     * The text with this key.
     *
     * @param values what goes where the gaps are
     * @throws IllegalArgumentException when there is no such text, or it has another number of gaps: a fault of the program
     */
    public String say(String key, Object... values) {
        String pattern = pattern(key);
        StringBuilder said = new StringBuilder(pattern.length() + 32);
        int from = 0;
        for (Object value : values) {
            int gap = pattern.indexOf(GAP, from);
            if (gap < 0) {
                throw new IllegalArgumentException(
                        "text '%s' has fewer gaps than the %d values given".formatted(key, values.length));
            }
            said.append(pattern, from, gap).append(value);
            from = gap + GAP.length();
        }
        if (pattern.indexOf(GAP, from) >= 0) {
            throw new IllegalArgumentException(
                    "text '%s' has more gaps than the %d values given".formatted(key, values.length));
        }
        return said.append(pattern, from, pattern.length()).toString();
    }

    /** The text as it is in the file, with its gaps. */
    String pattern(String key) {
        String text = byKey.get(key);
        if (text == null) {
            throw new IllegalArgumentException("there is no text '%s' in %s".formatted(key, language));
        }
        return text;
    }

    private static Map<Language, Texts> load() {
        try (InputStream in = Texts.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + FILE + " is missing");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return DataFile.parse(FILE, text, DataSchema.beside(Texts.class, "texts.json"), Texts::read);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (DataFileException e) {
            throw new IllegalStateException("the program is not whole: " + e.getMessage(), e);
        }
    }

    private static Map<Language, Texts> read(Node root) {
        Map<Language, Texts> texts = new EnumMap<>(Language.class);
        for (Language language : Language.values()) {
            Map<String, String> byKey = new HashMap<>();
            root.keys().forEach(key -> byKey.put(key, root.at(key).text(language.code())));
            texts.put(language, new Texts(language, byKey));
        }
        return texts;
    }
}
