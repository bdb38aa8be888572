package org.pumpwright.host.ui.work;

import java.util.Locale;
import java.util.Optional;

/** Which verdicts are looked for. Thread-safe. */
public enum AskedVerdict {
    ANY,
    PASS,
    FAIL,
    INCONCLUSIVE,
    INVALID;

    Optional<String> word() {
        return this == ANY ? Optional.empty() : Optional.of(style());
    }

    /** As keys of texts name it. */
    public String style() {
        return name().toLowerCase(Locale.ROOT);
    }

    AskedVerdict following() {
        return switch (this) {
            case ANY -> FAIL;
            case FAIL -> PASS;
            case PASS -> INCONCLUSIVE;
            case INCONCLUSIVE -> INVALID;
            case INVALID -> ANY;
        };
    }
}
