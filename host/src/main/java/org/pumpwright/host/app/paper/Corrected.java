package org.pumpwright.host.app.paper;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.exchange.AmendmentContent;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.report.sheet.FeatureWords;
import org.pumpwright.host.text.Texts;

/**
 * A run as it reads with its corrections, and a sentence on each: what stands on the paper, what was first written, who corrected
 * it, when and why. The record in the document stays as it was signed. Thread-safe.
 *
 * @param run with what is right
 * @param sentences one for each amendment, oldest first
 * @param nameless the same without people and their own words, for whom these do not concern
 */
record Corrected(RunRecord run, List<String> sentences, List<String> nameless) {
    private static final String TECHNICIAN = "technician";

    Corrected {
        sentences = List.copyOf(sentences);
        nameless = List.copyOf(nameless);
    }

    static Corrected of(Found.Run found, Texts texts) {
        List<String> sentences = new ArrayList<>();
        List<String> nameless = new ArrayList<>();
        Map<String, String> right = new HashMap<>();
        for (Entry entry : found.amendments()) {
            AmendmentContent amendment = AmendmentContent.of(entry);
            List<String> what = new ArrayList<>();
            List<String> ofTheUnit = new ArrayList<>();
            for (AmendmentContent.Correction each : amendment.corrections()) {
                Optional<String> was = Optional.ofNullable(right.get(each.what()))
                        .or(each::was)
                        .or(() -> first(found.run(), each.what()));
                right.put(each.what(), each.is());
                String said = texts.say(
                        "paper.correction",
                        texts.say("paper.correction." + each.what()),
                        each.is(),
                        was.orElse(texts.say("sheet.not_given")));
                what.add(said);
                if (!each.what().equals(TECHNICIAN)) {
                    ofTheUnit.add(said);
                }
            }
            String day = FeatureWords.day(entry.at());
            if (!ofTheUnit.isEmpty()) {
                nameless.add(texts.say("paper.amended.nameless", day, String.join("; ", ofTheUnit)));
            }
            sentences.add(texts.say("paper.amended", day, amendment.by(), String.join("; ", what), amendment.reason()));
        }
        return new Corrected(with(found.run(), right), sentences, nameless);
    }

    private static Optional<String> first(RunRecord run, String what) {
        return what.equals(TECHNICIAN) ? Optional.of(run.subject().technician()) : Optional.empty();
    }

    private static RunRecord with(RunRecord run, Map<String, String> right) {
        RunRecord.Subject was = run.subject();
        Intake intake = run.intake();
        return run.told(
                new RunRecord.Subject(
                        was.model(),
                        was.modelTitle(),
                        right.getOrDefault("serial", was.serial()),
                        right.getOrDefault(TECHNICIAN, was.technician()),
                        was.practice()),
                new Intake(
                        intake.complaint(),
                        intake.safetyObservations(),
                        intake.notTestable(),
                        intake.attempt(),
                        intake.earlierRuns(),
                        intake.decision(),
                        Optional.ofNullable(right.get("claim")).or(intake::claim),
                        intake.handling()));
    }

    /** The run without anybody's name in it, for whom names do not concern. */
    static RunRecord withoutNames(RunRecord run) {
        RunRecord.Subject was = run.subject();
        Intake intake = run.intake();
        return run.told(
                new RunRecord.Subject(was.model(), was.modelTitle(), was.serial(), "", was.practice()),
                new Intake(
                        intake.complaint(),
                        List.of(),
                        Optional.empty(),
                        intake.attempt(),
                        intake.earlierRuns(),
                        Optional.empty(),
                        intake.claim(),
                        intake.handling().nameless()));
    }
}
