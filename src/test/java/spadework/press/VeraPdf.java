// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
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
        for (PDFAFlavour flavour : CLAIMED) {
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                    PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
                ValidationResult result = validator.validate(parser);
                result.getTestAssertions().stream()
                        .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                        .forEach(a -> failed.add(String.format(
                                Locale.ROOT,
                                "%s %s-%d: %s",
                                flavour,
                                a.getRuleId().getClause(),
                                a.getRuleId().getTestNumber(),
                                a.getMessage())));
                if (!result.isCompliant() && failed.isEmpty()) {
                    failed.add(flavour + ": not compliant");
                }
                if (result.getTotalAssertions() == 0) {
                    failed.add(flavour + ": nothing was checked");
                }
            } catch (Exception e) {
                throw new IllegalStateException("the validator could not read the file", e);
            }
        }
        return failed;
    }
}
