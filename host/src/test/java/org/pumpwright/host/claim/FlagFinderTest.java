package org.pumpwright.host.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.claim.DateCodesFile.DateCode;
import org.pumpwright.host.claim.Flag.Code;
import org.pumpwright.host.claim.FlagFinder.Earlier;
import org.pumpwright.host.claim.FlagFinder.Surroundings;
import org.pumpwright.host.claim.FlagFinder.Traced;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Finder;

class FlagFinderTest {
    private static final Set<String> LABELS = Set.of("demo-pump v1", "pump-12v v1");
    private static final DateCode CODE =
            new DateCode("demo-pump", DateCodesFile.Format.YYWW, Optional.of(Pattern.compile("^DP-(\\d{4})-")));
    private static final Digest SAMPLES = Digest.of(new byte[] {1, 2, 3});

    private static List<Code> codes(InventedClaim claim, Surroundings around) {
        return FlagFinder.of(claim.file(), around).stream().map(Flag::code).toList();
    }

    private static Surroundings around(List<Entry> own, List<Earlier> earlier, List<Traced> runs, Set<String> labels) {
        return new Surroundings(own, earlier, runs, labels, Optional.of(CODE));
    }

    private static Surroundings nothing() {
        return around(List.of(), List.of(), List.of(), LABELS);
    }

    private static Earlier earlier(String model, double hours) {
        return new Earlier(
                "EX-0",
                model,
                OffsetDateTime.parse("2025-06-01T08:00:00-05:00"),
                Optional.of(new TimeInUse(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Sourced<>(hours, Source.CUSTOMER)),
                        Optional.empty(),
                        Optional.empty())));
    }

    private static Surroundings seen(Earlier earlier) {
        return around(List.of(), List.of(earlier), List.of(), LABELS);
    }

    @Test
    void aClaimWithNothingStrangeHasNoFlags() {
        InventedClaim claim = new InventedClaim()
                .dateCode("2512")
                .sold("2025-04-28")
                .hours(120, Source.CUSTOMER)
                .run("full-12v-pump", Verdict.PASS)
                .photo(Photo.Shows.PLATE, "2026-03-02T08:00:00");
        assertThat(codes(claim, nothing())).isEmpty();
    }

    @Test
    void aSerialThatWasHereBeforeIsSaid() {
        List<Flag> flags = FlagFinder.of(new InventedClaim().file(), seen(earlier("demo-pump", 1)));
        assertThat(flags).containsExactly(new Flag(Code.SERIAL_SEEN, List.of("DP-2512-0001", "EX-0, 2025-06-01")));
        assertThat(codes(new InventedClaim().serial("no plate"), seen(earlier("demo-pump", 1))))
                .isEmpty();
    }

    @Test
    void aSerialUnderTwoModelsIsSaid() {
        assertThat(codes(new InventedClaim(), seen(earlier("other-pump", 1)))).contains(Code.SERIAL_TWO_MODELS);
        assertThat(codes(new InventedClaim(), seen(earlier("demo-pump", 1)))).doesNotContain(Code.SERIAL_TWO_MODELS);
    }

    @Test
    void theVerySameSamplesTwiceAreSaid() {
        InventedClaim claim =
                new InventedClaim().run(InventedClaim.run("run-1", "full-12v-pump", Verdict.PASS, SAMPLES));
        Surroundings other = around(List.of(), List.of(), List.of(new Traced("stand-1/run-9", SAMPLES)), LABELS);
        assertThat(codes(claim, other)).containsExactly(Code.SAME_TRACE);
        Surroundings unlike =
                around(List.of(), List.of(), List.of(new Traced("stand-1/run-9", Digest.NOTHING)), LABELS);
        assertThat(codes(claim, unlike)).isEmpty();
    }

    @Test
    void aClockThatWasMovedIsSaid() {
        assertThat(codes(new InventedClaim(), around(List.of(entry(1, 10), entry(2, 9)), List.of(), List.of(), LABELS)))
                .containsExactly(Code.CLOCK_MOVED);
        assertThat(codes(new InventedClaim(), around(List.of(entry(1, 9), entry(2, 10)), List.of(), List.of(), LABELS)))
                .isEmpty();
    }

    private static Entry entry(int number, int hour) {
        return new Entry(
                "desk",
                number,
                EntryKind.CUSTODY,
                "claim/EX-1/000" + number,
                InventedClaim.DAY.withHour(hour),
                InventedClaim.DAY.toInstant(),
                Digest.NOTHING,
                "{}",
                List.of(),
                Optional.empty(),
                Finder.NOTHING,
                new Entry.Seal(Digest.NOTHING, ""));
    }

    @Test
    void limitsThatChangedSinceTheTestAreSaid() {
        InventedClaim claim = new InventedClaim().run("full-12v-pump", Verdict.PASS);
        Surroundings newer = around(List.of(), List.of(), List.of(), Set.of("demo-pump v2", "pump-12v v1"));
        assertThat(FlagFinder.of(claim.file(), newer))
                .containsExactly(new Flag(Code.LIMITS_CHANGED, List.of("run-1", "demo-pump v1", "demo-pump v2")));
    }

    @Test
    void aPhotoOlderThanTheReceiptIsSaid() {
        assertThat(codes(new InventedClaim().photo(Photo.Shows.PLATE, "2026-03-01T23:59:59"), nothing()))
                .containsExactly(Code.PHOTO_OLDER);
        assertThat(codes(new InventedClaim().photo(Photo.Shows.PLATE, "2026-03-02T00:00:00"), nothing()))
                .isEmpty();
    }

    @Test
    void aDateCodeThatDoesNotFitTheSerialOrTheSaleIsSaid() {
        assertThat(codes(new InventedClaim().dateCode("2513"), nothing())).containsExactly(Code.DATE_CODE);
        assertThat(codes(new InventedClaim().dateCode("2512").sold("2025-03-16"), nothing()))
                .containsExactly(Code.DATE_CODE);
        assertThat(codes(new InventedClaim().dateCode("2512").sold("2025-03-17"), nothing()))
                .isEmpty();
        assertThat(codes(new InventedClaim().serial("X-1").dateCode("25/12"), nothing()))
                .containsExactly(Code.DATE_CODE);
    }

    @Test
    void fewerHoursThanTheLastTimeAreSaid() {
        assertThat(codes(new InventedClaim().hours(99, Source.CUSTOMER), seen(earlier("demo-pump", 100))))
                .contains(Code.HOURS_LOWER);
        assertThat(codes(new InventedClaim().hours(100, Source.CUSTOMER), seen(earlier("demo-pump", 100))))
                .doesNotContain(Code.HOURS_LOWER);
    }
}
