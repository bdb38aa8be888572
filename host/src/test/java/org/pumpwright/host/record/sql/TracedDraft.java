package org.pumpwright.host.record.sql;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/** A run with a trace beside it, both made from its id, so that it can be told whether it is there whole. */
final class TracedDraft {
    private static final OffsetDateTime DAY = OffsetDateTime.parse("2026-04-20T08:00:00-05:00");
    private static final int TRACE_BYTES = 20_000;

    private TracedDraft() {}

    static Draft of(String id) {
        Finder finder = new Finder(
                Optional.of("SN-" + id), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
        return new Draft(
                EntryKind.RUN, id, DAY, "{\"id\":\"" + id + "\"}", finder, List.of(trace(id)), Optional.empty());
    }

    static boolean isWhole(RecordStore store, Entry entry) throws StoreException {
        byte[] trace = trace(entry.id());
        return entry.content().equals("{\"id\":\"" + entry.id() + "\"}")
                && entry.attachments().equals(List.of(Digest.of(trace)))
                && store.attachment(Digest.of(trace))
                        .filter(bytes -> java.util.Arrays.equals(bytes, trace))
                        .isPresent();
    }

    private static byte[] trace(String id) {
        byte[] trace = new byte[TRACE_BYTES];
        new SplittableRandom(id.hashCode()).nextBytes(trace);
        return trace;
    }
}
