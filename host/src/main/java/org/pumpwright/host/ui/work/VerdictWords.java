package org.pumpwright.host.ui.work;

import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.Entry;

/** Verdicts as words and marks. Thread-safe. */
final class VerdictWords {
    private VerdictWords() {}

    /** As keys of texts name it. */
    static String key(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT);
    }

    static Word word(Verdict verdict) {
        return Word.of("verdict." + key(verdict));
    }

    static Mark mark(Verdict verdict) {
        return switch (verdict) {
            case PASS -> Mark.GOOD;
            case FAIL -> Mark.BAD;
            case INCONCLUSIVE -> Mark.WATCH;
            case INVALID, NOT_TESTED -> Mark.UNKNOWN;
        };
    }

    /** What an entry was found to be; empty where it holds no verdict on a unit. */
    static Optional<Verdict> of(Entry entry) {
        String word =
                entry.finder().verdict().orElse("").toUpperCase(Locale.ROOT).replace('-', '_');
        for (Verdict verdict : Verdict.values()) {
            if (verdict.name().equals(word)) {
                return Optional.of(verdict);
            }
        }
        return Optional.empty();
    }

    static Mark mark(Entry entry) {
        return of(entry)
                .map(VerdictWords::mark)
                .orElseGet(() -> switch (entry.finder().verdict().orElse("")) {
                    case "accepted" -> Mark.GOOD;
                    case "not-accepted" -> Mark.BAD;
                    default -> Mark.UNKNOWN;
                });
    }

    static Word word(Entry entry) {
        return of(entry)
                .map(VerdictWords::word)
                .orElseGet(() -> Word.of(
                        "accepted".equals(entry.finder().verdict().orElse(""))
                                ? "ui.history.k_accepted"
                                : "ui.history.k_not_accepted"));
    }
}
