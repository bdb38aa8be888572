package org.pumpwright.host.run;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.trace.Answer;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Stretch;

/**
 * Asks a person and waits for the answer with the stand safe; only the answer arms it again. Confined to the run thread.
 */
final class Asking {
    private static final Ask PAUSE =
            new Ask("pause", "The run is paused. Go on?", List.of(new Ask.Answer("go", Optional.empty())), Map.of());

    private final Recorder recorder;
    private final Operator operator;

    Asking(Recorder recorder, Operator operator) {
        this.recorder = recorder;
        this.operator = operator;
    }

    void pauseIfWanted() throws StandException, RunEnded {
        if (operator.wantsPause()) {
            carryOut(PAUSE);
        }
    }

    void carryOut(Ask ask) throws StandException, RunEnded {
        if (!operator.isThere()) {
            throw new RunEnded(
                    Ending.Kind.STOPPED_BY_PERSON,
                    "nobody is there to answer '%s': run this plan at a terminal, or give its answers with --answer"
                            .formatted(ask.name()));
        }
        long from = recorder.last().boardNanos();
        recorder.standSafe();
        operator.ask(ask);
        recorder.tell(new RunEvent.Asked(ask));
        Ask.Answer answer = waitFor(ask);
        recorder.done(new Answer(ask.name(), ask.question(), answer.word(), from));
        if (answer.end().isPresent()) {
            Ask.End end = answer.end().get();
            throw new RunEnded(kind(end.blame()), end.reason());
        }
        recorder.tell(new RunEvent.Answered(ask, answer.word()));
        recorder.arm();
        recorder.done(
                new Stretch(ask.name(), Stretch.Kind.WAIT, from, recorder.last().boardNanos()));
    }

    private Ask.Answer waitFor(Ask ask) throws StandException, RunEnded {
        while (true) {
            recorder.idle();
            Optional<String> given = operator.answer();
            if (given.isPresent()) {
                Optional<Ask.Answer> answer = ask.answer(given.get());
                if (answer.isPresent()) {
                    return answer.get();
                }
                operator.ask(ask);
                recorder.tell(new RunEvent.NotAnAnswer(ask, given.get()));
            }
        }
    }

    private static Ending.Kind kind(Ask.Blame blame) {
        return switch (blame) {
            case UNIT -> Ending.Kind.UNIT_OUT_OF_BOUNDS;
            case STAND -> Ending.Kind.STAND_UNFIT;
            case PERSON -> Ending.Kind.STOPPED_BY_PERSON;
        };
    }
}
