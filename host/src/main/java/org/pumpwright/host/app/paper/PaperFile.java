package org.pumpwright.host.app.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** Writes papers. Thread-safe. */
public final class PaperFile {
    private PaperFile() {}

    /**
     * Writes a paper whole or not at all: half a paper must not be printed. Folders are made; a paper that is there is replaced.
     *
     * @throws IOException when it can't be written
     */
    public static void write(Path target, byte[] bytes) throws IOException {
        Path whole = target.toAbsolutePath();
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, "paper", ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
