package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.ExampleLedger;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;

/** With more entries than are gone through one by one, every way of searching finds what a plain look at all of them does. */
class ManyEntriesSearchTest {
    private static final SigningKey KEY = SigningKey.generate();
    private static final int ENTRIES = SearchSql.FEW + 1000;
    private static final int MOST = 20;

    @TempDir
    private Path folder;

    private final List<Draft> all = new ArrayList<>();

    @Test
    void aFileFindsWhatALookAtAllDoes() throws Exception {
        try (RecordStore store = RecordStores.inFile(folder.resolve("ledger.db"), "stand-1", KEY)) {
            compare(store);
        }
    }

    @Test
    void aServerFindsWhatALookAtAllDoes() throws Exception {
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        try (OwnPostgresql server = OwnPostgresql.start();
                RecordStore store =
                        RecordStores.onServer(server.address(server.newDatabase()), login, "stand-1", KEY)) {
            compare(store);
        }
    }

    private void compare(RecordStore store) throws StoreException {
        ExampleLedger example = new ExampleLedger("stand-1", 11);
        for (int i = 0; i < ENTRIES; i++) {
            all.add(example.next());
        }
        store.append(all);
        Search newest = Search.newest(MOST);
        same(store, newest, draft -> true);
        same(store, newest.ofSerial("SN-"), finder(finder -> true));
        same(
                store,
                newest.ofSerial("SN-12"),
                finder(finder -> finder.serial().orElse("").startsWith("SN-12")));
        same(store, newest.containing("END ROWS"), draft -> true);
        same(
                store,
                newest.containing("ñandú 17"),
                finder(finder -> finder.customer().orElse("").endsWith("Ñandú 17")));
        same(
                store,
                newest.ofSerial("SN-1").containing("demo-pump"),
                finder(finder -> finder.serial().orElse("").startsWith("SN-1")
                        && finder.model().equals(Optional.of("demo-pump"))));
        same(store, newest.containing("stand-1/12"), draft -> draft.id().startsWith("stand-1/12"));
        same(store, newest.containing("nothing like it"), draft -> false);
    }

    private static Predicate<Draft> finder(Predicate<Finder> holds) {
        return draft -> holds.test(draft.finder());
    }

    private void same(RecordStore store, Search search, Predicate<Draft> holds) throws StoreException {
        List<String> wanted =
                new ArrayList<>(all.stream().filter(holds).map(Draft::id).toList());
        Collections.reverse(wanted);
        assertThat(store.search(search))
                .as(String.format(Locale.ROOT, "%s", search))
                .extracting(Entry::id)
                .isEqualTo(wanted.subList(0, Math.min(MOST, wanted.size())));
    }
}
