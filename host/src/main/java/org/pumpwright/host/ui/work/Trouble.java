package org.pumpwright.host.ui.work;

import java.util.Locale;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.stand.StandException;

/**
 * Something that went wrong, for the banner. Advice that only helps at the command line is never among it: where a message has some,
 * the remedy names the screen instead that does the same. Thread-safe.
 *
 * @param what what happened, in a few words
 * @param remedy what to do
 * @param detail what the program has to say besides, as it is; may be empty
 */
public record Trouble(Word what, Word remedy, String detail) {
    private static final String KEYS = "ui.trouble.";

    /** Commands whose work a screen does; the remedy is {@code ui.trouble.at.COMMAND}. */
    private static final Set<String> ON_A_SCREEN = Set.of("accept", "bucket", "claim", "record", "stand");

    /** Trouble whose two texts are {@code ui.trouble.NAME.what} and {@code ui.trouble.NAME.do}. */
    public static Trouble named(String name, String detail) {
        CommandAdvice advice = CommandAdvice.in(detail);
        Word remedy = advice.command()
                .filter(ON_A_SCREEN::contains)
                .map(command -> Word.of(KEYS + "at." + command))
                .orElse(Word.of(KEYS + name + ".do"));
        return new Trouble(Word.of(KEYS + name + ".what"), remedy, advice.was() ? advice.left() : detail);
    }

    /** Something that was ended on purpose; the advice for the command line is left out, and no other screen is named. */
    static Trouble ended(String name, String detail) {
        return new Trouble(
                Word.of(KEYS + name + ".what"),
                Word.of(KEYS + name + ".do"),
                CommandAdvice.in(detail).left());
    }

    /** What an exception of a use case means to a person. */
    public static Trouble of(Throwable cause) {
        if (cause instanceof StandException stand) {
            return named("stand_" + stand.trouble().name().toLowerCase(Locale.ROOT), stand.getMessage());
        }
        String message = String.valueOf(cause.getMessage());
        if (cause instanceof OrderException || cause instanceof DataFileException) {
            return named("order", message);
        }
        if (cause instanceof StoreException) {
            return named("store", message);
        }
        if (cause instanceof RunRecordException) {
            return named("record", message);
        }
        return named("program", cause.getClass().getSimpleName() + ": " + message);
    }
}
