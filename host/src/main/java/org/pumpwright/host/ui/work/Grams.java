package org.pumpwright.host.ui.work;

import java.util.Optional;

/** A weight in grams as it is typed. Thread-safe. */
final class Grams {
    private static final double MOST = 1e7;

    private Grams() {}

    /** What is wrong with it; empty when nothing is. */
    static Optional<Word> complaint(String text) {
        Optional<Double> grams = read(text);
        if (grams.isPresent() && grams.get() >= 0 && grams.get() < MOST) {
            return Optional.empty();
        }
        return Optional.of(Word.of(text.contains(",") ? "ui.bucket.point" : "ui.bucket.no_weight", text));
    }

    private static Optional<Double> read(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
