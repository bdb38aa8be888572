package org.pumpwright.host.app.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/** Finds the run or the bucket test that a paper is asked for. Thread-safe. */
public final class RecordLookUp {
    private static final List<EntryKind> KINDS = List.of(EntryKind.RUN, EntryKind.GRADE, EntryKind.BUCKET_TEST);
    private static final int LOOKED_AT = 200;
    private static final int NAMED = 5;

    private final RecordBook book;

    /** @param book is only read */
    public RecordLookUp(RecordBook book) {
        this.book = book;
    }

    /**
     * What was asked for.
     *
     * @param wanted id of an entry, its beginning or its end; or a file or folder of a record
     * @throws OrderException when there is none or more than one, it is of another kind, or it was changed after it was signed
     * @throws RunRecordException when the file is no record
     * @throws StoreException when the store fails
     */
    public Found find(String wanted) throws OrderException, RunRecordException, StoreException {
        Optional<Path> file = file(wanted);
        return file.isPresent() ? read(file.get()) : read(OnRecord.of(book, id(wanted.strip())));
    }

    /**
     * An entry as papers are made of it.
     *
     * @throws OrderException when it is no run and no bucket test, or was changed after it was signed
     * @throws RunRecordException when what is kept beside it can't be read
     */
    public static Found read(OnRecord there) throws OrderException, RunRecordException {
        Entry entry = there.entry();
        if (there.seal() == OnRecord.Seal.BROKEN) {
            throw new OrderException(
                    "entry %s was changed after it was signed: no paper is made of it. Look at it: pumpwright record show %s; find all that was changed: pumpwright record audit."
                            .formatted(entry.id(), entry.id()));
        }
        if (entry.amends().isPresent() || !KINDS.contains(entry.kind())) {
            throw new OrderException("entry %s is a %s. Papers are made of runs and bucket tests."
                    .formatted(
                            entry.id(),
                            entry.amends().isPresent()
                                    ? "correction"
                                    : entry.kind().word()));
        }
        byte[] beside = there.attachments().stream()
                .findFirst()
                .flatMap(first -> first)
                .orElseThrow(() -> new OrderException(
                        "what is kept beside entry %s is missing. Bring the store back from a backup: pumpwright record restore."
                                .formatted(entry.id())));
        if (entry.kind() == EntryKind.BUCKET_TEST) {
            BucketRecord test = BucketRecordFile.read(Path.of(BucketRecordFile.FORMAT.replace('/', '-')), beside);
            return new Found.Bucket(test, Optional.of(there));
        }
        try {
            return new Found.Run(RunContent.read(entry.content(), beside), Optional.of(there));
        } catch (IllegalArgumentException e) {
            throw new OrderException("entry %s: %s".formatted(entry.id(), e.getMessage()));
        }
    }

    private static Optional<Path> file(String wanted) {
        try {
            Path path = Path.of(wanted);
            if (Files.isDirectory(path) && Files.isRegularFile(path.resolve("record.json"))) {
                return Optional.of(path.resolve("record.json"));
            }
            return Files.isRegularFile(path) || wanted.endsWith(".json") ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static Found read(Path file) throws RunRecordException {
        return isBucketTest(file)
                ? new Found.Bucket(BucketRecordFile.read(file), Optional.empty())
                : new Found.Run(RunRecordFile.read(file), Optional.empty());
    }

    private static boolean isBucketTest(Path file) {
        try (var lines = Files.lines(file)) {
            return lines.limit(3).anyMatch(line -> line.contains(BucketRecordFile.FORMAT));
        } catch (IOException | java.io.UncheckedIOException e) {
            return false;
        }
    }

    /** The whole id of what begins or ends like this. */
    private String id(String wanted) throws OrderException, StoreException {
        if (book.reading().find(wanted).isPresent()) {
            return wanted;
        }
        List<String> beginning = new ArrayList<>();
        if (wanted.length() >= Search.LEAST_CONTAINS) {
            for (EntryKind kind : KINDS) {
                for (Entry entry : book.reading()
                        .search(Search.newest(LOOKED_AT).ofKind(kind).containing(wanted))) {
                    String own = entry.id().substring(entry.id().lastIndexOf('/') + 1);
                    if (own.equals(wanted)) {
                        return entry.id();
                    }
                    boolean begins = own.startsWith(wanted) || entry.id().startsWith(wanted);
                    if (begins && entry.amends().isEmpty()) {
                        beginning.add(entry.id());
                    }
                }
            }
        }
        if (beginning.size() > 1) {
            throw new OrderException("%d entries begin with %s: %s. Give more of it."
                    .formatted(
                            beginning.size(),
                            wanted,
                            String.join(", ", beginning.subList(0, Math.min(NAMED, beginning.size())))));
        }
        return beginning.isEmpty() ? wanted : beginning.get(0);
    }
}
