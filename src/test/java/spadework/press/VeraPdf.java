// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Validates a PDF by the rules of ISO 14289-1 (PDF/UA-1) and ISO 19005-3 level A (PDF/A-3a). */
public final class VeraPdf {
    static final List<PDFAFlavour> CLAIMED = List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A);

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private VeraPdf() {}

    /** Every failed rule, as {@code PDF/UA-1 7.1-9: message}; empty when the file conforms to both. */
    public static Set<String> failedRules(byte[] pdf) {
        Set<String> failed = new TreeSet<>();
        // Both at one reading of the file.
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), CLAIMED.get(0));
                PDFAValidator validator = Foundries.defaultInstance().createValidator(CLAIMED)) {
            parser.setFlavours(CLAIMED);
            List<ValidationResult> results = validator.validateAll(parser);
            if (!CLAIMED.equals(
                    results.stream().map(ValidationResult::getPDFAFlavour).toList())) {
                throw new IllegalStateException("not held to both standards: " + results);
            }
            results.forEach(result -> failed.addAll(failed(result)));
        } catch (Exception e) {
            throw new IllegalStateException("the validator could not read the file", e);
        }
        return failed;
    }

    private static Set<String> failed(ValidationResult result) {
        Set<String> failed = result.getTestAssertions().stream()
                .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                .map(assertion -> String.format(
                        Locale.ROOT,
                        "%s %s-%d: %s",
                        result.getPDFAFlavour(),
                        assertion.getRuleId().getClause(),
                        assertion.getRuleId().getTestNumber(),
                        assertion.getMessage()))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!result.isCompliant() && failed.isEmpty()) {
            failed.add(result.getPDFAFlavour() + ": not compliant");
        }
        if (result.getTotalAssertions() == 0) {
            failed.add(result.getPDFAFlavour() + ": nothing was checked");
        }
        return failed;
    }
}
