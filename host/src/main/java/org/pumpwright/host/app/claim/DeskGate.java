package org.pumpwright.host.app.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.app.ClaimGate;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Waiver;
import org.pumpwright.host.claim.Waiver.Step;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Lets a unit on the stand only when its intake is whole, is this unit's, and somebody has made sure that it is clean. A store
 * that does not answer stops no test: it is told. Thread-safe.
 */
public final class DeskGate implements ClaimGate {
    private final DeskSource desk;
    private final ClaimData data;

    /** Opens the desk when it is first needed. */
    @FunctionalInterface
    public interface DeskSource {
        /**
         * The desk and its claims.
         *
         * @throws StoreException when the store does not answer
         */
        Opened open() throws StoreException;
    }

    /**
     * An open desk.
     *
     * @param desk acts
     * @param claims finds
     */
    public record Opened(ClaimDesk desk, ClaimShelf claims) {}

    /**
     * @param desk opened when it is first needed
     * @param data the desk's data files
     */
    public DeskGate(DeskSource desk, ClaimData data) {
        this.desk = desk;
        this.data = data;
    }

    @Override
    public Answer mayTest(Unit unit, Optional<Waived> bypass) throws OrderException, DataFileException {
        try {
            Opened opened = desk.open();
            ClaimFile file = opened.claims().require(unit.claim()).file();
            whole(file);
            same(file.intake(), unit);
            return new Answer(complaint(file), warnings(clean(opened, file, bypass)));
        } catch (StoreException e) {
            return new Answer(
                    Optional.empty(),
                    List.of("the intake of claim %s was not checked: %s".formatted(unit.claim(), e.getMessage())));
        }
    }

    private static void whole(ClaimFile file) throws OrderException {
        String lacking = file.missing().stream()
                .filter(Missing::beforeTheTest)
                .map(Missing::word)
                .collect(Collectors.joining(", "));
        if (!lacking.isEmpty()) {
            throw new OrderException(
                    "claim %s can't be tested yet, its intake lacks: %s. Fill in a sheet and: pumpwright claim open --sheet FILE --corrects TEXT"
                            .formatted(file.number(), lacking));
        }
    }

    private static void same(ClaimIntake intake, Unit unit) throws OrderException {
        if (!intake.unit().model().equals(unit.model())) {
            throw differs(intake, "model", unit.model(), intake.unit().model());
        }
        if (!intake.unit().isSerial(unit.serial())) {
            throw differs(intake, "serial", unit.serial(), intake.unit().serial());
        }
    }

    private static OrderException differs(ClaimIntake intake, String what, String typed, String written) {
        return new OrderException(
                "the %s of this unit is '%s', at the intake of claim %s it was '%s'. Take the right unit, or correct the intake."
                        .formatted(what, typed, intake.claim(), written));
    }

    private static ClaimFile clean(Opened opened, ClaimFile file, Optional<Waived> bypass)
            throws OrderException, DataFileException, StoreException {
        boolean waived = file.waivers().stream().anyMatch(each -> each.step() == Step.DECONTAMINATION);
        if (file.intake().decontamination().confirmed() || waived) {
            return file;
        }
        if (bypass.isEmpty()) {
            throw new OrderException(
                    "nobody has confirmed that the unit of claim %s is clean. Rinse it twice, then: pumpwright claim note %s --rinsed-by NAME --rinses 2. Or somebody answers for it: --bypass-decontamination NAME --reason TEXT"
                            .formatted(file.number(), file.number()));
        }
        Waived person = bypass.get();
        return opened.desk()
                .act(
                        file.number(),
                        (now, at) ->
                                new Act.Waived(new Waiver(Step.DECONTAMINATION, person.person(), person.reason(), at)),
                        Optional.empty());
    }

    private List<String> warnings(ClaimFile file) throws DataFileException {
        List<String> warnings = new ArrayList<>();
        file.waivers().stream()
                .filter(each -> each.step() == Step.DECONTAMINATION)
                .forEach(each -> warnings.add(
                        "not confirmed clean; %s answers for it: %s".formatted(each.person(), each.reason())));
        warnings.add("product pumped: " + file.intake().planter().product());
        warnings.addAll(data.cautions(file.intake().planter().product()));
        return warnings;
    }

    private static Optional<Complaint> complaint(ClaimFile file) throws OrderException {
        return Optional.of(Complaint.ofWord(file.intake().complaint().code()));
    }
}
