package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.ClaimEntries;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.RunEntry;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Packs everything of a claim into one zip file that anybody can check: papers, tables, pictures, raw samples, the entries as
 * they were signed, and the digest of each. The same claim gives the same bytes. Nothing of the people is in it unless it is
 * asked for. Confined to one thread.
 */
public final class ClaimPacket {
    /** Zip files keep no time zone: a fixed time makes the same bytes everywhere. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final String HOW_TO_CHECK = """
            This packet holds the evidence of one claim.

            papers/    pages to read; each PDF holds the signed record it was made of (pdfdetach -saveall FILE.pdf)
            summary.csv, runs/*/trace.csv    the same as tables; trace.csv holds counts as the board counted them
            runs/*/trace.bin    the samples as they are kept; its digest stands in the run's entry
            photos/    pictures, each named by its SHA-256
            entries/   every entry on record: header (what is signed), content, signature
            MANIFEST.sha256    the SHA-256 of every other file

            To check the files:     sha256sum --check MANIFEST.sha256
            To check an entry:      the SHA-256 of NAME.content.json is content_sha256 of NAME.header.json;
                                    NAME.signature is Ed25519 (RFC 8032), hexadecimal, over the bytes of NAME.header.json,
                                    by the key whose X.509 form has the SHA-256 key_sha256
            Who brought the unit and whose it is stands in identity.json only when that was asked for.
            """;

    private final RecordStore store;
    private final PhotoFolder photos;
    private final Map<String, byte[]> files = new TreeMap<>();

    /**
     * @param store is only read
     * @param photos where pictures are kept
     */
    public ClaimPacket(RecordStore store, PhotoFolder photos) {
        this.store = store;
        this.photos = photos;
    }

    /** Makes the papers of a run. */
    @FunctionalInterface
    public interface RunPapers {
        /**
         * Each paper under its name.
         *
         * @param run its entry
         * @throws OrderException when a paper can't be made
         */
        Map<String, byte[]> of(Entry run) throws OrderException, DataFileException, RunRecordException, StoreException;
    }

    /**
     * Packs a claim.
     *
     * @param claim with its entries
     * @param papers of the claim itself, by name
     * @param ofRuns makes the papers of each run
     * @param withCustomer whether the people are put in
     * @throws OrderException when a picture is gone or was changed, or the file can't be written
     */
    public void write(
            ClaimReview.Reviewed claim, Map<String, byte[]> papers, RunPapers ofRuns, boolean withCustomer, Path out)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        files.clear();
        papers.forEach((name, bytes) -> files.put("papers/" + name, bytes));
        text("README.txt", HOW_TO_CHECK);
        text("summary.csv", SummaryCsv.of(claim.file()));
        photos(claim.file());
        for (Entry entry : claim.entries()) {
            entry(entry);
            if (RunEntry.is(entry)) {
                run(entry, ofRuns);
            } else if (withCustomer) {
                identity(entry);
            }
        }
        files.put("MANIFEST.sha256", manifest().getBytes(StandardCharsets.UTF_8));
        zip(out);
    }

    private void text(String name, String text) {
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private void photos(ClaimFile file) throws OrderException {
        for (Photo photo : file.photos()) {
            try {
                files.put(
                        "photos/%s-%s.%s"
                                .formatted(
                                        photo.shows().word(),
                                        photo.sha256().hex(),
                                        photo.format().ending()),
                        photos.read(photo));
            } catch (IOException e) {
                throw new OrderException(String.valueOf(e.getMessage()));
            }
        }
    }

    private void entry(Entry entry) {
        String name = "entries/" + safe(entry.id());
        files.put(name + ".header.json", entry.header());
        text(name + ".content.json", entry.content());
        text(name + ".signature", entry.seal().signature() + "\n");
    }

    private void run(Entry entry, RunPapers papers)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        if (entry.attachments().isEmpty()) {
            return;
        }
        Optional<byte[]> blob = store.attachment(entry.attachments().get(0));
        if (blob.isEmpty()) {
            return;
        }
        String name = "runs/" + safe(entry.id());
        files.put(name + "/trace.bin", blob.get());
        RunRecord run = RunContent.read(entry.content(), blob.get());
        text(name + "/trace.csv", TraceCsv.of(run.trace()));
        papers.of(entry).forEach((paper, bytes) -> files.put("papers/%s-%s".formatted(safe(entry.id()), paper), bytes));
    }

    private void identity(Entry entry) throws StoreException {
        if (ClaimEntries.isAct(entry) && !entry.attachments().isEmpty()) {
            store.attachment(entry.attachments().get(0)).ifPresent(bytes -> files.put("identity.json", bytes));
        }
    }

    private static String safe(String id) {
        return id.replaceAll("[^A-Za-z0-9._-]", "_");
    }

    private String manifest() {
        return files.entrySet().stream()
                .map(file -> "%s  %s\n".formatted(Digest.of(file.getValue()).hex(), file.getKey()))
                .collect(Collectors.joining());
    }

    private void zip(Path out) throws OrderException {
        try {
            Path folder = out.toAbsolutePath().getParent();
            Files.createDirectories(folder);
            Path part = Files.createTempFile(folder, "packet", ".part");
            try (OutputStream bytes = Files.newOutputStream(part);
                    ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    ZipEntry entry = new ZipEntry(file.getKey());
                    entry.setTimeLocal(TIME);
                    zip.putNextEntry(entry);
                    zip.write(file.getValue());
                    zip.closeEntry();
                }
            }
            Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new OrderException(
                    "%s can't be written: %s. Free some space, or choose another place.".formatted(out, e));
        }
    }
}
