package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.ui.WindowTest;

/** Which plan carries out a next test. */
final class NextPlanTest {
    @TempDir
    Path records;

    private Shelf shelf;
    private List<Plan> plans;

    @BeforeEach
    void read() throws Exception {
        shelf = WindowTest.services(records).shelf();
        plans = shelf.plans();
    }

    @Test
    void aTestThatAPlanCarriesOutNamesThatPlan() throws Exception {
        assertThat(next("quick-12v-pump", "measure the winding with the shaft in 5 positions"))
                .contains("restart-12v-pump");
        assertThat(next("quick-12v-pump", "bend the lead at plug and strain relief while it runs at 50 %"))
                .contains("wiggle-12v-pump");
        assertThat(next("valve-sweep", "open the mechanical override slowly")).contains("override-split");
    }

    @Test
    void aTestThatIsDoneOnceMoreKeepsItsPlan() throws Exception {
        assertThat(next("full-12v-pump", "put that right, then run again")).contains("full-12v-pump");
        assertThat(next("harness-drop", "clean it and repeat")).contains("harness-drop");
    }

    @Test
    void aTestForHandsHasNoPlan() throws Exception {
        assertThat(next("quick-12v-pump", "look at the arrow")).isEmpty();
    }

    private Optional<String> next(String done, String test) throws Exception {
        return NextPlan.of(test, shelf.plan(done), plans).map(Plan::id);
    }
}
