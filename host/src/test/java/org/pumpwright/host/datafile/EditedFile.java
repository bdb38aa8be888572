package org.pumpwright.host.datafile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of a good data file in a temporary folder, with one part changed. */
public record EditedFile(Path good, Path folder) {

    /** A file of the project's data, by its path from the project's root. */
    public static Path fixture(String path) {
        return Path.of(System.getProperty("pumpwright.root"), "fixtures").resolve(path);
    }

    /** Writes the copy and names it; the part to be changed must be there. */
    public Path with(String part, String changed) {
        try {
            String text = Files.readString(good);
            assertThat(text).contains(part);
            return Files.writeString(folder.resolve("edited.yaml"), text.replace(part, changed));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
