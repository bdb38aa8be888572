package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.IntakeSheetFile;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.datafile.DataFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Puts an intake on record. */
@Command(
        name = "open",
        description = {
            "Puts the intake of a unit on record, from a sheet or from options. What is left",
            "out is named; a unit is tested only when nothing that must be there is missing.",
            ""
        },
        mixinStandardHelpOptions = true)
final class OpenCommand extends DeskCommand {
    @Option(
            names = "--sheet",
            paramLabel = "FILE",
            description = "A sheet that was filled in; options are then not read.")
    private @Nullable Path sheet;

    @Option(
            names = "--corrects",
            paramLabel = "TEXT",
            description = "Why this sheet takes the place of the claim's first one; both stay on record.")
    private @Nullable String corrects;

    @Mixin
    private IntakeOptions typed = new IntakeOptions();

    OpenCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        ClaimIntake intake = intake(OffsetDateTime.now(desk.clock()));
        known(desk, intake);
        ClaimFile file =
                corrects == null ? desk.desk().open(intake) : desk.desk().correct(intake, corrects);
        out.println("Claim %s is %s.".formatted(file.number(), corrects == null ? "open" : "corrected"));
        out.println();
        desk.data()
                .cautions(file.intake().planter().product())
                .forEach(caution -> out.println("CAUTION        " + caution));
        String missing = file.missing().stream()
                .filter(Missing::beforeTheTest)
                .map(Missing::word)
                .collect(Collectors.joining(", "));
        out.println();
        out.println(
                missing.isEmpty() ? "The intake is whole." : "Before the unit can be tested, add: " + missing + ".");
    }

    private ClaimIntake intake(OffsetDateTime now) throws OrderException, DataFileException {
        if (sheet != null) {
            return IntakeSheetFile.read(sheet, now);
        }
        try {
            return typed.intake(now);
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }

    /** A typing error here would be found only when the unit is on the stand. */
    private static void known(OpenDesk desk, ClaimIntake intake) throws OrderException, DataFileException {
        String model = intake.unit().model();
        if (!model.isEmpty() && desk.data().model(model).isEmpty()) {
            throw new OrderException(
                    "there is no model '%s'. A model is a file in fixtures/models; leave it empty while it is not known."
                            .formatted(model));
        }
    }
}
