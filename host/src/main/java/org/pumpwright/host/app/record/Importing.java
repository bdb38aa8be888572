package org.pumpwright.host.app.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Takes in what other stands and older versions wrote: files of entries, records of runs and of bucket tests, single or in
 * folders. What is on record already stays as it is. Confined to one thread.
 */
public final class Importing {
    /** Enough to tell what a file is. */
    private static final int FIRST_BYTES = 200;

    private final RecordBook book;

    /** @param book where it is put on record */
    public Importing(RecordBook book) {
        this.book = book;
    }

    /**
     * What came of one file or folder.
     *
     * @param file as it was named
     * @param found how many entries or records it holds
     * @param fresh how many of them are new
     * @param unknownKeys names of the keys that signed them and are not trusted here
     */
    public record Taken(Path file, int found, int fresh, List<String> unknownKeys) {
        public Taken {
            unknownKeys = List.copyOf(unknownKeys);
        }
    }

    /**
     * Takes one file or folder.
     *
     * @throws OrderException when it is none of these, or was changed; nothing of a file is taken then
     * @throws RunRecordException when a record is damaged
     * @throws StoreException when the store does not take it
     */
    public Taken take(Path path) throws OrderException, RunRecordException, StoreException {
        try {
            if (Files.isDirectory(path)) {
                return takeAll(path);
            }
            return TakingIn.isFor(path) ? new TakingIn(book, path).take() : new Taken(path, 1, one(path), List.of());
        } catch (IOException | UncheckedIOException e) {
            throw new OrderException("%s can't be read: %s. Check the name and its rights."
                    .formatted(path, e instanceof NoSuchFileException ? "it is not there" : e.getMessage()));
        }
    }

    private Taken takeAll(Path folder) throws IOException, OrderException, RunRecordException, StoreException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(file -> file.endsWith("record.json") || file.endsWith("bucket.json"))
                    .sorted()
                    .forEach(files::add);
        }
        if (files.isEmpty()) {
            throw new OrderException(
                    "there are no records in %s. Give a folder with files record.json or bucket.json, or a file of entries."
                            .formatted(folder));
        }
        int fresh = 0;
        for (Path file : files) {
            fresh += one(file);
        }
        return new Taken(folder, files.size(), fresh, List.of());
    }

    /** 1 when it is new, else 0. */
    private int one(Path file) throws IOException, OrderException, RunRecordException, StoreException {
        String first = first(file);
        if (first.contains("\"pumpwright-run/")) {
            RunRecord run = RunRecordFile.read(file);
            return book.enterLate(Drafts.run(run, book.customerOf(run.intake().claim()))) ? 1 : 0;
        }
        if (first.contains("\"pumpwright-bucket/")) {
            Draft draft =
                    Drafts.bucketTest(BucketRecordFile.read(file), book.choice().desk());
            return book.enterLate(draft) ? 1 : 0;
        }
        throw new OrderException(
                "%s is neither a record of a run, nor of a bucket test, nor a file of entries. Give one of these, or a folder of records."
                        .formatted(file));
    }

    private static String first(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(FIRST_BYTES), StandardCharsets.UTF_8);
        }
    }
}
