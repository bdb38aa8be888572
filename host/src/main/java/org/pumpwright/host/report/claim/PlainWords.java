package org.pumpwright.host.report.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.quantity.Volume;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.text.Texts;
import org.pumpwright.host.trace.PointMark;

/** A run in sentences for somebody who has never seen a test stand. Thread-safe. */
final class PlainWords {
    private static final double LITRES_PER_M3 = 1000;

    private final RunRecord run;
    private final Texts texts;
    private final FeatureWords words;

    PlainWords(RunRecord run, FeatureWords words, Texts texts) {
        this.run = run;
        this.words = words;
        this.texts = texts;
    }

    /** The verdict in a few big words. */
    String verdict() {
        return texts.say("customer." + key());
    }

    /** What the verdict means, and what shows it best. */
    List<String> meaning() {
        List<String> sentences = new ArrayList<>();
        sentences.add(texts.say("customer." + key() + ".more"));
        switch (run.grade().verdict()) {
            case FAIL -> sentences.add(worst());
            case NOT_TESTED -> sentences.add(whyNotJudged());
            case PASS, INCONCLUSIVE, INVALID -> {}
        }
        if (run.grade().advisory()) {
            sentences.add(texts.say("customer.advisory"));
        }
        return sentences.stream().filter(sentence -> !sentence.isBlank()).toList();
    }

    private String whyNotJudged() {
        String unlessTold = run.curve().isEmpty() ? "customer.no_comparison" : "customer.only_readings";
        return run.intake().notTestable().map(words::stored).orElseGet(() -> texts.say(unlessTold));
    }

    private String key() {
        return run.grade().verdict().name().toLowerCase(Locale.ROOT);
    }

    /** The failing reading at the hardest drive, flow before anything else: it is what a customer sees in the field. */
    private String worst() {
        if (!run.intake().safetyObservations().isEmpty()) {
            return texts.say(
                    "customer.seen",
                    String.join(
                            "; ",
                            run.intake().safetyObservations().stream()
                                    .map(words::stored)
                                    .toList()));
        }
        List<FeatureJudgement> failed = run.grade().features().stream()
                .filter(feature -> feature.judged() && feature.failed())
                .toList();
        return hardest(failed, Feature.Kind.FLOW)
                .or(() -> hardest(failed, Feature.Kind.MOTOR_AMPS))
                .map(this::point)
                .or(() -> failed.stream()
                        .findFirst()
                        .map(feature -> texts.say("customer.reading", words.name(feature.feature()))))
                .orElseGet(() -> run.grade().reasons().stream()
                        .findFirst()
                        .map(words::stored)
                        .orElse(""));
    }

    private static Optional<FeatureJudgement> hardest(List<FeatureJudgement> failed, Feature.Kind kind) {
        return failed.stream()
                .filter(feature -> feature.feature().quantity() == kind)
                .filter(feature -> feature.limits().hasLow() && feature.limits().hasHigh())
                .max(Comparator.comparingDouble(
                        feature -> feature.feature().duty().fraction()));
    }

    private String point(FeatureJudgement feature) {
        String key = feature.feature().quantity() == Feature.Kind.FLOW ? "customer.flow" : "customer.amps";
        return texts.say(
                key,
                feature.feature().duty().print(),
                words.value(feature.feature().unit(), feature.measured().value()),
                words.number(feature.feature().unit(), feature.limits().low()),
                words.value(feature.feature().unit(), feature.limits().high()));
    }

    /** Whether what was measured fits what the customer told. */
    String complaint(Optional<String> ownWords) {
        Optional<String> told = ownWords.or(() -> run.intake().complaint().map(this::complaintWord));
        if (told.isEmpty()) {
            return texts.say("customer.no_complaint");
        }
        String answer = run.grade().explains().answer().name().toLowerCase(Locale.ROOT);
        return texts.say("customer.told", told.get()) + " " + texts.say("customer.explains." + answer);
    }

    private String complaintWord(String code) {
        String key = "customer.complaint." + code;
        return texts.keys().contains(key) ? texts.say(key) : code;
    }

    /** What was done on the stand, one sentence each. */
    List<String> done() {
        List<String> sentences = new ArrayList<>();
        List<PointMark> points = run.trace().points();
        if (points.isEmpty()) {
            sentences.add(texts.say("customer.done.plan", FeatureWords.day(run.startedAt())));
        } else {
            List<Double> duties = points.stream()
                    .map(point -> point.commanded().fraction())
                    .sorted()
                    .toList();
            sentences.add(texts.say(
                    "customer.done.sweep",
                    FeatureWords.day(run.startedAt()),
                    points.size(),
                    percent(duties.get(0)),
                    percent(duties.get(duties.size() - 1))));
        }
        run.curve()
                .ifPresent(curve -> sentences.add(texts.say(
                        curve.simulated() ? "customer.done.simulated" : "customer.done.compared", curve.units())));
        long held = run.grade().standChecks().stream().filter(StandCheck::ok).count();
        if (held > 0) {
            sentences.add(texts.say(
                    "customer.done.checks", held, run.grade().standChecks().size()));
        }
        sentences.add(texts.say("customer.done.attempt", run.intake().attempt()));
        return sentences;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** What to look at on the planter, in the order in which it is easily done. Common practice, no source. */
    List<String> checks(Optional<BucketRecord> calibration) {
        List<String> checks = new ArrayList<>();
        for (String check : List.of("volts", "strainer", "air", "returns")) {
            checks.add(texts.say("customer.check." + check));
        }
        checks.add(calibration
                .map(test -> texts.say("customer.check.new_number", number(test)))
                .orElseGet(() -> texts.say("customer.check.number")));
        return checks;
    }

    /** The new calibration number in both units: monitors ask for either. */
    String number(BucketRecord test) {
        double k = test.result().single().pulsesPerM3();
        double uncertainty = k * test.result().single().relativeExpandedUncertainty();
        return texts.say(
                "customer.number",
                rounded(k * Volume.M3_PER_US_GALLON, uncertainty * Volume.M3_PER_US_GALLON),
                rounded(k / LITRES_PER_M3, uncertainty / LITRES_PER_M3));
    }

    /** As many places as show the uncertainty's first two digits, one at least. */
    private static String rounded(double value, double uncertainty) {
        OptionalDouble known = uncertainty > 0 ? OptionalDouble.of(uncertainty) : OptionalDouble.empty();
        int places = known.isPresent() ? (int) Math.max(0, Math.min(4, 1 - Math.floor(Math.log10(uncertainty)))) : 1;
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }
}
