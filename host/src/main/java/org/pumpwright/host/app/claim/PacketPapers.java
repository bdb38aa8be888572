package org.pumpwright.host.app.claim;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.paper.Found;
import org.pumpwright.host.app.paper.PaperKind;
import org.pumpwright.host.app.paper.Papers;
import org.pumpwright.host.app.paper.RecordLookUp;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.claim.RunEntry;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.TextReport;

/**
 * The papers of a packet: for the clerk, of each run for the technician and the factory, of a unit that was tested again the two
 * runs over each other, and for the customer where that is asked for. Their date is that of what they show, so that the same claim
 * gives the same bytes. Confined to one thread.
 */
public final class PacketPapers {
    private final Papers papers;
    private final List<Found.Run> runs;
    private final boolean withCustomer;

    private PacketPapers(Papers papers, List<Found.Run> runs, boolean withCustomer) {
        this.papers = papers;
        this.runs = List.copyOf(runs);
        this.withCustomer = withCustomer;
    }

    /**
     * The papers of a claim's runs.
     *
     * @param withCustomer whether the customer's page is among them
     */
    static PacketPapers of(RecordBook book, ClaimReview.Reviewed claim, Papers papers, boolean withCustomer)
            throws OrderException, RunRecordException, StoreException {
        List<Found.Run> runs = new ArrayList<>();
        for (Entry entry : claim.entries()) {
            if (RunEntry.is(entry)
                    && entry.amends().isEmpty()
                    && RecordLookUp.read(OnRecord.of(book, entry.id())) instanceof Found.Run run) {
                runs.add(run);
            }
        }
        return new PacketPapers(papers, runs, withCustomer);
    }

    /** The clerk's page, and two runs over each other where there are two that say something. */
    Map<String, byte[]> ofClaim(ClaimReview.Reviewed claim) throws OrderException, DataFileException {
        Map<String, byte[]> made = new TreeMap<>();
        made.put("clerk.pdf", clerk(claim));
        List<Found.Run> telling = telling();
        if (telling.size() > 1) {
            made.put(
                    "retest.pdf",
                    papers.retest(telling.get(0), telling.get(telling.size() - 1))
                            .pdf());
        }
        return made;
    }

    /** The clerk's page alone. */
    byte[] clerk(ClaimReview.Reviewed claim) throws OrderException {
        Optional<Found.Run> last = runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1));
        return papers.clerk(claim, last).pdf();
    }

    /** The customer's page of the last run that says something; empty when none does. */
    Optional<byte[]> customer() throws OrderException, DataFileException, RunRecordException, StoreException {
        List<Found.Run> telling = telling();
        return telling.isEmpty()
                ? Optional.empty()
                : Optional.of(papers.of(PaperKind.CUSTOMER, telling.get(telling.size() - 1), Optional.empty())
                        .pdf());
    }

    /** Runs that say something of the unit, the earliest first; of a run that was graded again, the run itself. */
    private List<Found.Run> telling() {
        return runs.stream()
                .filter(found -> found.run().regradedFrom().isEmpty())
                .filter(found -> tells(found.run().grade().verdict()))
                .sorted((one, other) -> one.run()
                        .startedAt()
                        .toInstant()
                        .compareTo(other.run().startedAt().toInstant()))
                .toList();
    }

    private static boolean tells(Verdict verdict) {
        return verdict != Verdict.INVALID && verdict != Verdict.NOT_TESTED;
    }

    /** The pages of each run. */
    ClaimPacket.RunPapers ofRuns() {
        return entry -> {
            for (Found.Run found : runs) {
                if (found.entry().map(OnRecord::entry).filter(entry::equals).isPresent()) {
                    return of(found);
                }
            }
            return Map.of();
        };
    }

    private Map<String, byte[]> of(Found.Run found)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        Map<String, byte[]> made = new TreeMap<>();
        made.put("technician.txt", bytes(TextReport.page(found.run(), UnitSystem.US)));
        List<PaperKind> kinds = new ArrayList<>(List.of(PaperKind.TECHNICIAN, PaperKind.FACTORY));
        if (withCustomer && found.run().grade().verdict() != Verdict.INVALID) {
            kinds.add(PaperKind.CUSTOMER);
        }
        for (PaperKind kind : kinds) {
            made.put(
                    kind.word() + ".pdf",
                    papers.of(kind, found, Optional.empty()).pdf());
        }
        return made;
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
