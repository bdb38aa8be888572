package org.pumpwright.host.claim;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.pumpwright.host.quantity.Require;

/**
 * An amount of money in the shop's currency, to the cent. Thread-safe.
 *
 * @param cents hundredths
 */
public record Amount(long cents) implements Comparable<Amount> {
    private static final int DECIMALS = 2;
    private static final double MOST_CENTS = 1e11;

    public Amount {
        Require.inRange("amount", cents / 100.0, 0, MOST_CENTS / 100, "");
    }

    /**
     * The amount that is written like this: digits, and cents after a point.
     *
     * @throws IllegalArgumentException when it is no amount, or has parts of a cent
     */
    public static Amount of(String text) {
        try {
            return new Amount(new BigDecimal(text.strip())
                    .setScale(DECIMALS, RoundingMode.UNNECESSARY)
                    .movePointRight(DECIMALS)
                    .longValueExact());
        } catch (ArithmeticException | NumberFormatException e) {
            throw new IllegalArgumentException(
                    "'%s' is no amount: write it as 1234.50, with a point".formatted(text), e);
        }
    }

    /** With two decimals and a point. */
    public String text() {
        return BigDecimal.valueOf(cents, DECIMALS).toPlainString();
    }

    @Override
    public int compareTo(Amount other) {
        return Long.compare(cents, other.cents);
    }
}
