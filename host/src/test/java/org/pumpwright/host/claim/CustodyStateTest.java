package org.pumpwright.host.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CustodyStateTest {
    @Test
    void aMoveThatIsNotAllowedIsRefusedWithWhatIs() {
        assertThatThrownBy(() -> CustodyRules.check(new InventedClaim().file(), CustodyState.SCRAPPED))
                .isInstanceOf(RefusedException.class)
                .hasMessage(
                        "claim EX-1 is received and can't go to scrapped. From there is allowed: quarantined, tested, returned.");
    }

    @Test
    void nothingIsCalledTestedWithoutARun() {
        assertThatThrownBy(() -> CustodyRules.check(new InventedClaim().file(), CustodyState.TESTED))
                .hasMessageContaining("pumpwright accept --claim EX-1");
    }

    @Test
    void whatLeftTheShopComesBackAsANewClaim() {
        assertThat(CustodyState.RETURNED.next()).isEmpty();
        assertThat(CustodyState.SCRAPPED.isOut()).isTrue();
        assertThat(CustodyState.TO_FACTORY.next()).containsExactly(CustodyState.RETURNED, CustodyState.SCRAPPED);
    }

    @Test
    void everyStateButTheLastLeadsSomewhereAndIsReached() {
        for (CustodyState state : CustodyState.values()) {
            boolean reached = java.util.Arrays.stream(CustodyState.values())
                    .anyMatch(from -> from.next().contains(state));
            assertThat(reached || state == CustodyState.RECEIVED)
                    .as(state.word())
                    .isTrue();
            assertThat(state.next().isEmpty()).as(state.word()).isEqualTo(state.isOut());
        }
    }
}
