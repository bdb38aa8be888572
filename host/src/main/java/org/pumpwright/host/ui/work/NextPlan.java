package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.NextSteps;
import org.pumpwright.host.grade.cause.NextStep;
import org.pumpwright.host.plan.Plan;

/**
 * What the program can begin as the next test. Thread-safe.
 *
 * @param step how the test is carried out
 * @param plan the plan to begin; empty when none is, or the shop has not got it
 */
public record NextPlan(NextStep step, Optional<Plan> plan) {
    /** Nothing to begin. */
    static final NextPlan NONE = new NextPlan(NextStep.HANDS, Optional.empty());

    /**
     * What follows a grade.
     *
     * @param done the plan that the unit went through
     * @param plans what the shop has
     */
    static NextPlan of(Grade grade, Plan done, List<Plan> plans) {
        NextStep step = NextSteps.after(done.kind(), grade);
        return new NextPlan(
                step,
                switch (step.means()) {
                    case AGAIN -> Optional.of(done);
                    case PLAN -> first(step.plans(), done, plans);
                    case BUCKET, HANDS -> Optional.empty();
                });
    }

    private static Optional<Plan> first(List<String> wanted, Plan done, List<Plan> plans) {
        return wanted.stream()
                .flatMap(id -> plans.stream().filter(plan -> plan.id().equals(id) && plan.kind() == done.kind()))
                .findFirst();
    }

    /** Whether a button can begin it. */
    public boolean begins() {
        return plan.isPresent() || step.means() == NextStep.Means.BUCKET;
    }

    /** How it is done, for a line below the test. */
    Word how() {
        return switch (step.means()) {
            case AGAIN -> Word.of("ui.verdict.how.again");
            case BUCKET -> Word.of("ui.verdict.how.bucket");
            case HANDS -> Word.of("ui.verdict.how.hands");
            case PLAN ->
                plan.map(each -> Word.of("ui.verdict.how.plan", Word.stored(each.title())))
                        .orElse(Word.of("ui.verdict.how.no_plan", String.join(", ", step.plans())));
        };
    }
}
