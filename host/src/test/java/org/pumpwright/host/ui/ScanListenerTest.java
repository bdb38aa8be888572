package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ScanListenerTest {
    private long millis = 1_000_000;
    private final ScanListener listener = new ScanListener(() -> Instant.ofEpochMilli(millis));

    @Test
    void quickTypingThatEndsWithEnterIsAScan() {
        assertThat(typed("SN-1042\r", 49)).contains("SN-1042");
    }

    @Test
    void aPersonIsNoScanner() {
        assertThat(typed("SN-1042\r", 50)).isEmpty();
    }

    @Test
    void threeCharactersAreTooFew() {
        assertThat(typed("SN1\r", 5)).isEmpty();
        assertThat(typed("SN12\r", 5)).contains("SN12");
    }

    @Test
    void whatAPersonTypedBeforeIsNotPartOfTheScan() {
        typed("ab", 300);
        millis += 300;
        assertThat(typed("SN-1042\r", 5)).contains("SN-1042");
    }

    @Test
    void enterLongAfterTheLastCharacterIsAPersons() {
        typed("SN-1042", 5);
        millis += 500;
        assertThat(listener.typed('\r')).isEmpty();
    }

    @Test
    void twoScansAreTwo() {
        assertThat(typed("SN-1042\r", 5)).contains("SN-1042");
        assertThat(typed("SN-1043\r", 5)).contains("SN-1043");
    }

    @Test
    void aClockThatIsSetBackEndsTheScanThatWasGoingOn() {
        typed("SN-", 5);
        millis -= 3_600_000;
        assertThat(typed("1042\r", 5)).contains("1042");
    }

    private Optional<String> typed(String characters, int gapMillis) {
        Optional<String> last = Optional.empty();
        for (char character : characters.toCharArray()) {
            last = listener.typed(character);
            millis += gapMillis;
        }
        return last;
    }
}
