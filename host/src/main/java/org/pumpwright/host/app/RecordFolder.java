package org.pumpwright.host.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.JournalFile;
import org.pumpwright.host.record.JournalReader;
import org.pumpwright.host.record.Outbox;
import org.pumpwright.host.record.RecordHead;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.TextReport;

/** Where records and their papers are kept: a folder for each run. Thread-safe. */
public final class RecordFolder {
    private static final String RECORD = RecordSearch.RECORD;
    private static final String JOURNAL = "journal.jsonl";

    /** What the mark of a run says: that it is one. */
    private static final String MARK = "run";

    private final Path folder;
    private final Path spare;
    private final boolean marking;

    /**
     * Folders of records, made on first use.
     *
     * @param folder where records belong
     * @param spare where a run is kept when its own folder does not take it
     */
    public RecordFolder(Path folder, Path spare) {
        this(folder, spare, false);
    }

    private RecordFolder(Path folder, Path spare, boolean marking) {
        this.folder = folder;
        this.spare = spare;
        this.marking = marking;
    }

    /** The same that marks each run it keeps as one that is still to be put on record; see {@link Outbox}. */
    public RecordFolder marking() {
        return new RecordFolder(folder, spare, true);
    }

    /** The marks of a folder of records. */
    public static Outbox outbox(Path records) {
        return new Outbox(records.resolve(Outbox.NAME));
    }

    /** The file of a run's record in a folder of records. */
    public static Path file(Path records, String id) {
        return records.resolve(id).resolve(RECORD);
    }

    /** Whether a run of which there is no record yet may still become one: its journal is there. */
    public static boolean isUnderWay(Path records, String id) {
        return Files.exists(journal(records, id));
    }

    /**
     * The files of one run.
     *
     * @param record machine-readable, whole
     * @param page to print
     * @param text the same for a terminal
     * @param trouble what went wrong with keeping them, and what to do; empty when all is where it belongs
     */
    public record Kept(Path record, Path page, Path text, Optional<String> trouble) {}

    /**
     * Makes sure that a record can be kept, before anything moves.
     *
     * @throws OrderException when the folder can't be made or written
     */
    public void checkWritable() throws OrderException {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw notWritable(e.toString());
        }
        if (!Files.isWritable(folder)) {
            throw notWritable("no right to write");
        }
    }

    /**
     * Begins the journal of a run, in the spare folder where its own does not take it.
     *
     * @param begun what the record would be if nothing came after it
     * @throws RunRecordException when the spare folder does not take it either: then nothing would be kept of a run
     */
    public JournalFile begin(RunRecord begun) throws RunRecordException {
        try {
            return JournalFile.begin(begun, journal(folder, begun.id()));
        } catch (RunRecordException e) {
            return JournalFile.begin(begun, journal(spare, begun.id()));
        }
    }

    /**
     * What came of runs that did not live to their end.
     *
     * @param kept their records
     * @param troubles what could not be recovered and why, and what to do
     */
    public record Recovered(List<Kept> kept, List<String> troubles) {}

    /**
     * Makes records of the journals that runs left which did not live to their end, oldest first. A run that still goes on is
     * left alone. What cannot be recovered stays where it is, is told, and stops nothing.
     */
    public Recovered recover(UnitSystem units) {
        Recovered recovered = new Recovered(new ArrayList<>(), new ArrayList<>());
        for (Path where : List.of(folder, spare)) {
            try {
                for (Path journal : JournalReader.find(where, JOURNAL)) {
                    recover(journal, units, recovered);
                }
            } catch (RunRecordException e) {
                recovered.troubles().add(e.getMessage());
            }
        }
        return recovered;
    }

    private void recover(Path journal, UnitSystem units, Recovered recovered) {
        String id = String.valueOf(journal.resolveSibling("").getFileName());
        try {
            Optional<RunRecord> found = JournalReader.read(journal);
            if (found.isEmpty()) {
                return;
            }
            if (!found.get().id().equals(id)) {
                recovered
                        .troubles()
                        .add("%s: is the journal of run %s. Move it to the folder of that run, or away."
                                .formatted(journal, found.get().id()));
                return;
            }
            if (!isKept(id)) {
                recovered.kept().add(keep(found.get(), units));
            }
            JournalReader.remove(journal);
        } catch (RunRecordException e) {
            // Another program may have recovered the same run in the same moment; then it is kept.
            if (!isKept(id)) {
                recovered.troubles().add(e.getMessage());
            }
        }
    }

    /**
     * The heads of the records of runs that began at that time or later, oldest first. What can't be read is left out: it is
     * told when somebody asks for it.
     */
    List<RecordHead> since(Instant from) {
        Set<String> ids = new TreeSet<>(runs(folder));
        ids.addAll(runs(spare));
        ids.removeIf(
                id -> RecordId.beginning(id).map(began -> began.isBefore(from)).orElse(true));
        return ids.stream().flatMap(id -> head(id).stream()).toList();
    }

    /** Names of what lies in a folder; none when there is no such folder yet, or no right to look. */
    private static List<String> runs(Path folder) {
        try (Stream<Path> runs = Files.list(folder)) {
            return runs.map(run -> run.getFileName().toString()).toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    private Optional<RecordHead> head(String id) {
        return RecordHead.of(folder.resolve(id).resolve(RECORD))
                .or(() -> RecordHead.of(spare.resolve(id).resolve(RECORD)));
    }

    /** A run whose record was kept, and whose program died before it had removed the journal. */
    private boolean isKept(String id) {
        return Files.exists(folder.resolve(id).resolve(RECORD))
                || Files.exists(spare.resolve(id).resolve(RECORD));
    }

    private static Path journal(Path folder, String id) {
        return folder.resolve(id).resolve(JOURNAL);
    }

    /**
     * Keeps a record and makes its papers. The record is written first and whole; papers can be made again from it. A folder
     * that does not take the record, because the disk is full or gone, costs nothing: the run cannot be had again, so it goes
     * to the spare folder.
     *
     * @throws RunRecordException when the spare folder does not take the record either
     */
    public Kept keep(RunRecord record, UnitSystem units) throws RunRecordException {
        try {
            return keepIn(folder, record, units);
        } catch (RunRecordException e) {
            Kept kept = keepIn(spare, record, units);
            String moved = "%s The run is kept in %s instead: move it to %s when that works again."
                    .formatted(e.getMessage(), kept.record().getParent(), folder);
            return new Kept(kept.record(), kept.page(), kept.text(), Optional.of(moved));
        }
    }

    /**
     * Keeps a record that can be made again at any time: in this folder or not at all.
     *
     * @throws RunRecordException when the folder does not take it, or holds it already
     */
    public Kept add(RunRecord record, UnitSystem units) throws RunRecordException {
        return keepIn(folder, record, units);
    }

    private Kept keepIn(Path folder, RunRecord record, UnitSystem units) throws RunRecordException {
        Path own = folder.resolve(record.id());
        Path file = own.resolve(RECORD);
        if (marking) {
            mark(folder, record);
        }
        Path page = own.resolve("page.html");
        Path text = own.resolve("page.txt");
        RunRecordFile.write(record, file);
        try {
            Files.writeString(page, HtmlReport.page(record, units), StandardCharsets.UTF_8);
            Files.writeString(text, TextReport.page(record, units), StandardCharsets.UTF_8);
        } catch (IOException | RuntimeException e) {
            String trouble = "%s: the papers can't be written: %s. Free some space; the record itself is safe in %s."
                    .formatted(own, e, file);
            return new Kept(file, page, text, Optional.of(trouble));
        }
        return new Kept(file, page, text, Optional.empty());
    }

    /** Before the record, so that none is forgotten; a run that can be judged again at any time costs no wait for the disk. */
    private static void mark(Path folder, RunRecord record) throws RunRecordException {
        try {
            if (record.regradedFrom().isPresent()) {
                outbox(folder).note(record.id(), MARK);
            } else {
                outbox(folder).put(record.id(), MARK);
            }
        } catch (IOException e) {
            throw new RunRecordException(
                    folder.resolve(Outbox.NAME).resolve(record.id()),
                    "cannot be written: " + e.getMessage(),
                    "Check that the disk is there, not full and not write-protected");
        }
    }

    private OrderException notWritable(String why) {
        return new OrderException(
                "records can't be kept in %s: %s. Choose another folder: --records PATH".formatted(folder, why));
    }
}
