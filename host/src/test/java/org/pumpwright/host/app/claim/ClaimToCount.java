package org.pumpwright.host.app.claim;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.claim.Category;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.ComplaintAsMade;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.Decontamination;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.OnThePlanter;
import org.pumpwright.host.claim.People;
import org.pumpwright.host.claim.Reproduced;
import org.pumpwright.host.claim.Source;
import org.pumpwright.host.claim.Sourced;
import org.pumpwright.host.claim.TimeInUse;
import org.pumpwright.host.claim.UnitAsReceived;

/** Claims for the tests of statistics, told in few words. */
public final class ClaimToCount {
    private final String number;
    private final LocalDate day;
    private String model = "pump";
    private String serial = UnitAsReceived.NO_PLATE;
    private Optional<String> dateCode = Optional.empty();
    private Optional<LocalDate> sold = Optional.empty();
    private final List<Finding> findings = new ArrayList<>();
    private final List<CustodyMove> moves = new ArrayList<>();
    private boolean practice;

    private ClaimToCount(String number, LocalDate day) {
        this.number = number;
        this.day = day;
        moves.add(move(day, CustodyState.RECEIVED));
    }

    /** A claim that came in on this day. */
    public static ClaimToCount cameIn(String number, String day) {
        return new ClaimToCount(number, LocalDate.parse(day));
    }

    public ClaimToCount unit(String ofModel, String withSerial, String code) {
        model = ofModel;
        serial = withSerial;
        dateCode = Optional.of(code);
        return this;
    }

    public ClaimToCount sold(String on) {
        sold = Optional.of(LocalDate.parse(on));
        return this;
    }

    public ClaimToCount found(Category category, String... parts) {
        findings.add(new Finding(
                category,
                Reproduced.YES,
                "measured",
                List.of(parts),
                List.of("S1/R1"),
                "A. Technician",
                at(day.plusDays(1))));
        return this;
    }

    public ClaimToCount returned(String on) {
        moves.add(move(LocalDate.parse(on), CustodyState.RETURNED));
        return this;
    }

    public ClaimToCount practice() {
        practice = true;
        return this;
    }

    public ClaimFile file() {
        ClaimIntake intake = new ClaimIntake(
                number,
                at(day),
                new People("", "", "Customer"),
                new UnitAsReceived("pump-12v", model, serial, dateCode, "none", "whole", "T1"),
                new TimeInUse(
                        sold.map(each -> new Sourced<>(each, Source.DOCUMENT)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Sourced<>(80.0, Source.CUSTOMER)),
                        Optional.empty(),
                        Optional.empty()),
                new OnThePlanter("", "", ""),
                new ComplaintAsMade("", "", "", ""),
                Decontamination.NONE,
                Optional.empty(),
                "A. Clerk",
                practice);
        return new ClaimFile(
                intake, moves, List.of(), List.of(), List.of(), List.of(), findings, List.of(), List.of(), List.of(),
                List.of());
    }

    private static CustodyMove move(LocalDate day, CustodyState to) {
        return new CustodyMove(at(day), to, "A. Clerk", "desk", "T1", Optional.empty());
    }

    private static OffsetDateTime at(LocalDate day) {
        return day.atTime(10, 0).atOffset(ZoneOffset.ofHours(-6));
    }
}
