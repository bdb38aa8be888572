package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.Photo.Shows;
import org.pumpwright.host.claim.Photo.TimeBy;
import org.pumpwright.host.claim.RefusedException;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.claim.photo.Picture;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.StoreException;

/** Takes pictures into a claim: the bytes first, then the entry that names them. Thread-safe. */
public final class PhotoDesk {
    private final ClaimDesk desk;
    private final PhotoFolder folder;
    private final ZoneId zone;

    /**
     * @param desk puts the entry on record
     * @param folder keeps the bytes
     * @param zone the shop's, for the time of a file
     */
    public PhotoDesk(ClaimDesk desk, PhotoFolder folder, ZoneId zone) {
        this.desk = desk;
        this.folder = folder;
        this.zone = zone;
    }

    /**
     * Adds a picture.
     *
     * @param person who hands it in
     * @throws OrderException when it can't be read, is no picture, or there is no such claim
     */
    public ClaimFile add(String claim, Path file, Shows shows, String person)
            throws OrderException, DataFileException, StoreException {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > Photo.MOST_BYTES) {
                throw new OrderException("%s has %d bytes, a picture has at most %d (20 MB)"
                        .formatted(file, Files.size(file), Photo.MOST_BYTES));
            }
            byte[] bytes = Files.readAllBytes(file);
            Picture picture = Picture.of(name, bytes);
            Optional<LocalDateTime> byCamera = picture.taken();
            LocalDateTime byFile =
                    LocalDateTime.ofInstant(Files.getLastModifiedTime(file).toInstant(), zone);
            return desk.act(
                    claim,
                    (now, at) -> new Act.Pictured(new Photo(
                            kept(bytes, picture),
                            bytes.length,
                            picture.format(),
                            shows,
                            byCamera.orElse(byFile),
                            byCamera.isPresent() ? TimeBy.CAMERA : TimeBy.FILE,
                            name,
                            person,
                            at)),
                    Optional.empty());
        } catch (RefusedException e) {
            throw new OrderException(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new OrderException("%s can't be read: %s".formatted(file, e));
        }
    }

    private Digest kept(byte[] bytes, Picture picture) throws OrderException {
        try {
            return folder.keep(bytes, picture.format());
        } catch (IOException e) {
            throw new OrderException(
                    "the picture can't be kept: %s. Free some space, or choose another folder.".formatted(e));
        }
    }
}
