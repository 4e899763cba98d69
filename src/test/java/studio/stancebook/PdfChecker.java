package studio.stancebook;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * Checks a PDF against the rules of ISO 14289-1 (PDF/UA-1) that a machine can check, with the rules of veraPDF. What they
 * cannot tell (whether an alternative text is a good one) stays to be judged.
 */
public final class PdfChecker {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfChecker() {}

    /** Every rule that the file breaks, with the clause of the standard; empty for a file that keeps to all. */
    public static List<String> faults(byte[] file) {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(file), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            if (!result.isCompliant() && result.getTestAssertions().isEmpty()) {
                return List.of("refused without a reason");
            }
            return result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + ": " + assertion.getMessage())
                    .toList();
        } catch (Exception unreadable) {
            throw new AssertionError("The file cannot be read", unreadable);
        }
    }
}
