package org.pumpwright.host.app.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.exchange.EntryLine;
import org.pumpwright.host.record.exchange.LinesHead;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Takes in the entries of another stand from a file of lines. The whole file is checked first: one line that was changed, and
 * nothing of it is taken. Confined to one thread.
 */
final class TakingIn {
    private static final int AT_ONCE = 100;
    private static final int LONGEST_LINE = 200_000_000;

    private final RecordBook book;
    private final Path file;

    TakingIn(RecordBook book, Path file) {
        this.book = book;
        this.file = file;
    }

    /** Whether a file is one of lines. */
    static boolean isFor(Path file) throws IOException {
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            char[] begin = new char[80];
            int count = lines.read(begin);
            return count > 0 && LinesHead.begins(new String(begin, 0, count));
        }
    }

    /**
     * Takes them.
     *
     * @return what came of it
     * @throws OrderException when the file is damaged, was changed, or leaves something out; nothing is taken then
     */
    Importing.Taken take() throws OrderException, StoreException {
        Map<Digest, CheckingKey> keys = new HashMap<>();
        List<String> unknown = new ArrayList<>();
        for (Map.Entry<String, CheckingKey> key : keysOfTheFile().entrySet()) {
            keys.put(key.getValue().digest(), key.getValue());
            if (!book.choice().trusted().containsKey(key.getValue().digest())) {
                unknown.add(key.getKey());
            }
        }
        long entries = check(keys);
        int fresh = takeAll();
        return new Importing.Taken(file, (int) entries, fresh, unknown);
    }

    private Map<String, CheckingKey> keysOfTheFile() throws OrderException {
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return OpenKeys.of(LinesHead.read(String.valueOf(lines.readLine())).keys());
        } catch (IOException | IllegalArgumentException e) {
            throw refused(1, e);
        }
    }

    /** Every line, before any is taken. */
    private long check(Map<Digest, CheckingKey> keys) throws OrderException {
        long number = 1;
        long entries = 0;
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            lines.readLine();
            Optional<Long> said = Optional.empty();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (said.isPresent() || line.length() > LONGEST_LINE) {
                    throw new IllegalArgumentException("it goes on behind its end");
                }
                said = LinesHead.ended(line);
                if (said.isEmpty()) {
                    check(EntryLine.read(line), keys);
                    entries++;
                }
            }
            if (said.isEmpty() || said.get() != entries) {
                throw new IllegalArgumentException(
                        "the file was cut off, or lines were taken out: it holds %d entries%s"
                                .formatted(
                                        entries,
                                        said.map(" and says %d"::formatted).orElse("")));
            }
            return entries;
        } catch (IOException | IllegalArgumentException e) {
            throw refused(number, e);
        }
    }

    private static void check(EntryLine line, Map<Digest, CheckingKey> keys) {
        CheckingKey key = keys.get(line.seal().key());
        if (key == null) {
            throw new IllegalArgumentException(line.place() + " is signed with a key that the file does not give: "
                    + line.seal().key().hex());
        }
        line.trouble(key).ifPresent(says -> {
            throw new IllegalArgumentException(line.place() + " " + says);
        });
        line.entry();
        if (line.attachments().stream().anyMatch(Optional::isEmpty)) {
            throw new IllegalArgumentException(
                    line.place()
                            + ": what is kept beside it was left out when it was exported. Export again with --with-customer to take it in elsewhere");
        }
    }

    private int takeAll() throws OrderException, StoreException {
        int fresh = 0;
        RecordStore store = book.store(book.choice().desk());
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            lines.readLine();
            List<RecordStore.Foreign> some = new ArrayList<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (LinesHead.ended(line).isEmpty()) {
                    some.add(foreign(EntryLine.read(line)));
                }
                if (some.size() == AT_ONCE) {
                    fresh += store.take(some);
                    some.clear();
                }
            }
            return fresh + store.take(some);
        } catch (IOException e) {
            throw refused(1, e);
        }
    }

    private static RecordStore.Foreign foreign(EntryLine line) {
        Entry entry = line.entry();
        return new RecordStore.Foreign(
                entry, line.attachments().stream().map(Optional::orElseThrow).toList());
    }

    private OrderException refused(long line, Exception e) {
        return new OrderException(
                "%s, line %d: %s. Nothing was taken; get the file once more from where it was exported."
                        .formatted(file, line, e.getMessage()));
    }
}
