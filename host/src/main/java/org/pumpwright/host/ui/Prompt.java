package org.pumpwright.host.ui;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;

/**
 * A question to the person at the bench. It lies over the screen, never over STOP, and its answers take the place of the six actions until
 * one is given. JavaFX thread only.
 *
 * @param title the question
 * @param text what to know before answering
 * @param more something to fill in or to look at, below the text
 * @param answers six at most; each closes the prompt before it does what it does
 */
public record Prompt(
        ObservableValue<String> title, ObservableValue<String> text, Optional<Node> more, List<Action> answers) {
    public Prompt {
        answers = List.copyOf(answers);
        if (answers.isEmpty() || answers.size() > ActionBar.PLACES) {
            throw new IllegalArgumentException(
                    "a prompt has %d answers, 1 to %d can be given".formatted(answers.size(), ActionBar.PLACES));
        }
    }

    /** A question with nothing to fill in. */
    public static Prompt of(ObservableValue<String> title, ObservableValue<String> text, Action... answers) {
        return new Prompt(title, text, Optional.empty(), List.of(answers));
    }
}
