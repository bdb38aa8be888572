package org.pumpwright.host.ui.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Advice meant for the command line, in the messages that the window shares with it: sentences that name an option such as
 * {@code --by NAME}, or the command itself. A person at the window can't follow it. Thread-safe.
 *
 * @param left the message without it; empty when nothing else was said
 * @param command first word after the command's name, such as {@code claim}, where one was named
 * @param was whether there was any
 */
record CommandAdvice(String left, Optional<String> command, boolean was) {
    private static final Pattern NAMED = Pattern.compile("'?(?:\\bpumpwright ([a-z]+)|(?<![\\w-])--[a-z])");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu}|')");
    private static final Pattern LOOSE_END = Pattern.compile("(?:[\\s,;:(]|\\b(?:and|or|then|with)$)+$");

    /** What stands before the last colon, semicolon or bracket of an advice says something of its own only with so many words. */
    private static final int FEWEST_WORDS = 4;

    /** Parts a message. */
    static CommandAdvice in(String message) {
        List<String> left = new ArrayList<>();
        Optional<String> command = Optional.empty();
        boolean was = false;
        for (String sentence : SENTENCE.split(message, -1)) {
            Matcher named = NAMED.matcher(sentence);
            if (!named.find()) {
                left.add(sentence);
                continue;
            }
            was = true;
            command = command.or(() -> Optional.ofNullable(named.group(1)));
            before(sentence.substring(0, named.start())).ifPresent(left::add);
        }
        return new CommandAdvice(String.join(" ", left), command, was);
    }

    /** What a sentence says before it comes to the command: "nobody has confirmed it: --by NAME" says something. */
    private static Optional<String> before(String begun) {
        int end = Math.max(begun.lastIndexOf(": "), Math.max(begun.lastIndexOf("; "), begun.lastIndexOf(" (")));
        String kept = end < 0 ? "" : begun.substring(0, end);
        Matcher loose = LOOSE_END.matcher(kept);
        String whole = loose.find() ? kept.substring(0, loose.start()) : kept;
        return whole.split("\\s+", -1).length < FEWEST_WORDS ? Optional.empty() : Optional.of(whole + ".");
    }
}
