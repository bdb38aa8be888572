package org.pumpwright.host.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds the files of records. Thread-safe. */
final class RecordSearch {
    /** Name of a record's file in the folder of its run. */
    static final String RECORD = "record.json";

    private RecordSearch() {}

    /**
     * The files, and those that lie in the folders, each folder in the order of its names.
     *
     * @throws OrderException when there is none, or a folder can't be read
     */
    static List<Path> files(List<Path> paths) throws OrderException {
        List<Path> files = new ArrayList<>();
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                files.addAll(within(path));
            } else {
                files.add(path);
            }
        }
        if (files.isEmpty()) {
            throw new OrderException("there are no records in %s. Give files named %s, or folders that hold them."
                    .formatted(words(paths), RECORD));
        }
        return files;
    }

    private static String words(List<Path> paths) {
        return String.join(", ", paths.stream().map(Path::toString).toList());
    }

    private static List<Path> within(Path folder) throws OrderException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.endsWith(RECORD)).sorted().toList();
        } catch (IOException | UncheckedIOException e) {
            throw new OrderException(
                    "%s can't be read: %s. Check the folder's rights.".formatted(folder, e.getMessage()));
        }
    }
}
