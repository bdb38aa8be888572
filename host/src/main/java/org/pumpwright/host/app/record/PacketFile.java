package org.pumpwright.host.app.record;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.exchange.EntryLine;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Entries as files in a ZIP file, with everything that is needed to check them by programs that every machine has: sha256sum and
 * openssl. Thread-safe.
 */
public final class PacketFile {
    /** The same packet has the same bytes on whatever day it is made. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final String MANIFEST = "MANIFEST.sha256";

    private PacketFile() {}

    /**
     * Writes a packet.
     *
     * @param file must not exist
     * @return how many entries are in it
     * @throws OrderException when the file is there already or can't be written
     */
    public static int write(HandingOut out, List<Entry> entries, Path file) throws OrderException, StoreException {
        if (Files.exists(file)) {
            throw new OrderException("%s is already there and stays as it is. Choose another name.".formatted(file));
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        entries.forEach(out::remember);
        List<String> manifest = new ArrayList<>();
        int count = 0;
        try {
            try (OutputStream bytes = Files.newOutputStream(part);
                    ZipOutputStream zip = new ZipOutputStream(bytes)) {
                for (Map.Entry<String, String> key : out.keys().entrySet()) {
                    add(zip, manifest, "keys/" + key.getKey() + ".pub", bytes(key.getValue()));
                }
                for (Entry entry : entries) {
                    Optional<EntryLine> line = out.line(entry);
                    if (line.isPresent()) {
                        count++;
                        add(zip, manifest, "entries/%04d".formatted(count), entry, line.get());
                    }
                }
                add(zip, manifest, "HOW-TO-CHECK.txt", bytes(howTo(entries)));
                add(zip, new ArrayList<>(), MANIFEST, bytes(String.join("", manifest)));
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return count;
        } catch (IOException e) {
            throw new OrderException("the packet %s can't be written: %s. Free some space or choose another folder."
                    .formatted(file, e.getMessage()));
        } finally {
            remove(part);
        }
    }

    private static void add(ZipOutputStream zip, List<String> manifest, String name, Entry entry, EntryLine line)
            throws IOException {
        add(zip, manifest, name + ".header.json", bytes(line.header()));
        add(
                zip,
                manifest,
                name + ".signature",
                HexFormat.of().parseHex(line.seal().signature()));
        if (line.content().isPresent()) {
            add(zip, manifest, name + ".content.json", bytes(line.content().get()));
        }
        if (line.finder().isPresent()) {
            add(zip, manifest, name + ".finder.json", bytes(line.finder().get()));
        }
        for (int i = 0; i < line.attachments().size(); i++) {
            if (line.attachments().get(i).isPresent()) {
                add(
                        zip,
                        manifest,
                        "%s.beside-%d.%s".formatted(name, i, ending(entry)),
                        line.attachments().get(i).get());
            }
        }
    }

    private static String ending(Entry entry) {
        return switch (entry.kind()) {
            case RUN, GRADE -> "trace";
            case CURVE, STAND -> "yaml";
            case PHOTO -> "jpg";
            default -> "json";
        };
    }

    private static void add(ZipOutputStream zip, List<String> manifest, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
        manifest.add("%s  %s\n".formatted(Digest.of(bytes).hex(), name));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // It has a name that says what it is; the next packet of that name writes over it.
            return;
        }
    }

    private static String howTo(List<Entry> entries) {
        String key = entries.isEmpty() ? "desk" : entries.get(0).chain();
        return """
                This packet holds entries of a test record. No program of its own is needed to check it.

                1. That no file was changed:
                     sha256sum -c %s
                2. That an entry was signed by the stand whose key you were given (OpenSSL 3):
                     openssl pkeyutl -verify -pubin -inkey keys/%s.pub -rawin \\
                       -in entries/0001.header.json -sigfile entries/0001.signature
                   Compare keys/*.pub with the key that the shop gave you by another way.
                3. That the content is the one that was signed: the digest of NNNN.content.json stands in
                   NNNN.header.json as content_sha256; that of each NNNN.beside-N file in attachments_sha256:
                     sha256sum entries/0001.content.json
                4. That nothing lies between two entries of a chain: prior_sha256 of one names the one before.
                """.formatted(MANIFEST, key);
    }
}
