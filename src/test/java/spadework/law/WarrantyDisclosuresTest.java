// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;

/** 16 CFR 701.3(a): what a written warranty has to disclose. */
class WarrantyDisclosuresTest {
    private static final String ALL =
            WarrantyDisclosures.IMPLIED + "\n" + WarrantyDisclosures.DAMAGES + " " + WarrantyDisclosures.RIGHTS;

    /** A whole warranty; the item that is named is left out. */
    private static WrittenWarranty without(String item) {
        return new WrittenWarranty(
                item.equals("title") ? "Warranty" : "Limited warranty, specimen",
                new WrittenCoverage(
                        texts("who", item), texts("covered", item), texts("not-covered", item), text("remedy", item)),
                text("start", item),
                texts("term", item),
                new WrittenClaims(
                        texts("claim", item),
                        text("warrantor", item),
                        text("contact", item),
                        Optional.of("dispute").filter(name -> !name.equals(item)),
                        true),
                new WrittenLimits(true, true),
                said(item));
    }

    private static String said(String item) {
        return switch (item) {
            case "implied-sentence" -> ALL.replace(WarrantyDisclosures.IMPLIED, "");
            case "damages-sentence" -> ALL.replace(WarrantyDisclosures.DAMAGES, "");
            case "rights-sentence" -> ALL.replace(WarrantyDisclosures.RIGHTS, "");
            default -> ALL;
        };
    }

    private static String text(String name, String item) {
        return name.equals(item) ? " " : name;
    }

    private static List<String> texts(String name, String item) {
        return name.equals(item) ? List.of() : List.of(name);
    }

    @Test
    void nothingIsMissingInAWholeOne() {
        assertThat(WarrantyDisclosures.of(without("nothing"))).isEmpty();
    }

    @ParameterizedTest(name = "without {0}: {1} [{2}]")
    @CsvSource(delimiter = '|', textBlock = """
            title            | disclosure-title            | 15 USC 2303(a)
            who              | disclosure-who              | 16 CFR 701.3(a)(1)
            covered          | disclosure-covered          | 16 CFR 701.3(a)(2)
            not-covered      | disclosure-not-covered      | 16 CFR 701.3(a)(2)
            remedy           | disclosure-remedy           | 16 CFR 701.3(a)(3)
            start            | disclosure-start            | 16 CFR 701.3(a)(4)
            term             | disclosure-term             | 16 CFR 701.3(a)(4)
            claim            | disclosure-claim            | 16 CFR 701.3(a)(5)
            warrantor        | disclosure-warrantor        | 16 CFR 701.3(a)(5)
            contact          | disclosure-warrantor        | 16 CFR 701.3(a)(5)
            dispute          | disclosure-dispute          | 16 CFR 701.3(a)(6)
            implied-sentence | disclosure-implied-sentence | 16 CFR 701.3(a)(7)
            damages-sentence | disclosure-damages-sentence | 16 CFR 701.3(a)(8)
            rights-sentence  | disclosure-rights-sentence  | 16 CFR 701.3(a)(9)
            """)
    void eachMissingItemIsAMust(String item, String id, String citation) {
        List<Finding> found = WarrantyDisclosures.of(without(item));
        assertThat(found).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo(id);
            assertThat(finding.severity()).isEqualTo(Severity.MUST);
            assertThat(finding.citation()).isEqualTo(citation);
        });
    }

    /** A mechanism that was chosen and told in no words is not disclosed. */
    @Test
    void blankDisputeMechanismIsMissing() {
        WrittenWarranty whole = without("nothing");
        WrittenClaims claims = whole.claims();
        WrittenWarranty blank = new WrittenWarranty(
                whole.title(),
                whole.coverage(),
                whole.start(),
                whole.term(),
                new WrittenClaims(claims.steps(), claims.warrantor(), claims.contact(), Optional.of(" "), true),
                whole.limits(),
                whole.text());
        assertThat(WarrantyDisclosures.of(blank)).extracting(Finding::id).containsExactly("disclosure-dispute");
    }

    /** Items 6 to 8 are due only where there is a mechanism or a limit. */
    @Test
    void sentencesOfLimitsAreDueOnlyWithLimits() {
        WrittenWarranty whole = without("nothing");
        WrittenClaims claims = whole.claims();
        WrittenWarranty plain = new WrittenWarranty(
                whole.title(),
                whole.coverage(),
                whole.start(),
                whole.term(),
                new WrittenClaims(claims.steps(), claims.warrantor(), claims.contact(), Optional.empty(), false),
                new WrittenLimits(false, false),
                WarrantyDisclosures.RIGHTS);
        assertThat(WarrantyDisclosures.of(plain)).isEmpty();
    }
}
