package org.pumpwright.host.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class UncertainTest {
    @Test
    void independentPartsAddAsThePublishedExampleDoes() {
        // JCGM 100:2008, H.1.6: the end gauge's components of 25, 9.7, 2.9 and 16.6 nm give u = 32 nm, and with 18,
        // 25.6,
        // 50 and 2 degrees of freedom an effective 16 (rounded down).
        Uncertain length =
                new Uncertain(50_000_838, 25, 18).with(9.7, 25.6).with(2.9, 50).with(16.6, 2);

        assertThat(length.standardUncertainty()).isCloseTo(32, within(0.5));
        assertThat(Math.floor(length.degreesOfFreedom())).isEqualTo(16);
    }

    @Property(seed = "3")
    void theOrderOfPartsDoesNotMatter(
            @ForAll @DoubleRange(min = 0.01, max = 10) double a, @ForAll @DoubleRange(min = 0.01, max = 10) double b) {
        Uncertain one = new Uncertain(1, a, 5).with(b, 9);
        Uncertain other = new Uncertain(1, b, 9).with(a, 5);

        assertThat(one.standardUncertainty()).isCloseTo(other.standardUncertainty(), within(1e-12));
        assertThat(one.degreesOfFreedom()).isCloseTo(other.degreesOfFreedom(), within(1e-9));
        assertThat(one.degreesOfFreedom()).isBetween(5 - 1e-9, 14 + 1e-9);
    }

    @Test
    void exactlyKnownPartsKeepTheDegreesOfFreedomInfinite() {
        assertThat(Uncertain.of(5, 0.1).with(0.2, Double.POSITIVE_INFINITY).degreesOfFreedom())
                .isInfinite();
        assertThat(Uncertain.of(5, 0).with(0, 3).degreesOfFreedom()).isInfinite();
    }

    @Test
    void aConversionCarriesTheUncertaintyAlong() {
        Uncertain flow = new Uncertain(100, 2, 7).times(-0.5);

        assertThat(flow).isEqualTo(new Uncertain(-50, 1, 7));
        assertThat(flow.relative()).isCloseTo(0.02, within(1e-15));
    }
}
