package org.pumpwright.host.app.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.InventedClaim;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.sql.RecordStores;

/** Two desks, each a program of its own, act on one claim at once. */
@Timeout(120)
final class TwoDesksTest {
    private static final SigningKey KEY = SigningKey.generate();
    private static final Clock CLOCK = Clock.fixed(InventedClaim.DAY.toInstant(), ZoneOffset.ofHours(-6));
    private static final int EACH = 12;

    @TempDir
    private Path folder;

    private RecordStore open() throws Exception {
        return RecordStores.inFile(folder.resolve("ledger.db"), "desk", KEY);
    }

    private static Act seen(String words) {
        return new Act.Observed(
                new Observation(Observation.Seen.NOTE, words, "Robin Example", InventedClaim.DAY.plusHours(1)));
    }

    /** Both look at the claim before either acts. */
    @Test
    void theSecondLooksAgainBeforeItActs() throws Exception {
        try (RecordStore one = open();
                RecordStore other = open()) {
            new ClaimDesk(one, CLOCK).open(new InventedClaim().file().intake());
            CyclicBarrier bothLooked = new CyclicBarrier(2);
            AtomicInteger looks = new AtomicInteger();
            ClaimDesk.Deed deed = (file, now) -> {
                if (looks.incrementAndGet() <= 2) {
                    meet(bothLooked);
                }
                if (file.observations().size() == 1) {
                    throw new RefusedException("the other desk was first");
                }
                return seen("dry");
            };
            List<String> told = new ArrayList<>();
            for (CompletableFuture<String> desk : List.of(acting(one, deed), acting(other, deed))) {
                told.add(desk.get(60, TimeUnit.SECONDS));
            }

            assertThat(told).containsExactlyInAnyOrder("done", "the other desk was first");
            assertThat(looks).hasValue(3);
            assertThat(new ClaimShelf(one).get("EX-1").observations()).hasSize(1);
        }
    }

    private static void meet(CyclicBarrier barrier) {
        try {
            barrier.await(60, TimeUnit.SECONDS);
        } catch (Exception e) {
            throw new AssertionError("the other desk did not come", e);
        }
    }

    private static CompletableFuture<String> acting(RecordStore store, ClaimDesk.Deed deed) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                new ClaimDesk(store, CLOCK).act("EX-1", deed, Optional.empty());
                return "done";
            } catch (OrderException e) {
                return e.getMessage();
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        });
    }

    @Test
    void nothingIsLostOrDoubledAndPlacesHaveNoGap() throws Exception {
        try (RecordStore one = open();
                RecordStore other = open()) {
            new ClaimDesk(one, CLOCK).open(new InventedClaim().file().intake());
            List<CompletableFuture<Void>> work = new ArrayList<>();
            for (RecordStore store : List.of(one, other)) {
                work.add(CompletableFuture.runAsync(() -> {
                    for (int i = 0; i < EACH; i++) {
                        String words = "seen " + System.identityHashCode(store) + " " + i;
                        assertThat(acting(store, (file, now) -> seen(words)).join())
                                .isEqualTo("done");
                    }
                }));
            }
            for (CompletableFuture<Void> done : work) {
                done.get(60, TimeUnit.SECONDS);
            }

            ClaimShelf.Claim claim = new ClaimShelf(one).require("EX-1");
            assertThat(claim.file().observations().stream().map(Observation::words))
                    .hasSize(2 * EACH)
                    .doesNotHaveDuplicates();
            assertThat(claim.entries().stream().map(Entry::number))
                    .hasSize(1 + 2 * EACH)
                    .contains(1L, 1L + 2 * EACH);
            assertThat(Audit.of(one, Keyring.of(KEY.open()), Heads.NONE, Audit.Depth.EVERY_SIGNATURE)
                            .troubles())
                    .isEmpty();
        }
    }
}
