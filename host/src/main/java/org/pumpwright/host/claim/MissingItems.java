package org.pumpwright.host.claim;

import java.util.ArrayList;
import java.util.List;
import org.pumpwright.host.claim.Photo.Shows;

/** Finds what a claim lacks. Thread-safe. */
final class MissingItems {
    private MissingItems() {}

    static List<Missing> of(ClaimFile file) {
        List<Missing> missing = new ArrayList<>();
        ofIntake(file.intake(), missing);
        ofPhotos(file, missing);
        lacks(missing, Missing.RUN, file.runs().isEmpty());
        lacks(
                missing,
                Missing.TRACE,
                !file.runs().isEmpty()
                        && file.runs().stream().noneMatch(run -> run.trace().isPresent()));
        lacks(missing, Missing.FINDING, file.findings().isEmpty());
        lacks(missing, Missing.DECISION, file.decisions().isEmpty());
        return missing;
    }

    private static void ofIntake(ClaimIntake intake, List<Missing> missing) {
        lacks(missing, Missing.BROUGHT_BY, intake.people().broughtBy().isEmpty());
        lacks(missing, Missing.CONTACT, intake.people().contact().isEmpty());
        lacks(missing, Missing.CUSTOMER, intake.people().customer().isEmpty());
        ofUnit(intake.unit(), missing);
        lacks(missing, Missing.COMPLAINT, intake.complaint().words().isEmpty());
        lacks(missing, Missing.COMPLAINT_CODE, intake.complaint().code().isEmpty());
        lacks(missing, Missing.PRODUCT, intake.planter().product().isEmpty());
        lacks(
                missing,
                Missing.DECONTAMINATION_DECLARED,
                intake.decontamination().declared().isEmpty());
        lacks(
                missing,
                Missing.DECONTAMINATION_CONFIRMED,
                !intake.decontamination().confirmed());
        ofUse(intake.use(), missing);
    }

    private static void ofUnit(UnitAsReceived unit, List<Missing> missing) {
        lacks(missing, Missing.KIND, unit.kind().isEmpty());
        lacks(missing, Missing.MODEL, unit.model().isEmpty());
        lacks(missing, Missing.SERIAL, unit.serial().isEmpty());
        lacks(missing, Missing.DATE_CODE, unit.dateCode().isEmpty());
        lacks(missing, Missing.ACCESSORIES, unit.accessories().isEmpty());
        lacks(missing, Missing.SEAL, unit.seal().isEmpty());
        lacks(missing, Missing.TAG, unit.tag().isEmpty());
    }

    private static void ofUse(TimeInUse use, List<Missing> missing) {
        lacks(missing, Missing.SALE_DATE, use.sold().isEmpty());
        lacks(missing, Missing.FIRST_USE, use.firstUsed().isEmpty());
        lacks(
                missing,
                Missing.HOURS_OR_ACRES,
                use.hours().isEmpty() && use.acres().isEmpty());
    }

    private static void ofPhotos(ClaimFile file, List<Missing> missing) {
        lacks(missing, Missing.PHOTO_PLATE, !shows(file, Shows.PLATE));
        lacks(missing, Missing.PHOTO_CONNECTOR, !shows(file, Shows.CONNECTOR));
        lacks(missing, Missing.PHOTO_PORTS, !shows(file, Shows.PORTS));
        lacks(missing, Missing.PHOTO_WHOLE, !shows(file, Shows.WHOLE));
    }

    private static boolean shows(ClaimFile file, Shows what) {
        return file.photos().stream().anyMatch(photo -> photo.shows() == what);
    }

    private static void lacks(List<Missing> missing, Missing item, boolean absent) {
        if (absent) {
            missing.add(item);
        }
    }
}
