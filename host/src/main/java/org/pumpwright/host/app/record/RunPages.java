package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.report.retest.RetestPage;
import org.pumpwright.host.report.retest.RunSpread;
import org.pumpwright.host.text.Texts;

/** Makes the pages of runs on record as PDF files, to look at and to print. Thread-safe. */
public final class RunPages {
    private final Path folder;
    private final Sheet sheet;

    /**
     * @param folder where the pages go, made on first use
     * @param sheet their size
     */
    public RunPages(Path folder, Sheet sheet) {
        this.folder = folder;
        this.sheet = sheet;
    }

    /**
     * The technician's page.
     *
     * @throws OrderException when it can't be written
     */
    public Path technician(RunRecord run, UnitSystem units, Texts texts) throws OrderException {
        byte[] record = RunContent.of(run).getBytes(StandardCharsets.UTF_8);
        byte[] page = PdfPaper.of(
                HtmlReport.page(run, units, texts),
                sheet,
                origin(run.startedAt()),
                Optional.of(Attachment.record(record)));
        return written(run.id() + "-technician.pdf", page);
    }

    /**
     * Two runs of one unit on a page.
     *
     * @throws OrderException when it can't be written
     */
    public Path retest(RunRecord one, RunRecord other, RunSpread spread, UnitSystem units, Texts texts)
            throws OrderException {
        byte[] page = PdfPaper.of(
                RetestPage.html(one, other, spread, units, texts), sheet, origin(other.startedAt()), Optional.empty());
        return written(one.id() + "-and-" + other.id() + ".pdf", page);
    }

    private static Origin origin(OffsetDateTime at) {
        return new Origin("", at, Version.text());
    }

    private Path written(String name, byte[] page) throws OrderException {
        Path file = folder.resolve(name.replaceAll("[^A-Za-z0-9._-]", "_"));
        try {
            Files.createDirectories(folder);
            return Files.write(file, page);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Free some space.".formatted(file, e.getMessage()));
        }
    }
}
