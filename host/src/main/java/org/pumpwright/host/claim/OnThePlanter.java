package org.pumpwright.host.claim;

/**
 * What the unit did on the planter. Empty texts are what nobody has told yet. Thread-safe.
 *
 * @param makeUp rows, spacing, rate and speed, in words
 * @param product what was pumped, a must for safety; {@code unknown} is an answer
 * @param lastFlush when and with what it was last flushed, in words
 */
public record OnThePlanter(String makeUp, String product, String lastFlush) {
    public OnThePlanter {
        makeUp = Words.bounded("planter", makeUp);
        product = Words.bounded("product", product);
        lastFlush = Words.bounded("last flush", lastFlush);
    }
}
