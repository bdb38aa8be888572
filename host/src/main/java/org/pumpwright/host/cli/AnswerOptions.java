package org.pumpwright.host.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Plan;
import picocli.CommandLine.Option;

/** Answers to a plan's questions, given beforehand. */
final class AnswerOptions {
    @Option(
            names = "--answer",
            paramLabel = "STEP=WORD",
            description = "An answer to the question of that step, given beforehand. May be given several times.")
    Map<String, String> answers = new LinkedHashMap<>();

    /**
     * Makes sure that every answer belongs to a question, before anything moves.
     *
     * @throws OrderException naming what the plan asks, or the answers that it knows
     */
    void check(Plan plan) throws OrderException {
        List<Ask> questions = plan.steps().stream()
                .filter(Ask.class::isInstance)
                .map(Ask.class::cast)
                .toList();
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            Optional<Ask> question = questions.stream()
                    .filter(ask -> ask.name().equals(answer.getKey()))
                    .findFirst();
            check(plan, questions, question, answer);
        }
    }

    private static void check(Plan plan, List<Ask> questions, Optional<Ask> question, Map.Entry<String, String> answer)
            throws OrderException {
        if (question.isEmpty()) {
            List<String> names = questions.stream().map(Ask::name).toList();
            throw new OrderException("plan '%s' asks nothing by the name '%s'. %s."
                    .formatted(
                            plan.id(),
                            answer.getKey(),
                            names.isEmpty()
                                    ? "It has no questions"
                                    : "Its questions are: " + String.join(", ", names)));
        }
        if (question.get().answer(answer.getValue()).isEmpty()) {
            List<String> words =
                    question.get().answers().stream().map(Ask.Answer::word).toList();
            throw new OrderException("'%s' is no answer to '%s' of plan '%s'. Known are: %s."
                    .formatted(answer.getValue(), answer.getKey(), plan.id(), String.join(", ", words)));
        }
    }
}
