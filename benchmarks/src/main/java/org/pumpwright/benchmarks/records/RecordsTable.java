package org.pumpwright.benchmarks.records;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.sql.OwnPostgresql;
import org.pumpwright.host.record.sql.RecordStores;

/** Prints how fast both databases take, find and audit records. */
public final class RecordsTable {
    private static final int DEFAULT_ENTRIES = 1_000_000;
    private static final int BATCH_OF_EACH = 250;
    private static final int SEARCHES = 200;
    private static final int COMMITS = 200;
    private static final int TRACE_BYTES = 250_000;
    private static final int SHOWN = 50;
    private static final List<Integer> STOPS = List.of(10_000, 100_000, 1_000_000);

    private final SigningKey key = SigningKey.generate();
    private final Map<String, RecordStore> stores = new LinkedHashMap<>();
    private final SplittableRandom random = new SplittableRandom(5);

    private RecordsTable() {}

    /**
     * Runs.
     *
     * @param args a folder on a real disk, then the number of entries
     */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int entries = args.length > 1 ? Integer.parseInt(args[1]) : DEFAULT_ENTRIES;
        Files.createDirectories(folder);
        try (OwnPostgresql server = OwnPostgresql.start()) {
            new RecordsTable().run(folder.resolve("ledger.db"), server, entries);
        }
    }

    private void run(Path file, OwnPostgresql server, int entries) throws Exception {
        String database = server.newDatabase();
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        login.setProperty("reWriteBatchedInserts", "true");
        stores.put("SQLite", RecordStores.inFile(file, "bench", key));
        stores.put("PostgreSQL", RecordStores.onServer(server.address(database), login, "bench", key));
        TreeSet<Integer> stops =
                new TreeSet<>(STOPS.stream().filter(stop -> stop < entries).toList());
        stops.add(entries);
        ShopChains chains = new ShopChains(key);
        int there = 0;
        for (int stop : stops) {
            there = fill(chains, there, stop);
            tidy(server.address(database));
            searches(there);
        }
        commits();
        audits();
        System.out.printf(
                Locale.ROOT,
                "%nStore: SQLite %d MB, PostgreSQL %d MB%n",
                Files.size(file) >> 20,
                size(server.address(database), database) >> 20);
        stores.values().forEach(RecordStore::close);
    }

    private int fill(ShopChains chains, int from, int to) throws Exception {
        long start = System.nanoTime();
        int there = from;
        while (there < to) {
            List<RecordStore.Foreign> batch = chains.next(BATCH_OF_EACH);
            for (RecordStore store : stores.values()) {
                store.take(batch);
            }
            there += batch.size();
        }
        System.out.printf(
                Locale.ROOT, "%n%d entries, filled in %d s%n", there, (System.nanoTime() - start) / 1_000_000_000L);
        return there;
    }

    /** What the server does by itself within a minute or two of such a load. */
    private static void tidy(String address) throws Exception {
        try (Connection connection = DriverManager.getConnection(address, OwnPostgresql.USER, "")) {
            connection.createStatement().execute("VACUUM ANALYZE");
        }
    }

    private void searches(int there) throws Exception {
        Map<String, Function<Finder, Search>> kinds = new LinkedHashMap<>();
        kinds.put("serial, whole", finder -> search(finder.serial(), "", "", "", "", null, ""));
        kinds.put("serial, 5 characters", finder -> search(beginning(finder.serial(), 5), "", "", "", "", null, ""));
        kinds.put("serial, 7 characters", finder -> search(beginning(finder.serial(), 7), "", "", "", "", null, ""));
        kinds.put(
                "customer, beginning",
                f -> search(Optional.empty(), f.customer().orElseThrow().substring(0, 12), "", "", "", null, ""));
        kinds.put("claim", f -> search(Optional.empty(), "", f.claim().orElse("C-0"), "", "", null, ""));
        kinds.put("model", f -> search(Optional.empty(), "", "", f.model().orElseThrow(), "", null, ""));
        kinds.put(
                "verdict", f -> search(Optional.empty(), "", "", "", f.verdict().orElseThrow(), null, ""));
        kinds.put("one week", f -> search(Optional.empty(), "", "", "", "", day(there), ""));
        kinds.put(
                "verdict, one week",
                f -> search(Optional.empty(), "", "", "", f.verdict().orElseThrow(), day(there), ""));
        kinds.put("words, common", f -> search(Optional.empty(), "", "", "", "", null, f.words()));
        kinds.put(
                "words, part of a serial",
                f -> search(
                        Optional.empty(),
                        "",
                        "",
                        "",
                        "",
                        null,
                        f.serial().orElseThrow().substring(5)));
        kinds.put(
                "words, a whole serial",
                f -> search(Optional.empty(), "", "", "", "", null, f.serial().orElseThrow()));
        kinds.put("newest", f -> Search.newest(SHOWN));
        System.out.println(
                "| search, median / p99 in ms | " + String.join(" | ", stores.keySet()) + " |\n| --- | --- | --- |");
        List<Finder> known = known(stores.values().iterator().next(), there);
        for (Map.Entry<String, Function<Finder, Search>> kind : kinds.entrySet()) {
            int[] next = {0};
            List<String> cells = new ArrayList<>();
            for (RecordStore store : stores.values()) {
                cells.add(Times.of(
                                SEARCHES,
                                () -> store.search(kind.getValue().apply(known.get(next[0]++ % known.size()))))
                        .toString());
            }
            System.out.println("| " + kind.getKey() + " | " + String.join(" | ", cells) + " |");
        }
    }

    /** Finders of entries that are there, so that most searches find something. */
    private List<Finder> known(RecordStore store, int there) throws Exception {
        List<Finder> known = new ArrayList<>();
        for (int i = 0; i < SEARCHES; i++) {
            String id = "stand-%d/%d".formatted(1 + random.nextInt(4), 1 + random.nextInt(there / 4));
            known.add(store.find(id).orElseThrow().finder());
        }
        return known;
    }

    private LocalDate day(int there) {
        return LocalDate.of(2016, 1, 4).plusDays(random.nextInt(1 + there / 4 / 72));
    }

    private static Optional<String> beginning(Optional<String> text, int characters) {
        return text.map(whole -> whole.substring(0, characters));
    }

    private static Search search(
            Optional<String> serial,
            String customer,
            String claim,
            String model,
            String verdict,
            @Nullable LocalDate from,
            String words) {
        return new Search(
                Optional.empty(),
                serial,
                given(customer),
                given(claim),
                given(model),
                given(verdict),
                Optional.ofNullable(from),
                Optional.ofNullable(from).map(day -> day.plusDays(6)),
                given(words),
                SHOWN);
    }

    private static Optional<String> given(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private void commits() throws Exception {
        System.out.println("\n| store | commit with a trace of 250 kB, median / p99 in ms |\n| --- | --- |");
        for (Map.Entry<String, RecordStore> store : stores.entrySet()) {
            int[] number = {0};
            Times times = Times.of(COMMITS, () -> {
                byte[] trace = new byte[TRACE_BYTES];
                random.nextBytes(trace);
                store.getValue()
                        .append(new Draft(
                                EntryKind.RUN,
                                "bench/" + number[0]++,
                                OffsetDateTime.parse("2026-04-20T08:00:00-05:00"),
                                ShopChains.content(random),
                                ShopChains.finder(random),
                                List.of(trace),
                                Optional.empty()));
            });
            System.out.println("| " + store.getKey() + " | " + times + " |");
        }
    }

    private void audits() throws Exception {
        for (Map.Entry<String, RecordStore> store : stores.entrySet()) {
            long start = System.nanoTime();
            Audit.Result result =
                    Audit.of(store.getValue(), Keyring.of(key.open()), Heads.NONE, Audit.Depth.PROVING_SIGNATURES);
            System.out.printf(
                    Locale.ROOT,
                    "Audit of %s: %.1f s, %d entries, %d attachments, %d troubles%n",
                    store.getKey(),
                    (System.nanoTime() - start) / 1e9,
                    result.entries(),
                    result.attachments(),
                    result.troubleCount());
        }
    }

    private static long size(String address, String database) throws Exception {
        try (Connection connection = DriverManager.getConnection(address, OwnPostgresql.USER, "");
                var row = connection.createStatement().executeQuery("SELECT pg_database_size('" + database + "')")) {
            row.next();
            return row.getLong(1);
        }
    }
}
