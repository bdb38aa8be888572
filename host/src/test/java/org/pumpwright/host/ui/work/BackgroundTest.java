package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.ui.WindowTest;

final class BackgroundTest extends WindowTest {
    private final List<Object> told = new ArrayList<>();

    @Test
    void workRunsBesideTheScreenAndItsResultComesOnIt() throws Exception {
        try (Background background = Background.threads(told::add)) {
            CountDownLatch done = new CountDownLatch(1);
            background.run(Platform::isFxApplicationThread, onScreen -> {
                told.add(onScreen);
                told.add(Platform.isFxApplicationThread());
                done.countDown();
            });
            assertThat(done.await(20, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(told).containsExactly(false, true);
    }

    @Test
    void aFailureThatNobodyTakesGoesToTheBanner() {
        Background background = Background.inline(told::add);
        background.run(
                () -> {
                    throw new OrderException("there is no stand 'x'");
                },
                result -> told.add("done"));
        assertThat(told).containsExactly(Trouble.named("order", "there is no stand 'x'"));
    }

    @Test
    void workThatStopEndedIsNoTrouble() {
        Background background = Background.inline(told::add);
        background.run(
                () -> {
                    throw new StandException(StandException.Trouble.INTERRUPTED, "COM7", "waiting was interrupted");
                },
                result -> told.add("done"));
        assertThat(told).isEmpty();
    }

    @Test
    void cancelledWorkIsInterruptedAndItsResultDropped() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch interrupted = new CountDownLatch(1);
        try (Background background = Background.threads(told::add)) {
            Job job = background.run(
                    () -> {
                        begun.countDown();
                        try {
                            new CountDownLatch(1).await();
                        } catch (InterruptedException e) {
                            interrupted.countDown();
                        }
                        return "result";
                    },
                    told::add);
            assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
            job.cancel();
            assertThat(interrupted.await(20, TimeUnit.SECONDS)).isTrue();
            job.await();
            settle();
        }
        assertThat(told).isEmpty();
    }

    @Test
    void whatIsRepeatedEndsWhenItIsCancelledAndIsClosed() throws Exception {
        CountDownLatch turns = new CountDownLatch(3);
        CountDownLatch closed = new CountDownLatch(1);
        try (Background background = Background.threads(told::add)) {
            Job job = background.repeat(() -> watch(turns, closed), told::add);
            assertThat(turns.await(20, TimeUnit.SECONDS)).isTrue();
            job.cancel();
            assertThat(closed.await(20, TimeUnit.SECONDS)).isTrue();
            job.await();
            settle();
        }
        assertThat(told).isEmpty();
    }

    private static Background.Watch watch(CountDownLatch turns, CountDownLatch closed) {
        return new Background.Watch() {
            @Override
            public void once() {
                turns.countDown();
            }

            @Override
            public void close() {
                closed.countDown();
            }
        };
    }
}
