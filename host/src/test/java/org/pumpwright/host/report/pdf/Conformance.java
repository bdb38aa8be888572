package org.pumpwright.host.report.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Holds a document against ISO 19005-3 level B, with veraPDF. */
public final class Conformance {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Conformance() {}

    /** What does not hold, clause and words; empty for a document that is PDF/A-3b. */
    public static List<String> failures(byte[] pdf) throws Exception {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFA_3_B);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_3_B, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> failures = result.getTestAssertions().stream()
                    .filter(check -> check.getStatus() == TestAssertion.Status.FAILED)
                    .map(check -> check.getRuleId().getClause() + ": " + check.getMessage())
                    .distinct()
                    .toList();
            return failures.isEmpty() && !result.isCompliant() ? List.of("not compliant, no reason given") : failures;
        }
    }
}
