package org.pumpwright.host.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Turns sentences that a record keeps in English into another language. The texts whose keys begin with {@code phrase.} are
 * read backwards: an English template that fits a sentence gives the gaps, and these go into the template of the other
 * language, each translated where it is itself a phrase. Of several that fit, the one with most words of its own is taken.
 * A sentence made of phrases is taken apart where such sentences are joined. Thread-safe.
 */
final class Phrasebook {
    private static final String PREFIX = "phrase.";

    /** Where sentences are joined, the widest joint first. */
    private static final List<String> JOINTS = List.of(". ", "; ", ": ", ", ");

    /** A unit, a value with or without one, a range or a day in figures: the same in every language. */
    private static final String UNIT = "%|[VAmKCgL]|m?s|min|psi|[kh]Pa|Hz|m?ohm|m?Ω|degC|°C|kg/m3|(gal|L)/min";

    private static final Pattern FIGURE = Pattern.compile("[+-]?\\d[\\d.,:/-]*( ?(" + UNIT + "))?|" + UNIT);

    private final Map<String, String> whole = new HashMap<>();
    private final List<Pair> withGaps = new ArrayList<>();

    /** A template of the English and its counterpart. */
    private record Pair(Template english, Template other) {}

    /**
     * @param english the texts that the sentences were made with
     * @param other those of the language to turn them into
     */
    Phrasebook(Texts english, Texts other) {
        for (String key : english.keys()) {
            if (key.startsWith(PREFIX)) {
                add(english.template(key), other.template(key));
            }
        }
        withGaps.sort(Comparator.comparingInt(pair -> -pair.english.literal()));
    }

    private void add(Template english, Template other) {
        if (english.gaps() == 0) {
            whole.put(english.filled(), other.filled());
        } else {
            withGaps.add(new Pair(english, other));
        }
    }

    /** The sentence in the other language; empty where a part of it is in no template. */
    Optional<String> translate(String english) {
        return new Reading().read(english);
    }

    /** The reading of one sentence. What was found of its parts is kept, for they are met again and again. */
    private final class Reading {
        private final Map<String, Optional<String>> known = new HashMap<>();

        Optional<String> read(String english) {
            Optional<String> before = known.get(english);
            if (before != null) {
                return before;
            }
            known.put(english, Optional.empty());
            Optional<String> found = find(english);
            known.put(english, found);
            return found;
        }

        private Optional<String> find(String english) {
            if (english.isBlank() || FIGURE.matcher(english).matches()) {
                return Optional.of(english);
            }
            return Optional.ofNullable(whole.get(english))
                    .or(() -> withoutStop(english))
                    .or(() -> byTemplate(english))
                    .or(() -> inParts(english))
                    .or(() -> capital(english));
        }

        private Optional<String> withoutStop(String english) {
            return english.endsWith(".")
                    ? read(english.substring(0, english.length() - 1)).map(found -> found + ".")
                    : Optional.empty();
        }

        private Optional<String> capital(String english) {
            char first = english.charAt(0);
            return Character.isUpperCase(first)
                    ? read(Character.toLowerCase(first) + english.substring(1))
                            .map(found -> Character.toUpperCase(found.charAt(0)) + found.substring(1))
                    : Optional.empty();
        }

        private Optional<String> inParts(String english) {
            for (String joint : JOINTS) {
                for (int at = english.indexOf(joint); at > 0; at = english.indexOf(joint, at + 1)) {
                    Optional<String> left = read(english.substring(0, at));
                    Optional<String> right = left.isEmpty() ? left : read(english.substring(at + joint.length()));
                    if (right.isPresent()) {
                        return Optional.of(left.get() + joint + right.get());
                    }
                }
            }
            return Optional.empty();
        }

        private Optional<String> byTemplate(String english) {
            for (Pair pair : withGaps) {
                Object[] values = new Object[pair.english.gaps()];
                if (english.startsWith(pair.english.pieces().get(0))
                        && fits(
                                pair.english,
                                english,
                                0,
                                pair.english.pieces().get(0).length(),
                                values)) {
                    return Optional.of(pair.other.filled(values));
                }
            }
            return Optional.empty();
        }

        /** Whether the sentence from here on fits the template from this gap on; fills in the values of the gaps. */
        private boolean fits(Template template, String english, int gap, int from, Object[] values) {
            if (gap == template.gaps()) {
                return from == english.length();
            }
            String after = template.pieces().get(gap + 1);
            boolean last = gap + 1 == template.gaps();
            int at = last ? english.length() - after.length() : english.indexOf(after, from + 1);
            while (at > from && english.startsWith(after, at)) {
                Optional<String> value = value(template, gap, english.substring(from, at));
                if (value.isPresent()) {
                    values[template.order().get(gap)] = value.get();
                    if (fits(template, english, gap + 1, at + after.length(), values)) {
                        return true;
                    }
                }
                at = last ? -1 : english.indexOf(after, at + 1);
            }
            return false;
        }

        private Optional<String> value(Template template, int gap, String english) {
            return template.free().get(gap) ? Optional.of(english) : read(english);
        }
    }
}
