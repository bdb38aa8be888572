package org.pumpwright.benchmarks.records;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pumpwright.host.record.ledger.CanonicalJson;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.RecordStore.Foreign;
import org.pumpwright.host.record.ledger.SigningKey;

/**
 * Entries as four stands of a big shop would write them, from a seed: signed, linked, every tenth with a small attachment. The
 * mix is assumed: 40 models of which a few are common, 5000 customers, a claim for every other unit. Confined to one thread.
 */
final class ShopChains {
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2016-01-04T08:00:00-06:00");
    private static final int CHAINS = 4;
    private static final int CUSTOMERS = 5000;
    private static final int MODELS = 40;
    private static final List<String> VERDICTS = List.of("pass", "pass", "pass", "fail", "fail", "not-decided");
    private static final List<String> WORDS = List.of(
            "surges", "whine", "leak at the shaft", "no flow", "end rows", "slow to prime", "corroded", "stuck valve");

    private final SigningKey key;
    private final List<Chain> chains = new ArrayList<>();

    ShopChains(SigningKey key) {
        this.key = key;
        for (int i = 0; i < CHAINS; i++) {
            chains.add(new Chain("stand-" + (i + 1), new SplittableRandom(i)));
        }
    }

    /** The next entries of all chains, the same number of each. */
    List<Foreign> next(int ofEach) {
        return chains.parallelStream()
                .flatMap(chain -> chain.next(ofEach).stream())
                .toList();
    }

    /** What a test of twelve steps leaves, about 2 kB. */
    static String content(SplittableRandom random) {
        return IntStream.range(0, 12)
                .mapToObj(step ->
                        "{\"step\":%d,\"flow\":%d.%02d,\"pressure\":%d.%d,\"current\":%d.%02d,\"finding\":\"as expected\",\"limit_low\":%d.5,\"limit_high\":%d.5,\"samples\":%d}"
                                .formatted(
                                        step,
                                        random.nextInt(9),
                                        random.nextInt(100),
                                        random.nextInt(60),
                                        random.nextInt(10),
                                        random.nextInt(20),
                                        random.nextInt(100),
                                        random.nextInt(4),
                                        4 + random.nextInt(4),
                                        1000 + random.nextInt(9000)))
                .collect(Collectors.joining(",", "{\"steps\":[", "]}"));
    }

    static Finder finder(SplittableRandom random) {
        int model = Math.min(random.nextInt(MODELS), random.nextInt(MODELS));
        return new Finder(
                Optional.of("SN-%07d".formatted(random.nextInt(10_000_000))),
                Optional.of("model-" + model),
                Optional.of("customer %04d farms".formatted(random.nextInt(CUSTOMERS))),
                random.nextBoolean() ? Optional.of("C-%07d".formatted(random.nextInt(10_000_000))) : Optional.empty(),
                Optional.of(VERDICTS.get(random.nextInt(VERDICTS.size()))),
                WORDS.get(random.nextInt(WORDS.size())));
    }

    /** One stand's. */
    private final class Chain {
        private final String name;
        private final SplittableRandom random;
        private long number;
        private Digest prior = Digest.NOTHING;

        Chain(String name, SplittableRandom random) {
            this.name = name;
            this.random = random;
        }

        private List<Foreign> next(int count) {
            return IntStream.range(0, count).mapToObj(i -> next()).toList();
        }

        private Foreign next() {
            number++;
            List<byte[]> beside = new ArrayList<>();
            if (number % 10 == 0) {
                byte[] bytes = new byte[200];
                random.nextBytes(bytes);
                beside.add(bytes);
            }
            Entry entry = new Entry(
                            name,
                            number,
                            number % 3 == 0 ? EntryKind.INTAKE : EntryKind.RUN,
                            name + "/" + number,
                            FIRST.plusMinutes(20 * number),
                            FIRST.plusMinutes(20 * number + 12).toInstant(),
                            prior,
                            new String(CanonicalJson.of(content(random)), StandardCharsets.UTF_8),
                            beside.stream().map(bytes -> Digest.of(bytes)).toList(),
                            Optional.empty(),
                            finder(random),
                            new Entry.Seal(key.open().digest(), ""))
                    .sealed(key);
            prior = entry.digest();
            return new Foreign(entry, beside);
        }
    }
}
