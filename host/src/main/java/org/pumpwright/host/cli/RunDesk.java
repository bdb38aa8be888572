package org.pumpwright.host.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.ClaimGate;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.record.Bookkeeper;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.report.TextReport;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;

/** Has one order carried out while a person watches the terminal, and can stop it with Ctrl-C. */
final class RunDesk implements AutoCloseable {
    private final Workshop workshop;
    private final PrintWriter out;
    private final RecordBook book;
    private final Bookkeeper keeper;

    /** A desk that puts on record in this book what comes of it, and closes it. */
    RunDesk(Workshop workshop, PrintWriter out, RecordBook book) {
        this.workshop = workshop;
        this.out = out;
        this.book = book;
        keeper = new Bookkeeper(book);
    }

    @Override
    public void close() {
        keeper.close();
    }

    /** The job, with what was noted when the unit came in for its claim. A unit that may not be tested yet is refused here. */
    Acceptance.Job claimed(JobOptions jobs, String model, PaperOptions papers)
            throws OrderException, DataFileException {
        Acceptance.Job job = jobs.job();
        Optional<ClaimGate.Waived> bypass = jobs.bypass();
        if (job.claim().isEmpty()) {
            return job;
        }
        ClaimGate.Answer answer =
                workshop.claimGate(book).mayTest(new ClaimGate.Unit(job.claim().get(), model, papers.serial), bypass);
        new RecordLines(out, papers.json).warnings(answer.warnings());
        return job.complaining(answer.complaint());
    }

    int carryOut(Acceptance.Order order, PaperOptions papers, AnswerOptions answers)
            throws OrderException, DataFileException, StandException, RunRecordException {
        if (order.manual().isEmpty()) {
            answers.check(plan(order));
        }
        if (!papers.json) {
            caution();
        }
        recover(papers, order);
        keeper.openSoon(workshop.shelf().stand(order.stand()).id());
        RecordLines lines = new RecordLines(out, papers.json);
        lines.visits(papers.serial, keeper.visits(papers.serial, order.job().claim()));
        StopButton stop = new StopButton();
        EndOfProcess end = EndOfProcess.watch(workshop.stands(), stop, () -> {});
        try {
            TerminalOperator person = new TerminalOperator(
                    workshop.typed(), workshop.livePerson() && !papers.json, answers.answers, stop);
            person.listen();
            Acceptance.Result result = workshop.acceptance(papers.records(workshop))
                    .carryOut(order, watcher(order, papers, stop), stop, person);
            show(result, order, papers);
            lines.entered(enter(order, result));
            return ExitCode.of(result.record().grade().verdict());
        } finally {
            end.close();
        }
    }

    private RecordBook.Entered enter(Acceptance.Order order, Acceptance.Result result)
            throws OrderException, DataFileException {
        try {
            book.noteStand(
                    workshop.shelf().stand(order.stand()),
                    workshop.shelf().standFile(order.stand()),
                    result.record().startedAt());
        } catch (IOException e) {
            // The run itself is what matters; the stand is noted again at the next one.
            return keeper.enter(List.of(result.record()));
        }
        return keeper.enter(List.of(result.record()));
    }

    private void caution() {
        out.println("Caution: this program is not a safety device. Know where the emergency stop is.");
        out.println("Hose and fittings tight, guard closed, eye protection on; water only, no product");
        out.println("in the unit. Recirculation and agitation returns fully closed.");
        out.println();
    }

    private RunWatcher watcher(Acceptance.Order order, PaperOptions papers, StopButton stop) {
        return papers.json
                ? new EventLines(out, stop)
                : new Progress(out, order.units(), workshop.livePerson() && !papers.quiet, stop);
    }

    private Plan plan(Acceptance.Order order) throws OrderException, DataFileException {
        Shelf shelf = workshop.shelf();
        Optional<String> named = order.plan();
        return shelf.plan(
                named.isPresent() ? named.get() : shelf.model(order.model()).plan());
    }

    /** Runs that did not live to their end are kept before a new one begins. */
    private void recover(PaperOptions papers, Acceptance.Order order) {
        RecordFolder.Recovered recovered =
                workshop.recordFolder(papers.records(workshop)).recover(order.units());
        if (papers.json) {
            new EventLines(out, new StopButton()).recovered(recovered);
            return;
        }
        for (RecordFolder.Kept kept : recovered.kept()) {
            out.println("A run was cut short when the program ended; it is kept as INVALID:");
            out.println("  " + kept.record());
            kept.trouble().ifPresent(this::caution);
            out.println();
        }
        for (String trouble : recovered.troubles()) {
            out.println("A run that was cut short could not be recovered:");
            caution(trouble);
            out.println();
        }
    }

    /** Not wrapped: it holds names of files, which are to be copied whole. */
    private void caution(String trouble) {
        out.println("CAUTION        " + trouble);
    }

    private void show(Acceptance.Result result, Acceptance.Order order, PaperOptions papers) {
        if (papers.json) {
            new EventLines(out, new StopButton()).result(result);
            return;
        }
        out.println();
        out.print(TextReport.page(result.record(), order.units(), papers.numbers));
        out.println();
        out.println("Page to print  " + result.kept().page());
        out.println("Record         " + result.kept().record());
        result.kept().trouble().ifPresent(this::caution);
    }
}
