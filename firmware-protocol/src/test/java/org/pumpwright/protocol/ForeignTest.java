package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ForeignTest {
    private static Received.Foreign golden(String name) {
        return GoldenFrame.all().stream()
                .filter(golden -> golden.name().equals(name))
                .map(golden -> Heard.in(golden.frame().toArray()).get(0))
                .map(Received.Foreign.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBoardOfAnotherVersionTellsItsIdAndFirmware() {
        assertThat(golden("identity-of-version-2").board())
                .contains(new ForeignBoard(2, UniqueId.parse("00112233445566ff"), 1, 0));
    }

    @Test
    void aHelloOfAnotherVersionIsKnownAsOneAndNoOtherCommandIs() {
        assertThat(golden("hello-of-version-2").isHello()).isTrue();
        assertThat(golden("make-safe-of-version-2").isHello()).isFalse();
        assertThat(golden("hello-of-version-2").board()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9})
    void anIdentityOfAnotherVersionThatIsTooShortTellsNothing(int length) {
        assertThat(new Received.Foreign(3, 0x81, 0, Octets.of(new byte[length])).board())
                .isEmpty();
    }

    @Test
    void tenBytesAreEnough() {
        byte[] payload = {0, 0, 0, 0, 0, 0, 0, 1, (byte) 200, 3};
        assertThat(new Received.Foreign(255, 0x81, 0, Octets.of(payload)).board())
                .contains(new ForeignBoard(255, new UniqueId(1), 200, 3));
    }
}
