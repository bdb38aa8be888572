package org.pumpwright.host.claim;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.Digest;

/** Builds claims out of invented data, for tests. */
public final class InventedClaim {
    public static final OffsetDateTime DAY = OffsetDateTime.parse("2026-03-02T09:00:00-06:00");

    private final List<ClaimRun> runs = new ArrayList<>();
    private final List<Photo> photos = new ArrayList<>();
    private final List<Observation> observations = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private TimeInUse use = TimeInUse.UNKNOWN;
    private OffsetDateTime received = DAY;
    private Optional<Amount> value = Optional.empty();
    private Optional<String> dateCode = Optional.empty();
    private String serial = "DP-2512-0001";

    public InventedClaim received(String day) {
        received = OffsetDateTime.parse(day + "T09:00:00-06:00");
        return this;
    }

    public InventedClaim use(TimeInUse known) {
        use = known;
        return this;
    }

    public InventedClaim sold(String day) {
        use = new TimeInUse(
                Optional.of(new Sourced<>(LocalDate.parse(day), Source.DOCUMENT)),
                use.delivered(),
                use.firstUsed(),
                use.hours(),
                use.acres(),
                use.registered());
        return this;
    }

    public InventedClaim hours(double hours, Source source) {
        use = new TimeInUse(
                use.sold(),
                use.delivered(),
                use.firstUsed(),
                Optional.of(new Sourced<>(hours, source)),
                use.acres(),
                use.registered());
        return this;
    }

    public InventedClaim worth(String amount) {
        value = Optional.of(Amount.of(amount));
        return this;
    }

    public InventedClaim serial(String plate) {
        serial = plate;
        return this;
    }

    public InventedClaim dateCode(String code) {
        dateCode = Optional.of(code);
        return this;
    }

    public InventedClaim run(String plan, Verdict verdict) {
        String id = "run-" + (runs.size() + 1);
        return run(run(id, plan, verdict, Digest.of(id.getBytes(java.nio.charset.StandardCharsets.UTF_8))));
    }

    public InventedClaim run(ClaimRun run) {
        runs.add(run);
        return this;
    }

    public static ClaimRun run(String id, String plan, Verdict verdict, Digest trace) {
        return new ClaimRun(
                "stand-1/" + id,
                id,
                DAY.plusHours(1),
                "demo-pump",
                "DP-2512-0001",
                "Terry Tester",
                plan + " v1",
                verdict,
                Optional.of("demo-pump v1"),
                Optional.of("pump-12v v1"),
                Optional.of(trace),
                Optional.empty(),
                true);
    }

    public InventedClaim photo(Photo.Shows shows, String taken) {
        photos.add(new Photo(
                Digest.NOTHING,
                10,
                Photo.Format.PNG,
                shows,
                LocalDateTime.parse(taken),
                Photo.TimeBy.FILE,
                "p.png",
                "Robin",
                received));
        return this;
    }

    public InventedClaim seen(Observation.Seen what) {
        observations.add(new Observation(what, "invented", "Terry Tester", received));
        return this;
    }

    public InventedClaim found(Category category, String signer, String... parts) {
        findings.add(new Finding(
                category, Reproduced.YES, "measured", List.of(parts), List.of(), signer, received.plusHours(2)));
        return this;
    }

    public ClaimFile file() {
        ClaimIntake intake = new ClaimIntake(
                "EX-1",
                received,
                new People("Sam", "555-0100", "Example Acres (invented)"),
                new UnitAsReceived("pump-12v", "demo-pump", serial, dateCode, "none", "whole", "T-1"),
                use,
                new OnThePlanter("", "uan-32", ""),
                new ComplaintAsMade("drops off", "low", "", ""),
                Decontamination.NONE,
                value,
                "Robin",
                true);
        ClaimFile file = new ClaimFile(
                intake,
                List.of(new CustodyMove(received, CustodyState.RECEIVED, "Robin", "desk", "T-1", Optional.empty())),
                photos,
                observations,
                List.of(),
                runs,
                findings,
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return file.lacking(MissingItems.of(file));
    }
}
