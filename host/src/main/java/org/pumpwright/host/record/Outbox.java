package org.pumpwright.host.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * A folder of marks: each says that something is safe in a file here, and not yet on record. A mark is made before the file
 * and taken away when the store has acknowledged, so nothing is forgotten, whatever ends the program in between. Thread-safe;
 * several programs may use one folder.
 */
public final class Outbox {
    /** Name of the folder beside the folders of runs. */
    public static final String NAME = "outbox";

    private static final long LARGEST_BYTES = 20_000_000;
    private static final String PART = ".part";

    private final Path folder;

    /** @param folder where marks are; made on first use */
    public Outbox(Path folder) {
        this.folder = folder;
    }

    /**
     * Makes a mark; one that is there already stays.
     *
     * @param name of the mark, a file name
     * @param text what it says
     * @throws IOException when the disk refuses
     */
    public void put(String name, String text) throws IOException {
        try {
            WholeFile.create(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
        } catch (FileAlreadyExistsException e) {
            if (!Files.isRegularFile(folder.resolve(name))) {
                throw e;
            }
        }
    }

    /** Makes a mark that a power cut may lose: for what can be made again at any time. */
    public void note(String name, String text) throws IOException {
        Files.createDirectories(folder);
        Path part = folder.resolve("." + name + "." + UUID.randomUUID() + PART);
        try {
            // A full disk leaves no half of a mark, nor takes away the one that was there.
            Files.writeString(part, text, StandardCharsets.UTF_8);
            Files.move(part, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Names of all marks, in alphabetical order; none when there is no folder yet, or no right to look. */
    public List<String> waiting() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> marks = Files.list(folder)) {
            return marks.filter(Files::isRegularFile)
                    .map(mark -> mark.getFileName().toString())
                    .filter(name -> !name.endsWith(PART))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    /**
     * What a mark says.
     *
     * @throws IOException when it can't be read; when another program has taken it away in the same moment, too
     */
    public String text(String name) throws IOException {
        Path mark = folder.resolve(name);
        if (Files.size(mark) > LARGEST_BYTES) {
            throw new IOException("%s is longer than %d bytes, a mark has at most that".formatted(mark, LARGEST_BYTES));
        }
        return Files.readString(mark, StandardCharsets.UTF_8);
    }

    /** Takes a mark away. One that stays is worked off again, which changes nothing. */
    public void remove(String name) {
        try {
            Files.deleteIfExists(folder.resolve(name));
        } catch (IOException e) {
            // The next one that looks finds what it marks on record, and tries again.
            return;
        }
    }
}
