package org.pumpwright.host.grade;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.ComplaintAnswer.Answer;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.rule.WordRule;
import org.pumpwright.host.trace.Ending;

/**
 * Whether what was found explains what the customer says. It looks at what the complaint is about, not at the verdict: a
 * unit may pass and leave the complaint open, or fail in a way that has nothing to do with it. Common practice, no source.
 * Thread-safe.
 */
final class ComplaintCheck {
    /** Less than this share of a healthy flow is as good as none. */
    private static final double AS_GOOD_AS_NONE = -0.9;

    private final GradingInput input;
    private final Verdict verdict;
    private final List<FeatureJudgement> features;
    private final List<Finding> findings;

    private ComplaintCheck(
            GradingInput input, Verdict verdict, List<FeatureJudgement> features, List<Finding> findings) {
        this.input = input;
        this.verdict = verdict;
        this.features = features;
        this.findings = findings;
    }

    static ComplaintAnswer answer(
            GradingInput input,
            Verdict verdict,
            List<String> reasons,
            List<FeatureJudgement> features,
            List<Finding> findings) {
        Optional<String> complaint = input.intake().complaint();
        if (complaint.isEmpty()) {
            return ComplaintAnswer.NO_COMPLAINT;
        }
        if (verdict == Verdict.INVALID || (features.isEmpty() && findings.isEmpty())) {
            return notAttempted("the run says nothing of the unit");
        }
        List<String> seen = SafetyFirst.observations(input);
        if (!seen.isEmpty() && !complaint.get().equals("leaks")) {
            return notAttempted("testing was stopped: " + String.join("; ", seen));
        }
        return new ComplaintCheck(input, verdict, features, findings).of(complaint.get(), reasons);
    }

    private ComplaintAnswer of(String complaint, List<String> reasons) {
        return switch (complaint) {
            case "no-flow" -> noFlow(reasons);
            case "low" -> low();
            case "surging" -> surging();
            case "wont-start" -> wontStart(reasons);
            case "quits-hot" -> byReading("thermal trip", "it cut out", "it did not cut out", "the soak was not run");
            case "leaks" -> leaks();
            case "blows-fuse" -> blowsFuse();
            case "reads-wrong" -> readsWrong();
            case "reads-with-no-flow" -> readsWithNoFlow();
            case "intermittent" ->
                byReading(
                        "drop-outs",
                        "the current fell away while it was held",
                        "nothing fell away while it was held",
                        "the lead was not moved");
            default -> notAttempted("this program knows no test for the complaint '" + complaint + "'");
        };
    }

    private static ComplaintAnswer yes(String why) {
        return new ComplaintAnswer(Answer.YES, why);
    }

    private static ComplaintAnswer partly(String why) {
        return new ComplaintAnswer(Answer.PARTLY, why);
    }

    private static ComplaintAnswer no(String why) {
        return new ComplaintAnswer(Answer.NO, why);
    }

    private static ComplaintAnswer notAttempted(String why) {
        return new ComplaintAnswer(Answer.NOT_ATTEMPTED, why);
    }

    private List<FeatureJudgement> flows() {
        return features.stream()
                .filter(f -> f.feature().quantity() == Feature.Kind.FLOW
                        && f.feature().onTheWayUp()
                        && f.limits().centre().isPresent())
                .toList();
    }

    /** Only what is judged: a point for information lies outside now and then on a healthy unit too. */
    private boolean anyFlow(FeatureJudgement.Decision decision) {
        return flows().stream().filter(FeatureJudgement::judged).anyMatch(f -> f.decision() == decision);
    }

    private ComplaintAnswer noFlow(List<String> reasons) {
        if (endedByUnit()) {
            return yes(reasons.get(0));
        }
        if (flows().isEmpty()) {
            return notAttempted("no flow was measured at a set point");
        }
        if (flows().stream().allMatch(f -> f.deviation() < AS_GOOD_AS_NONE)) {
            return yes("hardly any flow at any set point");
        }
        return anyFlow(FeatureJudgement.Decision.LOW)
                ? partly("there is flow, but less than a healthy unit gives")
                : no("it gives its flow here");
    }

    private ComplaintAnswer low() {
        if (flows().isEmpty()) {
            return notAttempted("no flow was measured at a set point");
        }
        if (anyFlow(FeatureJudgement.Decision.LOW)) {
            return yes("the flow is below that of a healthy unit");
        }
        return anyFlow(FeatureJudgement.Decision.NEAR_LOW)
                ? partly("the flow is near the lower limit")
                : no("the flow is that of a healthy unit");
    }

    private ComplaintAnswer surging() {
        Optional<FeatureJudgement> surge = features.stream()
                .filter(f -> f.feature().words().startsWith("surge"))
                .findFirst();
        boolean uneven = findings.stream()
                .anyMatch(f ->
                        f.outcome() instanceof Finding.Word word && word.word().startsWith("uneven"));
        if (surge.isPresent() && surge.get().failed()) {
            return yes("the " + surge.get().feature().words() + " is large");
        }
        if (uneven || surge.map(FeatureJudgement::near).orElse(false)) {
            return partly("the flow is uneven, though not beyond its limit");
        }
        return surge.isPresent() ? no("the flow is even here") : notAttempted("surging was not measured");
    }

    private ComplaintAnswer wontStart(List<String> reasons) {
        if (endedByUnit()) {
            return yes(reasons.get(0));
        }
        ComplaintAnswer starts = byReading("starts", "a start failed", "every start came", "");
        ComplaintAnswer duty = byReading("start duty", "it starts late or not at all", "it starts where it should", "");
        if (starts.answer() == Answer.YES || duty.answer() == Answer.YES) {
            return starts.answer() == Answer.YES ? starts : duty;
        }
        if (starts.answer() != Answer.NOT_ATTEMPTED) {
            return starts;
        }
        return duty.answer() == Answer.NOT_ATTEMPTED
                ? notAttempted("no start was watched")
                : partlyOr(duty, "one start is not ten: the plan with ten starts was not run");
    }

    private static ComplaintAnswer partlyOr(ComplaintAnswer answer, String missing) {
        return answer.answer() == Answer.NO ? new ComplaintAnswer(Answer.NO, answer.why() + "; " + missing) : answer;
    }

    private ComplaintAnswer leaks() {
        List<String> seen = SafetyFirst.observations(input);
        if (!seen.isEmpty()) {
            return yes(String.join("; ", seen));
        }
        return has("pressure, outlet closed")
                ? no("nothing was seen at the highest pressure")
                : notAttempted("nobody looked at the highest pressure");
    }

    private ComplaintAnswer blowsFuse() {
        if (endedByUnit()) {
            return yes("it drew so much that the run ended: " + input.ending().reason());
        }
        boolean high = features.stream()
                .anyMatch(f -> f.feature().quantity() == Feature.Kind.MOTOR_AMPS
                        && f.decision() == FeatureJudgement.Decision.HIGH);
        if (high) {
            return partly("it draws more than a healthy unit");
        }
        return flows().isEmpty() ? notAttempted("no current was measured at a set point") : no("its current is usual");
    }

    private ComplaintAnswer readsWrong() {
        if (flows().isEmpty()) {
            return verdict == Verdict.FAIL
                    ? yes("the readings fail")
                    : verdict == Verdict.PASS
                            ? no("the readings are right")
                            : notAttempted("no reading was held against the stand's own meter");
        }
        return anyFlow(FeatureJudgement.Decision.LOW) || anyFlow(FeatureJudgement.Decision.HIGH)
                ? partly("by the stand's own meter the unit's flow itself is wrong")
                : no("by the stand's own meter the flow is right: look at the machine's meter and the number typed in");
    }

    private ComplaintAnswer readsWithNoFlow() {
        List<Finding> pulses = input.plan().steps().stream()
                .filter(step -> step instanceof Hold hold && hold.reads() == Reading.ZERO_FLOW)
                .flatMap(step -> findings.stream().filter(f -> f.step().equals(step.name())))
                .filter(f -> f.name().startsWith("pulses"))
                .toList();
        if (pulses.isEmpty()) {
            return notAttempted("the plan without flow was not run");
        }
        return pulses.stream().anyMatch(f -> f.outcome() instanceof Finding.Figure)
                ? yes("pulses came without flow")
                : no("no pulse came without flow");
    }

    private boolean endedByUnit() {
        return input.ending().kind() == Ending.Kind.UNIT_OUT_OF_BOUNDS;
    }

    private boolean has(String name) {
        return findings.stream().anyMatch(f -> f.name().startsWith(name));
    }

    /** What the rules make of the readings whose names begin so. */
    private ComplaintAnswer byReading(String name, String seen, String notSeen, String notRun) {
        if (!has(name)) {
            return notAttempted(notRun);
        }
        boolean figures = features.stream().anyMatch(f -> f.feature().words().startsWith(name) && f.failed());
        boolean words = new ReadingJudge(input.rulesOrStandard())
                .words(findings).stream()
                        .anyMatch(each ->
                                each.finding().name().startsWith(name) && each.meaning() == WordRule.Meaning.FAIL);
        return figures || words ? yes(seen) : no(notSeen);
    }
}
