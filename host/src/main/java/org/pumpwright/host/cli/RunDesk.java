package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.report.TextReport;
import org.pumpwright.host.run.StopButton;
import org.pumpwright.host.stand.StandException;

/** Has one order carried out while a person watches the terminal, and can stop it with Ctrl-C. */
final class RunDesk {
    private final Workshop workshop;
    private final PrintWriter out;

    RunDesk(Workshop workshop, PrintWriter out) {
        this.workshop = workshop;
        this.out = out;
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
        StopButton stop = new StopButton();
        EndOfProcess end = EndOfProcess.watch(workshop.stands(), stop, () -> {});
        try {
            TerminalOperator person = new TerminalOperator(
                    workshop.typed(), workshop.livePerson() && !papers.json, answers.answers, stop);
            person.listen();
            Acceptance.Result result = workshop.acceptance(papers.records(workshop))
                    .carryOut(order, watcher(order, papers, stop), stop, person);
            show(result, order, papers);
            return ExitCode.of(result.record().grade().verdict());
        } finally {
            end.close();
        }
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
