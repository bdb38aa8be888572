package org.pumpwright.host.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CopperWireTest {
    /** Ohms of 1000 ft at 20 °C from the published table of the American wire gauge, solid annealed copper. */
    @ParameterizedTest
    @CsvSource({"16, 4.016", "14, 2.525", "12, 1.588", "10, 0.9989", "6, 0.3951"})
    void theTableOfTheWireGaugeComesOut(int gauge, double ohmsOfThousandFeet) {
        assertThat(new CopperWire(gauge, 304.8).ohms())
                .isCloseTo(ohmsOfThousandFeet, within(0.001 * ohmsOfThousandFeet));
    }
}
