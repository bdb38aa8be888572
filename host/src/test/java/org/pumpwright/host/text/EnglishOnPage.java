package org.pumpwright.host.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Finds the program's own English on a page that is in another language. */
public final class EnglishOnPage {
    private static final Pattern STYLE = Pattern.compile("<style>.*?</style>", Pattern.DOTALL);

    /** Shorter pieces may be words of the other language or part of a name. */
    private static final int SENTENCE = 9;

    private EnglishOnPage() {}

    /**
     * English pieces of texts that stand on the page, by their keys.
     *
     * @param html the page
     * @param stored what a record keeps in other words than the program's
     */
    public static Map<String, String> on(String html, Collection<String> stored) {
        String page = words(html);
        for (String sentence : longestFirst(stored)) {
            page = page.replace(sentence.strip(), "");
        }
        Map<String, String> found = new TreeMap<>();
        Texts english = Texts.in(Language.EN);
        for (String key : english.keys()) {
            String other = String.join(" ", Texts.in(Language.ES).template(key).pieces());
            for (String piece : english.template(key).pieces()) {
                String text = piece.strip();
                if (text.contains(" ") && text.length() >= SENTENCE && !other.contains(text) && page.contains(text)) {
                    found.put(key, text);
                }
            }
        }
        return found;
    }

    private static List<String> longestFirst(Collection<String> sentences) {
        return sentences.stream()
                .sorted(Comparator.comparingInt(sentence -> -sentence.length()))
                .toList();
    }

    private static String words(String html) {
        return STYLE.matcher(html)
                .replaceAll("")
                .replaceAll("<[^>]*>", "\n")
                .replace("&quot;", "\"")
                .replace("&#39;", "'");
    }
}
