package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.Stream;

final class WireTimingTest {
    @Test
    void theStandardStreamIsOfWholeSamples() {
        assertThat(WireTiming.STANDARD.stream()).isEqualTo(Stream.every(20));
    }

    @Test
    void anotherStreamAndAnotherPatienceLeaveEachOtherAlone() {
        WireTiming timing = WireTiming.STANDARD.withSamples(2, SampleKind.SHORT).withHello(Duration.ofSeconds(1));

        assertThat(timing.stream()).isEqualTo(new Stream(2, SampleKind.SHORT));
        assertThat(timing.hello()).isEqualTo(Duration.ofSeconds(1));
        assertThat(timing.keepAlive()).isEqualTo(WireTiming.STANDARD.keepAlive());
    }

    @Test
    void aStandWithoutSamplesIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WireTiming.STANDARD.withSamples(0, SampleKind.WHOLE))
                .withMessage("the sample period is 0 ms, it must be 1 to 1000 ms");
    }

    @Test
    void aPeriodThatWouldLookLikeSilenceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WireTiming.STANDARD.withSamples(500, SampleKind.WHOLE))
                .withMessage("samples may stay away for 500 ms, that must be more than their period of 500 ms");
    }
}
