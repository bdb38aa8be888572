package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.ui.WindowTest;

final class ScreenWatchTest extends WindowTest {
    /** The screen's thread is held until the watch has seen it, however long that takes here; then it lets go and is told. */
    @Test
    void aThreadThatIsHeldUpIsSeen() throws Exception {
        AtomicInteger longest = new AtomicInteger();
        CountDownLatch told = new CountDownLatch(1);
        try (ScreenWatch watch = new ScreenWatch(millis -> {
            longest.accumulateAndGet(millis, Math::max);
            told.countDown();
        })) {
            assertThat(watch).isNotNull();
            Platform.runLater(ScreenWatchTest::holdUp);
            assertThat(told.await(20, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(longest.get()).isGreaterThanOrEqualTo(100).isLessThan(20_000);
    }

    private static void holdUp() {
        try {
            TimeUnit.MILLISECONDS.sleep(700);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
