package org.pumpwright.host.app.record;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.app.RecordNames;
import org.pumpwright.host.curve.Approval;
import org.pumpwright.host.curve.Basis;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.grade.cause.Cause;
import org.pumpwright.host.record.BucketContent;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.TraceBlob;
import org.pumpwright.host.record.exchange.Facts;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.stand.StandDescription;

/** What is put on record of a run, a bucket test, a healthy curve and a stand, and by which words each is found. Thread-safe. */
final class Drafts {
    /** Enough that no two files of a shop have the same, few enough to be read aloud. */
    private static final int DIGEST_LETTERS = 16;

    private Drafts() {}

    /** The id of a run's entry: two stands may begin a run in the same millisecond. */
    static String id(RunRecord run) {
        return run.stand().id() + "/" + run.id();
    }

    /**
     * A run, or one that was graded again, which happened when its id says.
     *
     * @param customer whose unit it is; empty where nobody has noted it
     */
    static Draft run(RunRecord run, Optional<String> customer) {
        boolean again = run.regradedFrom().isPresent();
        OffsetDateTime at =
                RecordNames.gradedAgain(run.id()).map(moment -> at(moment, run)).orElse(run.startedAt());
        return new Draft(
                again ? EntryKind.GRADE : EntryKind.RUN,
                id(run),
                at,
                RunContent.of(run),
                finder(run, customer),
                List.of(TraceBlob.of(run.trace())),
                Optional.empty());
    }

    private static OffsetDateTime at(Instant moment, RunRecord run) {
        return moment.atOffset(run.startedAt().getOffset());
    }

    private static Finder finder(RunRecord run, Optional<String> customer) {
        List<String> words = new ArrayList<>(List.of(
                run.subject().technician(),
                run.plan(),
                run.stand().id(),
                run.stand().title(),
                run.subject().modelTitle()));
        run.intake().complaint().ifPresent(words::add);
        run.grade().causes().stream().map(Cause::name).forEach(words::add);
        return new Finder(
                given(run.subject().serial()),
                given(run.subject().model()),
                customer,
                run.intake().claim(),
                Optional.of(word(run.grade().verdict())),
                words(words));
    }

    /** A verdict as it is written in files. */
    static String word(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A bucket test; its whole file is kept beside it. */
    static Draft bucketTest(BucketRecord test, String chain) {
        return new Draft(
                EntryKind.BUCKET_TEST,
                chain + "/" + test.id(),
                test.issuedAt(),
                BucketContent.of(test),
                new Finder(
                        given(test.meter().serial()),
                        given(test.meter().model()),
                        given(test.job().customer()),
                        Optional.empty(),
                        Optional.of(test.result().accepted() ? "accepted" : "not-accepted"),
                        words(List.of(
                                test.job().technician(),
                                test.method().id(),
                                test.method().fluid()))),
                List.of(BucketRecordFile.bytes(test)),
                Optional.empty());
    }

    /** A healthy curve that was made or approved; its file is kept beside it. */
    static Draft curve(HealthyCurve curve, String what, OffsetDateTime at, byte[] file) {
        Facts facts = new Facts()
                .with("what", what)
                .with("label", curve.label())
                .with("title", curve.title())
                .with("model", curve.conditions().model())
                .with("driver", curve.conditions().driver())
                .with("pwm_hz", curve.conditions().pwmHz())
                .with("nozzle", curve.conditions().nozzle())
                .with("fluid", curve.conditions().fluid())
                .with("units", curve.units())
                .with("simulated", curve.simulated())
                .with("author", curve.author())
                .with("approved_by", curve.approval().map(Approval::by))
                .with("runs", curve.basis().map(Basis::runIds).orElse(List.of()))
                .with("file_sha256", Digest.of(file).hex());
        return new Draft(
                EntryKind.CURVE,
                "curve/%s/%s".formatted(curve.conditions().model(), letters(file)),
                at,
                facts.json(),
                new Finder(
                        Optional.empty(),
                        Optional.of(curve.conditions().model()),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(what),
                        words(List.of(curve.label(), curve.title(), curve.author()))),
                List.of(file),
                Optional.empty());
    }

    /** A stand as its file describes it; the file is kept beside it. */
    static Draft stand(StandDescription stand, OffsetDateTime at, byte[] file) {
        Facts facts = new Facts()
                .with("id", stand.id())
                .with("title", stand.title())
                .with("driver", stand.driver())
                .with("fluid", stand.fluid())
                .with("supply_volts", stand.supplyVolts())
                .with("file_sha256", Digest.of(file).hex());
        return new Draft(
                EntryKind.STAND,
                "stand/%s/%s".formatted(stand.id(), letters(file)),
                at,
                facts.json(),
                new Finder(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        words(List.of(stand.id(), stand.title()))),
                List.of(file),
                Optional.empty());
    }

    private static String letters(byte[] file) {
        return Digest.of(file).hex().substring(0, DIGEST_LETTERS);
    }

    private static String words(List<String> words) {
        return words.stream()
                .map(String::strip)
                .filter(word -> given(word).isPresent())
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private static Optional<String> given(String text) {
        return Optional.of(text.strip()).filter(word -> !word.isEmpty() && !word.equals("not given"));
    }
}
