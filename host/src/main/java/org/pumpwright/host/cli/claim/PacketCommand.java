package org.pumpwright.host.cli.claim;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.pumpwright.host.app.claim.ClaimPage;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
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

    @Option(names = "--with-customer", description = "Puts in who brought the unit and whose it is.")
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
        ClaimReview.Reviewed claim =
                desk.packets().pack(number, new PacketDesk.Wishes(withCustomer, language, paper), zip);
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
