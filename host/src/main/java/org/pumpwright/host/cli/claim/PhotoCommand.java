package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.claim.Photo.TimeBy;
import org.pumpwright.host.cli.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds a picture to a claim. */
@Command(
        name = "photo",
        description = "Adds a picture, JPEG or PNG, at most 20 MB: it is copied and known by its digest.",
        mixinStandardHelpOptions = true)
final class PhotoCommand extends DeskCommand {
    @Parameters(index = "0", paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Parameters(index = "1", paramLabel = "FILE", description = "The picture.")
    private Path file = Path.of("");

    @Option(
            names = "--shows",
            required = true,
            paramLabel = "WHAT",
            description = "plate, connector, ports, whole, damage or other.")
    private String shows = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who hands it in.")
    private String by = "";

    PhotoCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        ClaimFile claim = desk.photos().add(number, file, what(), by);
        Photo photo = claim.photos().get(claim.photos().size() - 1);
        out.println("Kept: %s, %d bytes".formatted(desk.photoFolder().file(photo), photo.bytes()));
        out.println("Taken %s, %s"
                .formatted(
                        photo.takenAt(),
                        photo.by() == TimeBy.CAMERA
                                ? "by the camera's clock"
                                : "by the time of the file, for the picture itself holds none"));
    }

    private Shows what() throws OrderException {
        try {
            return Shows.ofWord(shows);
        } catch (IllegalArgumentException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        }
    }
}
