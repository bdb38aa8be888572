package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.ClaimPacket;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.paper.Papers;
import org.pumpwright.host.app.paper.Surroundings;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Packs a claim up. */
@Command(
        name = "packet",
        description = {
            "Packs everything of a claim into a zip file that anybody can check: pages, tables,",
            "pictures, raw samples, signed entries and their digests.",
            ""
        },
        mixinStandardHelpOptions = true)
final class PacketCommand extends DeskCommand {
    @Parameters(paramLabel = "NUMBER", description = "The claim.")
    private String number = "";

    @Option(names = "--out", required = true, paramLabel = "FILE.zip", description = "The new file.")
    private Path zip = Path.of("");

    @Option(
            names = "--with-customer",
            description = "Puts in who brought the unit, whose it is, and the customer's page.")
    private boolean withCustomer;

    @Option(
            names = "--paper",
            paramLabel = "letter|a4",
            description = "Size of the pages; letter if not given.",
            defaultValue = "LETTER")
    private Sheet paper = Sheet.LETTER;

    @Option(
            names = "--language",
            paramLabel = "en|es",
            description = "Language of the pages; en if not given.",
            defaultValue = "EN")
    private Language language = Language.EN;

    PacketCommand(Workshop workshop) {
        super(workshop);
    }

    @Override
    void carryOut(OpenDesk desk, PrintWriter out) throws Exception {
        if (!zip.toString().endsWith(".zip")) {
            throw new OrderException("%s: a packet ends in .zip".formatted(zip));
        }
        ClaimReview.Reviewed whole = desk.review().of(number);
        ClaimReview.Reviewed claim = withCustomer
                ? whole
                : new ClaimReview.Reviewed(whole.file().withoutPeople(), whole.coverage(), whole.entries());
        Papers made = new Papers(
                new Surroundings(Optional.of(desk.store()), desk.dataFolder(), desk.records()),
                Texts.in(language),
                UnitSystem.US,
                paper);
        PacketPapers papers = PacketPapers.of(desk.book(), claim, made, withCustomer);
        Map<String, byte[]> ofClaim = new TreeMap<>(papers.ofClaim(claim));
        ofClaim.put("claim.txt", PacketPapers.bytes(ClaimPage.of(claim, withCustomer)));
        new ClaimPacket(desk.store(), desk.photoFolder()).write(claim, ofClaim, papers.ofRuns(), withCustomer, zip);
        out.println("Packed: %s, %d bytes, SHA-256 %s"
                .formatted(
                        zip, Files.size(zip), Digest.of(Files.readAllBytes(zip)).hex()));
        out.println(
                withCustomer
                        ? "The people are in it."
                        : "Who brought the unit and whose it is are left out; --with-customer puts them in.");
        if (!claim.file().missing().isEmpty()) {
            out.println("Missing: " + ClaimPage.missing(claim.file()));
        }
    }
}
