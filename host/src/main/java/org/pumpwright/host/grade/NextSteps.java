package org.pumpwright.host.grade;

import java.util.List;
import java.util.regex.Pattern;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.grade.cause.NextStep;
import org.pumpwright.host.grade.cause.NextStep.Means;

/** How what a grade asks for next is carried out. Thread-safe. */
public final class NextSteps {
    private static final String RUN_THE_PLAN = "run the plan ";
    private static final Pattern LAST_RETEST = Pattern.compile("run \\d+ of \\d+ was the last retest.*");

    private NextSteps() {}

    /**
     * The next step after a grade, also one that was read from a record.
     *
     * @param kind of the unit
     */
    public static NextStep after(UnitKind kind, Grade grade) {
        return switch (grade.verdict()) {
            case PASS, NOT_TESTED -> NextStep.HANDS;
            // It says nothing of the unit: when the stand is right, the same once more.
            case INVALID -> NextStep.AGAIN;
            case INCONCLUSIVE -> afterAnOpenVerdict(grade.nextTest());
            case FAIL -> NextStep.of(kind, grade.nextTest());
        };
    }

    /** A retest of the shop's ladder changes one thing and repeats the plan, unless a plan is named or a person must decide. */
    private static NextStep afterAnOpenVerdict(String sentence) {
        if (sentence.startsWith(RUN_THE_PLAN)) {
            String[] plans = sentence.substring(RUN_THE_PLAN.length()).split(" or ");
            return new NextStep(Means.PLAN, List.of(plans));
        }
        boolean person = sentence.isBlank() || LAST_RETEST.matcher(sentence).matches();
        return person ? NextStep.HANDS : NextStep.AGAIN;
    }
}
