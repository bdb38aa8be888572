package org.pumpwright.host.report.claim;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ClaimRun;
import org.pumpwright.host.claim.ComplaintAsMade;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Decontamination;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Flag;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Observation;
import org.pumpwright.host.claim.OnThePlanter;
import org.pumpwright.host.claim.People;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.claim.Sentence;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;
import org.pumpwright.host.grade.Intake;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.report.SampleRecords;
import org.pumpwright.host.report.sheet.Picture;

/** Invented claims and what belongs to them; no person, shop or number in them is a real one. */
final class ClaimSamples {
    /** Who it is about; none of it may get to the factory. */
    static final List<String> IDENTITY = List.of(
            "Invented Farm",
            "Jo Sample",
            "555-0100",
            "Rows on the left run out",
            "Pat Clerk",
            "Lee Second",
            "A. Tester");

    /** The smallest PNG file: one grey spot. */
    static final byte[] DOT = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");

    private static final String DAY = "2026-04-02T";

    private ClaimSamples() {}

    static RunRecord withIntake(RunRecord run, Intake intake) {
        return run.told(run.subject(), intake);
    }

    /** The same run a day later. */
    static RunRecord later(RunRecord run) {
        return new RunRecord(
                "20260403-101500-22cc",
                run.startedAt().plusDays(1),
                run.software(),
                run.subject(),
                run.stand(),
                run.conditions(),
                run.plan(),
                run.curve(),
                run.ending(),
                run.grade(),
                run.trace(),
                run.intake(),
                run.rules(),
                run.regradedFrom());
    }

    static OffsetDateTime at(String time) {
        return OffsetDateTime.parse(DAY + time + ":00-05:00");
    }

    static Digest digest(String of) {
        return Digest.of(of.getBytes(StandardCharsets.UTF_8));
    }

    /** Everything there, decided. */
    static ClaimFile full() {
        return new ClaimFile(
                intake("Rows on the left run out at the end of the field", "D-10442"),
                List.of(
                        move("07:40", CustodyState.RECEIVED, "Pat Clerk", "counter"),
                        move("07:55", CustodyState.QUARANTINED, "A. Tester", "rinse bay"),
                        move("08:30", CustodyState.TESTED, "A. Tester", "stand 1"),
                        move("09:00", CustodyState.AWAITING_DECISION, "Pat Clerk", "claim shelf 3")),
                List.of(
                        photo(Photo.Shows.PLATE),
                        photo(Photo.Shows.CONNECTOR),
                        photo(Photo.Shows.PORTS),
                        photo(Photo.Shows.WHOLE)),
                List.of(new Observation(
                        Observation.Seen.DEBRIS_FOUND, "a flake under valve 2", "A. Tester", at("08:50"))),
                List.of(),
                List.of(run(SampleRecords.fail())),
                List.of(new Finding(
                        Category.C1,
                        Reproduced.YES,
                        "flow low at 30, 50 and 100 %, one chamber not pumping",
                        List.of("valve set"),
                        List.of("simulated/20260402-081530-7f3a"),
                        "A. Tester",
                        at("08:55"))),
                List.of(new CoverageDecision(
                        CoverageDecision.Outcome.APPROVE,
                        "within period and hours",
                        "Pat Clerk",
                        Optional.of("Lee Second"),
                        Optional.of("coverage-example v3"),
                        Optional.of(new Amount(28_450)),
                        at("10:20"))),
                List.of(),
                List.of(),
                List.of(new Flag(Flag.Code.SERIAL_SEEN, List.of("D-10442", "claim C-2025-0031"))));
    }

    /** A unit that just came: nearly everything is missing. */
    static ClaimFile sparse() {
        ClaimIntake intake = new ClaimIntake(
                "C-2026-0118",
                at("07:40"),
                new People("", "", ""),
                new UnitAsReceived("", "", "", Optional.empty(), "", "", ""),
                TimeInUse.UNKNOWN,
                new OnThePlanter("", "", ""),
                new ComplaintAsMade("", "", "", ""),
                Decontamination.NONE,
                Optional.empty(),
                "",
                true);
        return new ClaimFile(
                intake,
                List.of(move("07:40", CustodyState.RECEIVED, "Pat Clerk", "counter")),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(Missing.values()),
                List.of());
    }

    /** Long words wherever a person can write. */
    static ClaimFile wordy() {
        ClaimFile full = full();
        String words =
                "It starts well in the morning, then after about forty minutes the rows on the left run out first, the"
                        + " monitor shows a flow that jumps, and after a stop of ten minutes it is as good as new for a while.";
        List<ClaimRun> runs = new ArrayList<>(full.runs());
        runs.add(run(SampleRecords.inconclusive()));
        runs.add(run(SampleRecords.pass()));
        List<Observation> seen = new ArrayList<>(full.observations());
        seen.add(new Observation(Observation.Seen.NOTE, words, "A. Tester", at("08:52")));
        return new ClaimFile(
                intake(words + " " + words, "<b>\"D&10442'"),
                full.moves(),
                full.photos(),
                seen,
                full.waivers(),
                runs,
                full.findings(),
                List.of(),
                full.corrections(),
                List.of(Missing.DECISION, Missing.TRACE),
                List.of(
                        new Flag(Flag.Code.SERIAL_SEEN, List.of("D-10442", "claim C-2025-0031")),
                        new Flag(Flag.Code.SAME_TRACE, List.of("20260402-081530-7f3a", "20260402-091530-7f3b"))));
    }

    private static ClaimIntake intake(String complaint, String serial) {
        return new ClaimIntake(
                "C-2026-0117",
                at("07:40"),
                new People("Jo Sample", "555-0100", "Invented Farm"),
                new UnitAsReceived(
                        "pump-12v", "demo-pump", serial, Optional.of("25-31"), "plug, 2 hose tails", "whole", "T-0412"),
                new TimeInUse(
                        Optional.of(new Sourced<>(LocalDate.parse("2025-03-11"), Source.DOCUMENT)),
                        Optional.empty(),
                        Optional.of(new Sourced<>(LocalDate.parse("2025-04-20"), Source.CUSTOMER)),
                        Optional.of(new Sourced<>(112.0, Source.CUSTOMER)),
                        Optional.of(new Sourced<>(840.0, Source.CUSTOMER)),
                        Optional.of(true)),
                new OnThePlanter("16 rows of 30 in, 5 gal/acre, 6 mph", "10-34-0", "last fall, water"),
                new ComplaintAsMade(complaint, "low", "after 40 minutes", "the fuse"),
                Decontamination.NONE.confirmedBy("A. Tester", 3),
                Optional.of(new Amount(28_450)),
                "Pat Clerk",
                true);
    }

    private static CustodyMove move(String time, CustodyState to, String person, String place) {
        return new CustodyMove(at(time), to, person, place, "T-0412", Optional.of("red"));
    }

    private static Photo photo(Photo.Shows shows) {
        return new Photo(
                digest(shows.word()),
                81_233,
                Photo.Format.JPEG,
                shows,
                LocalDateTime.parse(DAY + "07:45:00"),
                Photo.TimeBy.CAMERA,
                shows.word() + ".jpg",
                "Pat Clerk",
                at("07:50"));
    }

    private static ClaimRun run(RunRecord run) {
        return new ClaimRun(
                "simulated/" + run.id(),
                run.id(),
                run.startedAt(),
                run.subject().model(),
                run.subject().serial(),
                run.subject().technician(),
                run.plan(),
                run.grade().verdict(),
                run.curve().map(RunRecord.CurveUsed::label),
                run.rules(),
                Optional.of(digest("trace")),
                Optional.empty(),
                true);
    }

    static CoverageAssessment coverage() {
        return new CoverageAssessment(
                "coverage-example v3",
                List.of(
                        line("period", CoverageAssessment.Holds.YES, "claim.because.no-registration-needed"),
                        line("hours", CoverageAssessment.Holds.NO, "claim.because.registered"),
                        line("registration", CoverageAssessment.Holds.YES, "claim.because.registered"),
                        line("consumables", CoverageAssessment.Holds.UNKNOWN, "claim.because.registration-unknown"),
                        line("attachments", CoverageAssessment.Holds.YES, "claim.because.attachments-there")));
    }

    private static CoverageAssessment.Line line(String rule, CoverageAssessment.Holds holds, String because) {
        return new CoverageAssessment.Line(rule, holds, Sentence.of(because), "coverage-example.yaml line 12");
    }

    static ClerkEvidence evidence(ClaimFile file, boolean whole) {
        Map<Digest, Picture> pictures = new HashMap<>();
        if (whole) {
            pictures.put(digest("plate"), Picture.of(DOT, "plate"));
        }
        return new ClerkEvidence(
                whole ? Optional.of("Example Shop (invented)") : Optional.empty(),
                file,
                whole ? Optional.of(SampleRecords.fail()) : Optional.empty(),
                whole ? Optional.of(coverage()) : Optional.empty(),
                whole ? Optional.of("2026-04-02, within its limits") : Optional.empty(),
                pictures,
                whole
                        ? List.of(
                                new ClerkEvidence.Item("record.json", digest("record")),
                                new ClerkEvidence.Item("technician.pdf", digest("technician")))
                        : List.of());
    }
}
