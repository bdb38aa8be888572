package org.pumpwright.host.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.Reader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.StopButton;

@Timeout(30)
final class TerminalOperatorTest {
    private static final Ask OUTLET = question("outlet", "done", "leaks");
    private static final Ask PRESSED = question("pressed", "p", "q");

    private final PipedWriter keyboard = new PipedWriter();
    private final StopButton stop = new StopButton();
    private Reader typed = Reader.nullReader();

    private static Ask question(String name, String... words) {
        List<Ask.Answer> answers = java.util.Arrays.stream(words)
                .map(word -> new Ask.Answer(word, Optional.empty()))
                .toList();
        return new Ask(name, "?", answers, Map.of());
    }

    @BeforeEach
    void connect() throws IOException {
        typed = new PipedReader(keyboard);
    }

    private TerminalOperator operator(Map<String, String> given) {
        TerminalOperator operator = new TerminalOperator(typed, true, given, stop);
        operator.listen();
        return operator;
    }

    private void type(String line) throws IOException {
        keyboard.write(line + "\n");
        keyboard.flush();
    }

    private static String answer(TerminalOperator operator) {
        Optional<String> answer = operator.answer();
        while (answer.isEmpty()) {
            LockSupport.parkNanos(1_000_000);
            answer = operator.answer();
        }
        return answer.get();
    }

    private static void await(BooleanSupplier condition) {
        while (!condition.getAsBoolean()) {
            LockSupport.parkNanos(1_000_000);
        }
    }

    @Test
    void aTypedLineAnswersTheOpenQuestionOnce() throws IOException {
        TerminalOperator operator = operator(Map.of());
        operator.ask(OUTLET);
        assertThat(operator.answer()).isEmpty();

        type("done");

        assertThat(answer(operator)).isEqualTo("done");
        assertThat(operator.answer()).isEmpty();
    }

    @Test
    void whatIsNoAnswerComesThroughSoThatItCanBeSaid() throws IOException {
        TerminalOperator operator = operator(Map.of());
        operator.ask(OUTLET);

        type("what?");

        assertThat(answer(operator)).isEqualTo("what?");
    }

    @Test
    void whatIsTypedBeforeAQuestionDoesNotAnswerIt() throws IOException {
        TerminalOperator operator = operator(Map.of());
        type("done");
        type("p");
        await(operator::wantsPause);

        operator.ask(OUTLET);

        assertThat(operator.answer()).isEmpty();
        assertThat(stop.pressed()).isEmpty();
    }

    @Test
    void aLonePPausesOnceHoweverItIsWritten() throws IOException {
        TerminalOperator operator = operator(Map.of());

        type(" P ");

        await(operator::wantsPause);
        assertThat(operator.wantsPause()).isFalse();
    }

    @Test
    void aPWhileAQuestionIsOpenPausesLaterUnlessItIsAnAnswer() throws IOException {
        TerminalOperator operator = operator(Map.of());
        operator.ask(OUTLET);
        type("p");
        await(operator::wantsPause);
        assertThat(operator.answer()).isEmpty();

        operator.ask(PRESSED);
        type("p");

        assertThat(answer(operator)).isEqualTo("p");
        assertThat(operator.wantsPause()).isFalse();
    }

    @Test
    void anAnswerGivenBeforehandIsTakenWithoutTypingButOnlyOnce() throws IOException {
        TerminalOperator operator = operator(Map.of("outlet", "leaks"));

        operator.ask(OUTLET);
        assertThat(operator.answer()).contains("leaks");
        operator.ask(OUTLET);
        assertThat(operator.answer()).isEmpty();
        type("done");

        assertThat(answer(operator)).isEqualTo("done");
    }

    @Test
    void withNobodyThereOnlyGivenAnswersCount() {
        TerminalOperator operator = new TerminalOperator(Reader.nullReader(), false, Map.of("outlet", "done"), stop);
        operator.listen();
        assertThat(operator.isThere()).isTrue();

        operator.ask(OUTLET);

        assertThat(operator.answer()).contains("done");
        assertThat(operator.isThere()).isFalse();
        assertThat(stop.pressed()).isEmpty();
    }

    @Test
    void aQuestionWithoutAGivenAnswerStopsTheRunWhenNobodyIsThere() {
        TerminalOperator operator = new TerminalOperator(Reader.nullReader(), false, Map.of("outlet", "done"), stop);

        operator.ask(PRESSED);

        assertThat(stop.pressed())
                .contains("nobody is there to answer 'pressed': run this plan at a terminal, or give its answers with"
                        + " --answer");
    }

    @Test
    void aTerminalThatGoesAwayWhileAQuestionIsOpenStopsTheRun() throws IOException {
        TerminalOperator operator = operator(Map.of());
        operator.ask(OUTLET);

        keyboard.close();

        await(() -> stop.pressed().isPresent());
        assertThat(operator.isThere()).isFalse();
    }

    @Test
    void aTerminalThatIsGoneBeforeTheQuestionStopsTheRunThen() throws IOException {
        TerminalOperator operator = operator(Map.of());
        keyboard.close();
        await(() -> !operator.isThere());
        assertThat(stop.pressed()).isEmpty();

        operator.ask(OUTLET);

        assertThat(stop.pressed()).isPresent();
    }
}
