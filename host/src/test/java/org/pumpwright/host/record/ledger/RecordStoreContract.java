package org.pumpwright.host.record.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.StoreException.Reason;

/** What every store of entries must do. A way of storing extends it and says how a store is opened. */
public abstract class RecordStoreContract {
    protected static final SigningKey KEY = SigningKey.generate();
    private static final OffsetDateTime DAY = OffsetDateTime.parse("2026-04-20T08:00:00-05:00");

    private RecordStore store;

    /** Opens a store; the same place again for the same test. */
    protected abstract RecordStore open(String chain) throws Exception;

    @BeforeEach
    protected void openStore() throws Exception {
        store = open("stand-1");
    }

    @AfterEach
    void closeStore() {
        store.close();
    }

    static Draft draft(int number, String serial) {
        return draft(number, DAY.plusMinutes(number), serial);
    }

    private static Draft draft(int number, OffsetDateTime at, String serial) {
        return new Draft(
                EntryKind.RUN,
                "run-" + number,
                at,
                "{\"b\": 1.0, \"a\": \"%s\"}".formatted(serial),
                new Finder(
                        Optional.of(serial),
                        Optional.of("demo-pump"),
                        Optional.of("Invented Farm %d".formatted(number)),
                        Optional.of("C-" + number),
                        Optional.of(number % 2 == 0 ? "pass" : "fail"),
                        "surges at the end rows"));
    }

    @Test
    void whatIsAppendedIsFoundAgainAsItWas() throws Exception {
        Entry entry = store.append(draft(1, "SN-100"));
        assertThat(store.find("run-1")).contains(entry);
        assertThat(entry.content()).isEqualTo("{\"a\":\"SN-100\",\"b\":1}");
        assertThat(entry.number()).isEqualTo(1);
        assertThat(entry.prior()).isEqualTo(Digest.NOTHING);
    }

    @Test
    void eachEntryHoldsOnToTheOneBefore() throws Exception {
        Entry first = store.append(draft(1, "SN-100"));
        Entry second = store.append(draft(2, "SN-101"));
        assertThat(second.prior()).isEqualTo(first.digest());
        assertThat(store.head("stand-1")).contains(new RecordStore.Head(2, second.digest()));
        assertThat(audit("stand-1")).isEmpty();
    }

    @Test
    void anIdIsTakenOnlyOnceAndNothingOfTheSecondStays() throws Exception {
        store.append(draft(1, "SN-100"));
        assertThatThrownBy(() -> store.append(draft(1, "SN-999")))
                .isInstanceOfSatisfying(
                        StoreException.class, e -> assertThat(e.reason()).isEqualTo(Reason.ID_TAKEN))
                .hasMessage("there is an entry run-1 already; nothing was changed. Amend it instead.");
        assertThat(store.search(Search.newest(10).ofSerial("SN-999"))).isEmpty();
        assertThat(store.head("stand-1").orElseThrow().number()).isEqualTo(1);
    }

    @Test
    void aCorrectionIsAnEntryOfItsOwnAndTheCorrectedOneStays() throws Exception {
        Entry wrong = store.append(draft(1, "SN-1O0"));
        Draft right = draft(2, "SN-100");
        Entry amended = store.append(new Draft(
                right.kind(),
                right.id(),
                right.at(),
                right.content(),
                right.finder(),
                List.of(),
                Optional.of(new Amendment("run-1", "serial misread"))));
        assertThat(store.find("run-1")).contains(wrong);
        assertThat(store.amendments("run-1")).containsExactly(amended);
    }

    @Test
    void whatIsNotThereCannotBeAmended() {
        Draft draft = draft(1, "SN-100");
        Draft amending = new Draft(
                draft.kind(),
                draft.id(),
                draft.at(),
                draft.content(),
                draft.finder(),
                List.of(),
                Optional.of(new Amendment("run-77", "wrong")));
        assertThatThrownBy(() -> store.append(amending)).hasMessageStartingWith("there is no entry run-77");
    }

    @Test
    void attachmentsAreKeptOnceUnderTheirDigest() throws Exception {
        byte[] trace = "raw counts".getBytes(StandardCharsets.UTF_8);
        Draft plain = draft(1, "SN-100");
        Entry entry = store.append(new Draft(
                plain.kind(),
                plain.id(),
                plain.at(),
                plain.content(),
                plain.finder(),
                List.of(trace),
                Optional.empty()));
        assertThat(entry.attachments()).containsExactly(Digest.of(trace));
        assertThat(store.attachment(Digest.of(trace))).contains(trace);
        assertThat(store.attachment(Digest.NOTHING)).isEmpty();
    }

    @Test
    void searchesFindBeginningsWholeWordsDaysAndWordsAnywhere() throws Exception {
        for (int i = 1; i <= 6; i++) {
            store.append(draft(i, "SN-10" + i));
        }
        assertThat(ids(Search.newest(10).ofSerial("sn-10"))).hasSize(6).startsWith("run-6");
        assertThat(ids(Search.newest(10).ofSerial("SN-103"))).containsExactly("run-3");
        assertThat(ids(Search.newest(10).containing("END ROWS"))).hasSize(6);
        assertThat(ids(Search.newest(10).containing("farm 4"))).containsExactly("run-4");
        assertThat(ids(Search.newest(10).containing("100%_\"'"))).isEmpty();
        assertThat(ids(Search.newest(2))).containsExactly("run-6", "run-5");
        assertThat(ids(Search.newest(10).ofKind(EntryKind.INTAKE))).isEmpty();
        Search failed = new Search(
                Optional.of(EntryKind.RUN),
                Optional.empty(),
                Optional.of("invented"),
                Optional.of("c-"),
                Optional.of("demo-pump"),
                Optional.of("FAIL"),
                Optional.of(DAY.toLocalDate()),
                Optional.of(DAY.toLocalDate()),
                Optional.empty(),
                10);
        assertThat(ids(failed)).containsExactly("run-5", "run-3", "run-1");
    }

    @Test
    void entriesOfAnotherStandAreTakenOnceAndInOrder() throws Exception {
        try (RecordStore other = open("stand-2")) {
            Entry first = other.append(draft(1, "SN-100"));
            Entry second = other.append(draft(2, "SN-101"));
            // Both stores are one place here: what is there already is no new entry.
            assertThat(store.take(List.of(
                            new RecordStore.Foreign(first, List.of()), new RecordStore.Foreign(second, List.of()))))
                    .isZero();
            Entry gap = new Entry(
                            "stand-3",
                            5,
                            EntryKind.RUN,
                            "run-5",
                            DAY,
                            DAY.toInstant(),
                            first.digest(),
                            "{}",
                            List.of(),
                            Optional.empty(),
                            Finder.NOTHING,
                            first.seal())
                    .sealed(KEY);
            assertThatThrownBy(() -> store.take(List.of(new RecordStore.Foreign(gap, List.of()))))
                    .hasMessageStartingWith("entry 5 of stand-3 does not follow");
            Entry start = new Entry(
                            "stand-3",
                            1,
                            EntryKind.RUN,
                            "run-31",
                            DAY,
                            DAY.toInstant(),
                            Digest.NOTHING,
                            "{}",
                            List.of(),
                            Optional.empty(),
                            Finder.NOTHING,
                            first.seal())
                    .sealed(KEY);
            List<RecordStore.Foreign> export = List.of(new RecordStore.Foreign(start, List.of()));
            assertThat(store.take(export)).isEqualTo(1);
            assertThat(store.take(export)).isZero();
            assertThat(store.chains()).containsExactly("stand-2", "stand-3");
            assertThat(audit("stand-3")).isEmpty();
        }
    }

    /** Eight programs' worth of writers on one chain and readers beside them: numbers without a gap, nothing lost or doubled. */
    @Test
    void manyWritersOfOneChainWaitForEachOther() throws Exception {
        int writers = 8;
        int each = 12;
        ExecutorService pool = Executors.newFixedThreadPool(2 * writers);
        try (RecordStore second = open("stand-1")) {
            List<Future<?>> work = new ArrayList<>();
            for (int w = 0; w < writers; w++) {
                int from = 1000 * w;
                RecordStore own = w % 2 == 0 ? store : second;
                Callable<Void> writing = () -> {
                    for (int i = 0; i < each; i++) {
                        own.append(draft(from + i, DAY, "SN-" + from));
                    }
                    return null;
                };
                Callable<Void> reading = () -> {
                    for (int i = 0; i < each; i++) {
                        for (Entry entry : own.search(Search.newest(20))) {
                            assertThat(KEY.open()
                                            .signed(entry.header(), entry.seal().signature()))
                                    .isTrue();
                        }
                    }
                    return null;
                };
                work.add(pool.submit(writing));
                work.add(pool.submit(reading));
            }
            for (Future<?> done : work) {
                done.get();
            }
        } finally {
            pool.shutdownNow();
        }
        assertThat(store.head("stand-1").orElseThrow().number()).isEqualTo(writers * each);
        assertThat(audit("stand-1")).isEmpty();
    }

    /** Two stands and a desk, each with programs of their own; a reader never sees half of an entry. */
    @Test
    void standsAndADeskWriteAndReadAtOnce() throws Exception {
        List<String> chains = List.of("stand-1", "stand-1", "stand-1", "stand-2", "stand-2", "stand-2", "desk", "desk");
        int each = 10;
        ExecutorService pool = Executors.newFixedThreadPool(2 * chains.size());
        List<RecordStore> own = new ArrayList<>();
        try {
            List<Future<?>> work = new ArrayList<>();
            for (int w = 0; w < chains.size(); w++) {
                RecordStore program = open(chains.get(w));
                own.add(program);
                ExampleLedger example = new ExampleLedger("writer-" + w, w);
                work.add(pool.submit(() -> {
                    for (int i = 0; i < each; i++) {
                        program.append(example.next());
                    }
                    return each;
                }));
                work.add(pool.submit(() -> {
                    for (int i = 0; i < each; i++) {
                        assertWhole(program, program.search(Search.newest(20)));
                    }
                    return each;
                }));
            }
            for (Future<?> done : work) {
                done.get();
            }
        } finally {
            pool.shutdownNow();
            own.forEach(RecordStore::close);
        }
        assertThat(store.chains()).containsExactly("desk", "stand-1", "stand-2");
        assertThat(store.head("stand-1").orElseThrow().number()).isEqualTo(3 * each);
        assertThat(store.head("stand-2").orElseThrow().number()).isEqualTo(3 * each);
        assertThat(store.head("desk").orElseThrow().number()).isEqualTo(2 * each);
        assertThat(ids(Search.newest(1000))).hasSize(chains.size() * each).doesNotHaveDuplicates();
        assertThat(audit("desk")).isEmpty();
    }

    private static void assertWhole(RecordStore store, List<Entry> entries) throws StoreException {
        for (Entry entry : entries) {
            assertThat(KEY.open().signed(entry.header(), entry.seal().signature()))
                    .isTrue();
            for (Digest digest : entry.attachments()) {
                assertThat(Digest.of(store.attachment(digest).orElseThrow())).isEqualTo(digest);
            }
        }
    }

    @Test
    void severalAreAppendedTogetherOrNotAtAll() throws Exception {
        assertThat(store.append(List.of(draft(1, "SN-100"), draft(2, "SN-101"))))
                .extracting(Entry::number)
                .containsExactly(1L, 2L);
        assertThatThrownBy(() -> store.append(List.of(draft(3, "SN-102"), draft(1, "SN-103"))))
                .hasMessageStartingWith("there is an entry run-1 already");
        assertThat(store.find("run-3")).isEmpty();
        assertThat(audit("stand-1")).isEmpty();
    }

    @Test
    void whatComesBesideATakenEntryMustBeWhatItNames() throws Exception {
        Entry entry = new Entry(
                        "stand-3",
                        1,
                        EntryKind.RUN,
                        "run-31",
                        DAY,
                        DAY.toInstant(),
                        Digest.NOTHING,
                        "{}",
                        List.of(Digest.of(new byte[] {1})),
                        Optional.empty(),
                        Finder.NOTHING,
                        new Entry.Seal(KEY.open().digest(), ""))
                .sealed(KEY);
        assertThatThrownBy(() -> store.take(List.of(new RecordStore.Foreign(entry, List.of(new byte[] {2})))))
                .hasMessageStartingWith("what comes beside entry 1 of stand-3 is not what the entry names");
        assertThat(store.chains()).isEmpty();
        assertThat(store.take(List.of(new RecordStore.Foreign(entry, List.of(new byte[] {1})))))
                .isEqualTo(1);
    }

    /** An entry dated before the one ahead of it may have been entered late: worth a look, but nothing is wrong. */
    @Test
    void aLateEntryIsNoticedWithBothItsTimes() throws Exception {
        OffsetDateTime longAgo = DAY.minusYears(20);
        store.append(draft(1, longAgo, "SN-100"));
        Entry late = store.append(draft(2, longAgo.minusHours(2), "SN-101"));
        Audit.Result result = whole();
        assertThat(result.clean()).isTrue();
        assertThat(result.notices())
                .singleElement()
                .satisfies(notice -> assertThat(notice.id()).isEqualTo("run-2"))
                .extracting(Audit.Trouble::says)
                .isEqualTo(
                        "happened at 2006-04-20T06:00-05:00, entered at %s: entered late, or dated back behind an entry ahead of it"
                                .formatted(late.entered()));
    }

    /** This program never does it, so it takes somebody who has the key. */
    @Test
    void anEntryPutOnRecordBeforeTheOneAheadOfItIsTrouble() throws Exception {
        Entry first = stranger(1, DAY.toInstant(), Digest.NOTHING);
        Entry back = stranger(2, DAY.toInstant().minusSeconds(1), first.digest());
        store.take(List.of(new RecordStore.Foreign(first, List.of()), new RecordStore.Foreign(back, List.of())));
        assertThat(audit("stand-9"))
                .extracting(Audit.Trouble::says)
                .containsExactly(
                        "was put on record at 2026-04-20T12:59:59Z, before the entry ahead of it: it was dated back");
    }

    private static Entry stranger(int number, Instant entered, Digest prior) {
        return new Entry(
                        "stand-9",
                        number,
                        EntryKind.RUN,
                        "strange-" + number,
                        DAY,
                        entered,
                        prior,
                        "{}",
                        List.of(),
                        Optional.empty(),
                        Finder.NOTHING,
                        new Entry.Seal(KEY.open().digest(), ""))
                .sealed(KEY);
    }

    private Audit.Result whole() throws StoreException {
        return Audit.of(store, Keyring.of(KEY.open()), Heads.NONE, Audit.Depth.EVERY_SIGNATURE);
    }

    /** C-1 is not the beginning of C-10 here. */
    @Test
    void entriesOfAClaimAreFoundByItsWholeNumberAndInTurn() throws Exception {
        for (int i : new int[] {10, 1, 2}) {
            store.append(draft(i, "SN-" + i));
        }
        assertThat(store.ofClaim("c-1")).extracting(Entry::id).containsExactly("run-1");
        List<String> inTurn = new ArrayList<>();
        store.eachOfClaims(EnumSet.of(EntryKind.RUN), entry -> inTurn.add(entry.id()));
        assertThat(inTurn).containsExactly("run-1", "run-10", "run-2");
        store.eachOfClaims(EnumSet.of(EntryKind.INTAKE), entry -> inTurn.clear());
        assertThat(inTurn).hasSize(3);
    }

    private List<String> ids(Search search) throws StoreException {
        return store.search(search).stream().map(Entry::id).toList();
    }

    private List<Audit.Trouble> audit(String chain) throws StoreException {
        Audit.Result result = whole();
        assertThat(result.chains()).contains(chain);
        return result.troubles();
    }
}
