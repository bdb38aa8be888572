package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.record.exchange.EntryLine;
import org.pumpwright.host.record.exchange.LinesHead;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Hands entries out, so that whoever gets them can check them without this program. Unless it is asked for, nothing says whose
 * units they were: finders are left out, and what is kept beside intakes, custody, decisions and bucket tests; an entry that
 * names a customer in its content all the same goes without it. Confined to one thread.
 */
public final class HandingOut {
    /** What is kept beside these is measured, not told by people. */
    private static final Set<EntryKind> MEASURED =
            EnumSet.of(EntryKind.RUN, EntryKind.GRADE, EntryKind.CURVE, EntryKind.STAND, EntryKind.PHOTO);

    private final RecordBook book;
    private final boolean withCustomers;
    private final Set<String> customers = new TreeSet<>();
    private int entries;
    private int leftOut;

    /** @param withCustomers whether it is said whose units they were */
    public HandingOut(RecordBook book, boolean withCustomers) {
        this.book = book;
        this.withCustomers = withCustomers;
    }

    /** Gets what is handed out. */
    @FunctionalInterface
    public interface Taker {
        /** Gets one thing; when it can't take it, the whole ends. */
        void take(String text) throws IOException;
    }

    /** The entries that a search finds, each chain from its first on. */
    public List<Entry> entries(Search search) throws StoreException {
        List<Entry> found = new ArrayList<>(book.reading().search(search));
        Collections.reverse(found);
        return found;
    }

    /**
     * Hands out everything, chain by chain: such a file can be taken in elsewhere.
     *
     * @throws OrderException when the taker can't take it, or an entry can't be read
     */
    public void everything(Taker taker) throws StoreException, OrderException {
        RecordStore store = book.reading();
        if (!withCustomers) {
            for (String chain : store.chains()) {
                store.each(chain, kept -> kept.entry().ifPresent(this::remember));
            }
        }
        take(taker, new LinesHead(Version.text(), withCustomers, keys()).text());
        for (String chain : store.chains()) {
            List<String> ids = new ArrayList<>();
            store.each(chain, kept -> ids.add(kept.entry().map(Entry::id).orElse("")));
            for (String id : ids) {
                handOut(
                        store.find(id)
                                .orElseThrow(() -> new OrderException(
                                        "an entry of chain %s can't be read, so nothing whole can be handed out. Run 'pumpwright record audit'."
                                                .formatted(chain))),
                        taker);
            }
        }
        take(taker, LinesHead.end(entries));
    }

    /**
     * Hands out some entries in their order.
     *
     * @throws OrderException when the taker can't take it
     */
    public void some(List<Entry> chosen, Taker taker) throws StoreException, OrderException {
        chosen.forEach(this::remember);
        take(taker, new LinesHead(Version.text(), withCustomers, keys()).text());
        for (Entry entry : chosen) {
            handOut(entry, taker);
        }
        take(taker, LinesHead.end(entries));
    }

    /** How many entries were handed out. */
    public int handedOut() {
        return entries;
    }

    /** How many could not be, because what was signed names a customer. */
    public int leftOut() {
        return leftOut;
    }

    private void handOut(Entry entry, Taker taker) throws StoreException, OrderException {
        Optional<EntryLine> line = line(entry);
        if (line.isEmpty()) {
            leftOut++;
            return;
        }
        entries++;
        take(taker, line.get().text());
    }

    /** The line of an entry, without what it is not to say; empty when its header says it already. */
    Optional<EntryLine> line(Entry entry) throws StoreException {
        List<Optional<byte[]>> attachments = new ArrayList<>();
        for (Digest digest : entry.attachments()) {
            attachments.add(book.reading().attachment(digest));
        }
        EntryLine whole = EntryLine.of(entry, attachments);
        if (withCustomers) {
            return Optional.of(whole);
        }
        EntryLine plain = whole.withoutFinder();
        if (!MEASURED.contains(entry.kind())) {
            plain = plain.withoutAttachments();
        }
        if (namesACustomer(entry.content())) {
            plain = plain.withoutContent();
        }
        return namesACustomer(plain.header()) ? Optional.empty() : Optional.of(plain);
    }

    /** Notes whom no text may name. */
    void remember(Entry entry) {
        entry.finder()
                .customer()
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .filter(name -> !name.isEmpty())
                .ifPresent(customers::add);
    }

    private boolean namesACustomer(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        return customers.stream().anyMatch(plain::contains);
    }

    /** The open keys as PEM texts by their names. */
    Map<String, String> keys() throws StoreException, OrderException {
        Map<String, String> texts = new TreeMap<>();
        for (Map.Entry<String, CheckingKey> key : book.choice().named().entrySet()) {
            try {
                texts.put(key.getKey(), Files.readString(book.choice().keys().resolve(key.getKey() + ".pub")));
            } catch (IOException e) {
                throw new OrderException("the key %s can't be read: %s. Check the folder's rights."
                        .formatted(key.getKey(), e.getMessage()));
            }
        }
        return texts;
    }

    private static void take(Taker taker, String text) throws OrderException {
        try {
            taker.take(text);
        } catch (IOException e) {
            throw new OrderException("the export can't be written: %s. Free some space or choose another file."
                    .formatted(e.getMessage()));
        }
    }
}
