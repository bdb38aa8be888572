package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.run.RunEvent;

/** What a run tells on its way to the screen, and answers on their way back. */
final class RunFeedTest {
    private final List<String> taken = new ArrayList<>();

    private final RunFeed.Taker taker = new RunFeed.Taker() {
        @Override
        public void begins(Plan plan, Optional<HealthyCurve> curve) {
            taken.add("begins");
        }

        @Override
        public void heard(RunEvent event) {
            taken.add(event.getClass().getSimpleName());
        }

        @Override
        public void asksWhy() {
            taken.add("why");
        }

        @Override
        public void show() {
            taken.add("show");
        }
    };

    @Test
    void everythingArrivesInItsOrderAndIsShownAfterwards() {
        RunFeed feed = new RunFeed(Background.inline(trouble -> {}), taker);
        feed.heard(new RunEvent.Began(5, 60));
        feed.said(Optional.of("it leaked"));

        assertThat(feed.whyStopped()).contains("it leaked");
        assertThat(taken).containsExactly("Began", "show", "why", "show");
    }

    @Test
    void anInterruptedRunIsKeptWithoutAReason() {
        RunFeed feed = new RunFeed(Background.inline(trouble -> {}), taker);
        Thread.currentThread().interrupt();

        assertThat(feed.whyStopped()).isEmpty();
        assertThat(Thread.interrupted()).isTrue();
    }

    @Test
    void anAnswerToAnOlderQuestionIsNoneToTheNext() {
        List<Ask> asked = new ArrayList<>();
        DeskOperator person = new DeskOperator(asked::add);
        Ask question = new Ask("prime", "Primed?", List.of(new Ask.Answer("yes", Optional.empty())), Map.of());
        person.answered("yes");
        person.ask(question);

        assertThat(person.answer()).isEmpty();
        person.answered("yes");
        assertThat(person.answer()).contains("yes");
        assertThat(person.answer()).isEmpty();
        assertThat(asked).containsExactly(question);
    }

    @Test
    void aPauseIsWantedOnce() {
        DeskOperator person = new DeskOperator(ask -> {});
        person.pauseSoon();

        assertThat(person.wantsPause()).isTrue();
        assertThat(person.wantsPause()).isFalse();
    }

    @Test
    void papersAreOpenedByTheDesktopOfTheMachine() {
        assertThat(new DesktopOpener("Linux").command()).containsExactly("xdg-open");
        assertThat(new DesktopOpener("Mac OS X").command()).containsExactly("open");
        assertThat(new DesktopOpener("Windows 11").command()).startsWith("rundll32");
    }
}
