package org.pumpwright.host.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/**
 * The texts of one language. A text is found by its key, such as {@code claim.decision}; {@code {}} stands where a value goes,
 * one for each in their order, or {@code {2}} where the second one goes. Thread-safe.
 */
public final class Texts {
    private static final String FILE = "texts.yaml";
    private static final Map<Language, Texts> ALL = load();

    private final Language language;
    private final Map<String, Template> byKey;
    private final Optional<Phrasebook> phrases;

    /** @param english the texts that stored sentences were made with; empty for English itself */
    private Texts(Language language, Map<String, Template> byKey, Optional<Texts> english) {
        this.language = language;
        this.byKey = Map.copyOf(byKey);
        phrases = english.map(other -> new Phrasebook(other, this));
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
        Template template = template(key);
        if (template.gaps() != values.length) {
            throw new IllegalArgumentException("text '%s' has %s gaps than the %d values given"
                    .formatted(key, template.gaps() < values.length ? "fewer" : "more", values.length));
        }
        return template.filled(values);
    }

    /** An English sentence of a record in this language; empty where it has no words for all of it. */
    Optional<String> translate(String english) {
        return phrases.isPresent() ? phrases.get().translate(english) : Optional.of(english);
    }

    /** The text with its gaps. */
    Template template(String key) {
        Template text = byKey.get(key);
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
        Texts english = read(root, Language.EN, Optional.empty());
        texts.put(Language.EN, english);
        for (Language language : Language.values()) {
            texts.computeIfAbsent(language, each -> read(root, each, Optional.of(english)));
        }
        return texts;
    }

    private static Texts read(Node root, Language language, Optional<Texts> english) {
        Map<String, Template> byKey = new HashMap<>();
        root.keys().forEach(key -> byKey.put(key, Template.of(root.at(key).text(language.code()))));
        return new Texts(language, byKey, english);
    }
}
