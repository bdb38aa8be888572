package org.pumpwright.host.app.paper;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.paper.NoPaperException.Reason;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * Makes papers for a person who looks at a run or a bucket test: each a document in the folder of papers, under its number and its kind.
 * Thread-safe.
 */
public final class PaperDesk {
    private final RecordBook book;
    private final Path data;
    private final Path records;
    private final Path folder;

    /**
     * @param book what is on record; only read
     * @param data the shop's data files
     * @param records the folder of records; papers go into {@code papers} in it
     */
    public PaperDesk(RecordBook book, Path data, Path records) {
        this.book = book;
        this.data = data;
        this.records = records;
        this.folder = records.resolve("papers");
    }

    /** Name of the store, for people. */
    public String store() {
        return book.choice().words();
    }

    /**
     * How papers are made.
     *
     * @param language of their words
     * @param units of their figures; who reads US units prints on Letter, who reads metric ones on A4
     */
    public record Manner(Language language, UnitSystem units) {
        Sheet sheet(PaperKind kind) {
            if (kind == PaperKind.LABEL) {
                return Sheet.LABEL;
            }
            return units == UnitSystem.US ? Sheet.LETTER : Sheet.A4;
        }
    }

    /**
     * A run that was just kept in its folder: as it is on record, signed, or its file alone where it is not.
     *
     * @throws StoreException when the store fails
     * @throws NoPaperException when the record was changed after it was signed, or a part of it is missing
     */
    public Found.Run justMade(RunRecord run) throws StoreException, RunRecordException, NoPaperException {
        Found.Run file = new Found.Run(run, Optional.empty());
        try {
            boolean may = book.choice().mayHold();
            return may && find(run.stand().id() + "/" + run.id()) instanceof Found.Run there ? there : file;
        } catch (OrderException e) {
            // It waits in its folder to be put on record.
            return file;
        }
    }

    /**
     * What is on record under an id.
     *
     * @throws OrderException when there is nothing, or it is no run and no bucket test
     * @throws NoPaperException when it was changed after it was signed, or a part of it is missing
     */
    public Found find(String id) throws OrderException, RunRecordException, StoreException, NoPaperException {
        OnRecord there = OnRecord.of(book, id);
        if (there.seal() == OnRecord.Seal.BROKEN) {
            throw new NoPaperException(Reason.CHANGED, id);
        }
        if (there.attachments().isEmpty() || there.attachments().get(0).isEmpty()) {
            throw new NoPaperException(Reason.MISSING, id);
        }
        return RecordLookUp.read(there);
    }

    /**
     * Makes a paper and writes it.
     *
     * @param other the other run, for a retest
     * @return the document
     * @throws NoPaperException when there is no such paper of this, or it can't be written
     */
    public Path make(PaperKind kind, Found found, Optional<Found> other, Manner manner)
            throws NoPaperException, OrderException, DataFileException, RunRecordException, StoreException {
        Surroundings around = new Surroundings(store(kind, found), data, records);
        Texts texts = Texts.in(manner.language());
        if (found instanceof Found.Run run) {
            refuse(kind, run, around, texts);
        }
        Paper paper = new Papers(around, texts, manner.units(), manner.sheet(kind)).of(kind, found, other);
        Path target = folder.resolve(name(kind, found, other));
        try {
            PaperFile.write(target, paper.pdf());
        } catch (IOException e) {
            throw new NoPaperException(Reason.NOT_WRITTEN, "%s: %s".formatted(target, e.getMessage()));
        }
        return target;
    }

    /** A run that is not on record has a technician's page though the store is away; nothing else on that page is from there. */
    private Optional<RecordStore> store(PaperKind kind, Found found) throws StoreException {
        try {
            return book.choice().mayHold() ? Optional.of(book.reading()) : Optional.empty();
        } catch (StoreException e) {
            if (kind == PaperKind.TECHNICIAN && found.entry().isEmpty()) {
                return Optional.empty();
            }
            throw e;
        }
    }

    private static void refuse(PaperKind kind, Found.Run found, Surroundings around, Texts texts)
            throws NoPaperException, StoreException {
        boolean ofTheUnit = kind == PaperKind.CUSTOMER || kind == PaperKind.LABEL;
        if (ofTheUnit && found.run().grade().verdict() == Verdict.INVALID) {
            throw new NoPaperException(Reason.INVALID_RUN, found.id());
        }
        if (kind == PaperKind.CLERK) {
            RunRecord run = Corrected.of(found, texts).run();
            Optional<String> claim = run.intake().claim();
            if (claim.isEmpty()) {
                throw new NoPaperException(Reason.NO_CLAIM, found.id());
            }
            if (around.claim(run).isEmpty()) {
                throw new NoPaperException(Reason.CLAIM_NOT_ON_RECORD, claim.get());
            }
        }
    }

    private static String name(PaperKind kind, Found found, Optional<Found> other) {
        String ids = other.map(second -> second.id() + "-and-" + found.id()).orElse(found.id());
        return "%s-%s.pdf".formatted(ids, kind.word()).replaceAll("[^A-Za-z0-9._-]", "_");
    }
}
