package org.pumpwright.host.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that a person is to do or to look at, with the answers that he may give. The stand is safe meanwhile: hands may
 * be at the unit. Thread-safe.
 *
 * @param name of the step
 * @param question what to do or to look at, in plain words
 * @param answers at least one
 * @param simulated what the first answer does to a simulated unit: its settings by their names
 * @param along the wire along which the voltmeter is put, where it is
 */
public record Ask(
        String name, String question, List<Answer> answers, Map<String, Double> simulated, Optional<CopperWire> along)
        implements Step {
    public Ask {
        answers = List.copyOf(answers);
        simulated = Map.copyOf(simulated);
        if (answers.isEmpty()) {
            throw new IllegalArgumentException("question %s has no answers".formatted(name));
        }
    }

    /** A question that has nothing to do with a wire. */
    public Ask(String name, String question, List<Answer> answers, Map<String, Double> simulated) {
        this(name, question, answers, simulated, Optional.empty());
    }

    /**
     * An answer that may be given.
     *
     * @param word as it is typed
     * @param end how the run ends with it; empty where it goes on
     */
    public record Answer(String word, Optional<End> end) {}

    /** What an answer that ends the run says. */
    public record End(Blame blame, String reason) {}

    /** What an answer that ends the run speaks of. */
    public enum Blame {
        UNIT,
        STAND,
        /** Of nothing: the person wants to stop. */
        PERSON
    }

    /** The answer with this word, however it is capitalised. */
    public Optional<Answer> answer(String word) {
        return answers.stream()
                .filter(answer -> answer.word().equalsIgnoreCase(word.strip()))
                .findFirst();
    }

    @Override
    public double leastSeconds() {
        return 0;
    }
}
