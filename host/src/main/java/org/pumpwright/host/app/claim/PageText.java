package org.pumpwright.host.app.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** The lines of a claim's text page: titles, facts, sections. Confined to one thread. */
final class PageText {
    private static final Texts TEXTS = Texts.in(Language.EN);

    private final StringBuilder page = new StringBuilder();

    /** The text with this key. */
    static String say(String key) {
        return TEXTS.say(key);
    }

    /** The sentence with its values. */
    static String say(Sentence sentence) {
        return TEXTS.say(sentence.key(), sentence.values().toArray());
    }

    void line(String line) {
        page.append(line).append('\n');
    }

    void title(String title) {
        page.append('\n').append(title).append('\n');
    }

    void fact(String what, String value) {
        page.append("  %-13s%s\n".formatted(what, value.isEmpty() ? "not given" : value));
    }

    <T> void sourced(String what, Optional<Sourced<T>> value) {
        fact(
                what,
                value.map(known -> "%s (%s)"
                                .formatted(
                                        known.value(),
                                        say("claim.source." + known.source().word())))
                        .orElse(""));
    }

    void section(String title, List<String> lines) {
        title(title);
        if (lines.isEmpty()) {
            page.append("  none\n");
        }
        lines.forEach(line -> page.append("  ").append(line).append('\n'));
    }

    /** The whole page. */
    String text() {
        return page.toString();
    }
}
