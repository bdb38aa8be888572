package org.pumpwright.host.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.TextReport;

/** Where records and their papers are kept: a folder for each run. Thread-safe. */
public final class RecordFolder {
    private final Path folder;

    /** @param folder made on first use */
    public RecordFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * The files of one run.
     *
     * @param record machine-readable, whole
     * @param page to print
     * @param text the same for a terminal
     */
    public record Kept(Path record, Path page, Path text) {}

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
     * Keeps a record and makes its papers. The record is written first and whole; papers can be made again from it.
     *
     * @throws RunRecordException when the disk does not take the record, or its papers
     */
    public Kept keep(RunRecord record, UnitSystem units) throws RunRecordException {
        Path own = folder.resolve(record.id());
        Kept kept = new Kept(own.resolve("record.json"), own.resolve("page.html"), own.resolve("page.txt"));
        try {
            RunRecordFile.write(record, kept.record());
            Files.writeString(kept.page(), HtmlReport.page(record, units), StandardCharsets.UTF_8);
            Files.writeString(kept.text(), TextReport.page(record, units), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new RunRecordException(
                    own,
                    "the papers can't be written: " + e,
                    "Free some space; the record itself is safe in " + kept.record());
        }
        return kept;
    }

    private OrderException notWritable(String why) {
        return new OrderException(
                "records can't be kept in %s: %s. Choose another folder: --records PATH".formatted(folder, why));
    }
}
