package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a unit has pumped, as far as hands and eyes are concerned. Common practice, no source. Thread-safe. */
public enum Product {
    /** Starter, nitrogen, thiosulfate: salts. */
    FERTILIZER,
    /** Anything put in the furrow against insects, fungi or weeds. */
    PESTICIDE,
    /** Only water since it was new or rebuilt. */
    WATER,
    /** Nobody knows: handled like the worst. */
    UNKNOWN;

    private static final List<String> PESTICIDES = List.of(
            "pesticide",
            "herbicide",
            "insecticide",
            "fungicide",
            "inhibitor",
            "plaguicida",
            "herbicida",
            "insecticida",
            "fungicida");
    private static final List<String> FERTILIZERS = List.of(
            "fertilizer",
            "fertiliser",
            "starter",
            "uan",
            "28-0-0",
            "32-0-0",
            "10-34-0",
            "11-37-0",
            "thiosul",
            "fertilizante");

    /** As a record keeps it: English, small letters; papers say it in their own language. */
    String stored() {
        return switch (this) {
            case FERTILIZER -> "fertilizer";
            case PESTICIDE -> "pesticide";
            case WATER -> "only water";
            case UNKNOWN -> "not known";
        };
    }

    /** The kind of a product that somebody has named; empty where the name does not tell. */
    static Optional<Product> ofName(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        if (plain.equals("water") || plain.equals("only water") || plain.equals("agua")) {
            return Optional.of(WATER);
        }
        if (plain.equals("unknown") || plain.equals("not known")) {
            return Optional.of(UNKNOWN);
        }
        if (PESTICIDES.stream().anyMatch(plain::contains)) {
            return Optional.of(PESTICIDE);
        }
        return FERTILIZERS.stream().anyMatch(plain::contains) ? Optional.of(FERTILIZER) : Optional.empty();
    }

    /** Its name. */
    public Word word() {
        return Word.of(key());
    }

    /** What to mind when it is handled. */
    public Word caution() {
        return Word.of(key() + ".caution");
    }

    private String key() {
        return "ui.product." + name().toLowerCase(Locale.ROOT);
    }
}
