package org.pumpwright.host.record.ledger;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.pumpwright.host.record.ledger.Draft.Amendment;

/** Drafts as a shop would put on record, from a seed. */
public final class ExampleLedger {
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-04-20T08:00:00-05:00");
    private static final int BYTES_BESIDE = 400;

    private final String chain;
    private final SplittableRandom random;
    private int number;

    public ExampleLedger(String chain, long seed) {
        this.chain = chain;
        random = new SplittableRandom(seed);
    }

    /** The next one; every third has something beside it, every tenth amends the one before. */
    public Draft next() {
        number++;
        List<byte[]> beside = new ArrayList<>();
        for (int i = 0; i < (number % 3 == 0 ? 1 + random.nextInt(2) : 0); i++) {
            byte[] bytes = new byte[BYTES_BESIDE];
            random.nextBytes(bytes);
            beside.add(bytes);
        }
        Optional<Amendment> amends = number % 10 == 0
                ? Optional.of(new Amendment(chain + "/" + (number - 1), "serial misread, \"ñ\""))
                : Optional.empty();
        Finder finder = new Finder(
                Optional.of("SN-" + random.nextInt(100_000)),
                Optional.of(number % 4 == 0 ? "demo-pump" : "demo-valve"),
                number % 5 == 0 ? Optional.empty() : Optional.of("Granja Ñandú " + random.nextInt(50)),
                Optional.of("C-" + random.nextInt(1000)),
                Optional.of(number % 2 == 0 ? "pass" : "fail"),
                "surges at the end rows");
        return new Draft(
                EntryKind.RUN,
                chain + "/" + number,
                FIRST.plusMinutes(number),
                "{\"flow\":%d,\"heard\":\"whine, ü\"}".formatted(random.nextInt(1000)),
                finder,
                beside,
                amends);
    }

    public void fill(RecordStore store, int entries) throws StoreException {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < entries; i++) {
            drafts.add(next());
        }
        store.append(drafts);
    }
}
