package org.pumpwright.host.ui.work;

import java.nio.file.Path;
import java.util.Optional;
import org.pumpwright.host.app.Complaint;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.ArrivalDesk;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.catalog.UnitModel;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Decision;
import org.pumpwright.host.grade.Handling;

/** The claims desk of the shop. Thread-safe. */
public final class DeskClaims implements ClaimLookup {
    private final DeskOfShop desk;

    /** Asks this desk. */
    public DeskClaims(DeskOfShop desk) {
        this.desk = desk;
    }

    @Override
    public Optional<Known> find(String number) throws Exception {
        if (!desk.mayHold()) {
            return Optional.empty();
        }
        Optional<ClaimFile> file = Patience.ask(() -> desk.arrivals().find(number), desk.store());
        return file.isEmpty() ? Optional.empty() : Optional.of(known(file.get()));
    }

    private Known known(ClaimFile file) throws OrderException, DataFileException {
        ClaimIntake intake = file.intake();
        return new Known(
                given(intake.unit().model()),
                desk.data().model(intake.unit().model()).map(UnitModel::title),
                given(intake.unit().serial()),
                complaint(intake.complaint().code()),
                intake.complaint().words(),
                intake.planter().product(),
                handling(file),
                file.missing().stream()
                        .filter(Missing::beforeTheTest)
                        .map(Missing::key)
                        .toList(),
                file.photos().size());
    }

    private static Handling handling(ClaimFile file) {
        Optional<String> product = given(file.intake().planter().product());
        Optional<String> clean = file.intake().decontamination().confirmedBy();
        return clean.isPresent()
                ? new Handling(product, clean, Optional.empty())
                : new Handling(
                        product,
                        Optional.empty(),
                        ArrivalDesk.waived(file).map(each -> new Decision(each.person(), each.reason())));
    }

    private static Optional<Complaint> complaint(String code) {
        try {
            return code.isEmpty() ? Optional.empty() : Optional.of(Complaint.ofWord(code));
        } catch (OrderException e) {
            // A word of another version of the program: the person chooses.
            return Optional.empty();
        }
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(each -> !each.isEmpty());
    }

    @Override
    public void handled(String number, Handling handling) throws Exception {
        Patience.ask(
                () -> {
                    desk.arrivals().handled(number, handling);
                    return number;
                },
                desk.store());
    }

    @Override
    public int addPhoto(String number, Path file, Photo.Shows shows, String person) throws Exception {
        return desk.photos().add(number, file, shows, person).photos().size();
    }
}
