package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.trace.Ending;

/** STOP ends the run from every key and from the button, whatever lies over the screen, and the window stays usable. */
@Timeout(600)
final class StopInARunTest extends JourneyTest {
    private static final double PACE = 8;
    private static final BenchKeys PEDALS =
            new BenchKeys(List.of(KeyCode.ESCAPE, KeyCode.PAUSE, KeyCode.F12, KeyCode.PAGE_DOWN), KeyCode.F9);

    private enum Way {
        ESC,
        PAUSE,
        F12,
        PEDAL,
        MOUSE
    }

    private void stop(Way way) throws Exception {
        switch (way) {
            case ESC -> hands.press(KeyCode.ESCAPE);
            case PAUSE -> hands.press(KeyCode.PAUSE);
            case F12 -> hands.press(KeyCode.F12);
            case PEDAL -> hands.press(KeyCode.PAGE_DOWN);
            case MOUSE ->
                onScreen(() -> {
                    pressMouse(button(window().scene(), "stop"));
                    return true;
                });
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyWayOfStoppingEndsTheRunAndAnotherCanBegin(Way way) throws Exception {
        openSimulated(PACE, PEDALS, opened::add);
        job.upToTheRun("SN-1");
        job.awaitMeasuring();

        stop(way);

        assertStoppedAndKept(": it was the wrong unit or the wrong plan", KeyCode.F4);
        job.upToTheRun("SN-2");
        job.awaitMeasuring();
    }

    @Test
    void aQuestionOfThePlanDoesNotHoldStopUp() throws Exception {
        openSimulated(0, PEDALS, opened::add);
        job.receive("SN-1", "Lead and plug");
        job.makeReady();
        job.begin();
        hands.await("the plan's question", hands::isAsked);

        stop(Way.ESC);

        assertStoppedAndKept("", KeyCode.F6);
    }

    @Test
    void neitherHelpNorTheQuestionWhetherToEndHoldsStopUp() throws Exception {
        openSimulated(PACE, PEDALS, opened::add);
        job.upToTheRun("SN-1");
        job.awaitMeasuring();
        hands.press(KeyCode.F7);
        hands.act(KeyCode.F6);
        hands.await("the question whether to end", hands::isAsked);

        stop(Way.PAUSE);

        assertStoppedAndKept("", KeyCode.F6);
        assertThat(onScreen(() -> window().scene().lookup("#help").isVisible())).isTrue();
    }

    @Test
    void aPaperThatTakesLongDoesNotHoldStopUp() throws Exception {
        CountDownLatch printed = new CountDownLatch(1);
        CountDownLatch printing = new CountDownLatch(1);
        openSimulated(0, PEDALS, paper -> {
            printing.countDown();
            await(printed);
        });
        job.whole("SN-1");
        hands.act(KeyCode.F2);
        assertThat(printing.await(180, TimeUnit.SECONDS)).isTrue();
        job.receive("SN-2", "Lead and plug");
        job.makeReady();
        job.begin();
        hands.await("the plan's question", hands::isAsked);

        stop(Way.F12);

        hands.await("the question why", job::asksWhy);
        printed.countDown();
        hands.press(KeyCode.F6);
        job.awaitEnd();
        assertThat(kept(folder.resolve("records")).get(1).ending().kind()).isEqualTo(Ending.Kind.STOPPED_BY_PERSON);
    }

    @Test
    void aStopBeforeTheStandIsEvenReachedIsNotLost() throws Exception {
        openSimulated(PACE, PEDALS, opened::add);
        job.receive("SN-1");
        job.makeReady();
        onScreen(() -> {
            press(window().scene(), KeyCode.F1);
            press(window().scene(), KeyCode.ESCAPE);
            return true;
        });

        assertStoppedAndKept("", KeyCode.F6);
        assertThat(kept(folder.resolve("records")).get(0).trace().samples()).isEmpty();
    }

    @Test
    void theStandsOwnCheckIsStoppedToo() throws Exception {
        openSimulated(1, PEDALS, opened::add);
        job.receive("SN-1");
        hands.act(KeyCode.F2);
        hands.awaitWords("The contactor closes");

        stop(Way.ESC);

        hands.await("a check that is over", () -> hands.canDo(KeyCode.F2));
        assertThat(hands.canDo(KeyCode.F1)).isFalse();
        assertThat(hands.banner()).contains("STOP was pressed at");
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(180, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void assertStoppedAndKept(String why, KeyCode answer) throws Exception {
        hands.await("the question why", job::asksWhy);
        assertThat(hands.banner()).startsWith("STOP was pressed at");
        hands.press(answer);
        job.awaitEnd();
        RunRecord run = kept(folder.resolve("records")).get(0);
        assertThat(run.ending())
                .isEqualTo(new Ending(Ending.Kind.STOPPED_BY_PERSON, "STOP was pressed in the window" + why));
        assertThat(run.grade().verdict()).isEqualTo(Verdict.INVALID);
        hands.understandAll();
        job.toVerdict();
        assertThat(hands.says()).contains("SN-1");
    }
}
