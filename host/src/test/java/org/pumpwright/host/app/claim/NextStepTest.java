package org.pumpwright.host.app.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Decontamination;
import org.pumpwright.host.claim.InventedClaim;
import org.pumpwright.host.claim.Observation.Seen;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.sql.RecordStores;

final class NextStepTest {
    private static final Clock CLOCK = Clock.fixed(InventedClaim.DAY.toInstant(), ZoneOffset.ofHours(-6));

    @TempDir
    private Path folder;

    @Test
    void aClaimWaitsForOneAfterTheOther() throws Exception {
        assertThat(NextStep.of(new InventedClaim().file())).isEqualTo(NextStep.COMPLETE_INTAKE);
        try (RecordStore store = RecordStores.inFile(folder.resolve("ledger.db"), "desk", SigningKey.generate())) {
            ClaimDesk desk = new ClaimDesk(store, CLOCK);
            ClaimFile whole = desk.open(new InventedClaim()
                    .file()
                    .intake()
                    .with(new Decontamination(Optional.of(true), Optional.empty(), 0)));
            assertThat(NextStep.of(whole)).isEqualTo(NextStep.RINSE);
            ClaimFile clean = desk.act("EX-1", (file, now) -> new Act.Rinsed("Sam Shop", 2), Optional.empty());
            assertThat(NextStep.of(clean)).isEqualTo(NextStep.TEST);
            ClaimFile outline = new ClaimShelf(store).outlines().get(0);
            assertThat(NextStep.of(outline)).isEqualTo(NextStep.COMPLETE_INTAKE);
            assertThat(NextStep.ofOutline(outline, false)).isEqualTo(NextStep.TEST);
            assertThat(NextStep.ofOutline(outline, true)).isEqualTo(NextStep.FIND);
        }
    }

    @Test
    void eachStepIsSomebodysMove() {
        assertThat(NextStep.DECIDE.whose()).isEqualTo(NextStep.Whose.DESK);
        assertThat(NextStep.FIND.whose()).isEqualTo(NextStep.Whose.TECHNICIAN);
        assertThat(NextStep.TEST.whose()).isEqualTo(NextStep.Whose.STAND);
    }

    @Test
    void onlyCategoriesThatTheRunsSayAgree() {
        assertThat(FindingFit.of(tested().file(), Set.of("wiggle-12v-pump")).agreeing())
                .containsExactlyInAnyOrder(Category.C1, Category.C2, Category.C3, Category.C8);
        InventedClaim within = new InventedClaim().run("quick-12v-pump", Verdict.PASS);
        FindingFit fit = FindingFit.of(within.file(), Set.of("wiggle-12v-pump"));
        assertThat(fit.agreeing()).containsExactly(Category.C4);
        assertThat(fit.provoked()).isFalse();
        assertThat(FindingFit.of(within.seen(Seen.PLANTER_CHECK).file(), Set.of("quick-12v-pump")))
                .isEqualTo(new FindingFit(Set.of(Category.C4, Category.C7), true));
        assertThat(FindingFit.of(new InventedClaim().file(), Set.of()).agreeing())
                .containsExactly(Category.C6);
    }

    private static InventedClaim tested() {
        return new InventedClaim().run("quick-12v-pump", Verdict.FAIL);
    }
}
