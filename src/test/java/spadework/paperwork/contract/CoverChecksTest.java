// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.money.Dollars;
import spadework.paperwork.ContractJobs;
import spadework.press.PageText;

/** The insurance and the license that a contract names are held against the state of the house and the days of work. */
class CoverChecksTest {
    @TempDir
    Path folder;

    /**
     * At the least there is nothing to say, a cent below it there is; nothing said is told too.
     *
     * <p>73 P.S. 517.7(a): $50,000 for injury and $50,000 for property damage (secondary source). 815 ILCS 513/25:
     * $300,000 for injury in one occurrence, $50,000 for property damage, $10,000 for improper work (secondary
     * source). ORC 4722.02: $250,000 from a price of $25,000 (excerpt). N.J.S.A. 56:8-142, $500,000, and RCW
     * 18.27.050, $250,000: from memory. One limit for both has to bear both.
     */
    @ParameterizedTest(name = "{0}: {1} for one occurrence")
    @CsvSource(delimiter = '|', textBlock = """
            PA | $100,000.00 |
            PA | $99,999.99  | insurance-below-least
            PA |             | insurance-limit-unsaid
            IL | $350,000.00 |
            IL | $349,999.99 | insurance-below-least
            IL |             | insurance-limit-unsaid
            OH | $250,000.00 |
            OH | $249,999.99 | insurance-below-least
            OH |             | insurance-limit-unsaid
            NJ | $500,000.00 |
            NJ | $499,999.99 | insurance-below-least
            WA | $250,000.00 |
            WA | $249,999.99 | insurance-below-least
            MD | $1.00       | insurance-least-unknown
            WY | $1.00       | insurance-least-unknown
            """)
    void policyIsHeldAgainstTheLeastThatTheStateAsksFor(String state, String each, String found) {
        Path job = ContractJobs.in(folder, state, whole -> {}, insured(insurance -> {
            insurance.remove("eachOccurrence");
            Optional.ofNullable(each)
                    .ifPresent(sum ->
                            insurance.put("limits", sum + " each occurrence").put("eachOccurrence", sum));
        }));

        assertThat(found(job, "insurance-"))
                .extracting(Finding::id)
                .containsExactlyElementsOf(Optional.ofNullable(found).stream().toList());
    }

    /** 815 ILCS 513/25: $10,000 for improper work, which no other bundled state asks for. */
    @ParameterizedTest(name = "{0}: {1} for improper work")
    @CsvSource(delimiter = '|', textBlock = """
            IL | $10,000.00 |
            IL | $9,999.99  | improper-work-below-least
            IL |            | improper-work-limit-unsaid
            PA |            |
            """)
    void improperWorkIsACoverOfItsOwn(String state, String sum, String found) {
        Path job = ContractJobs.in(folder, state, whole -> {}, insured(insurance -> {
            insurance.remove("improperWork");
            Optional.ofNullable(sum).ifPresent(given -> insurance.put("improperWork", given));
        }));

        assertThat(found(job, "improper-work-"))
                .extracting(Finding::id)
                .containsExactlyElementsOf(Optional.ofNullable(found).stream().toList());
    }

    /** ORC 4722.02 reaches contracts from $25,000 on; the job is one of $25,172, and of less with a smaller profit. */
    @Test
    void ohioAsksForItFromTwentyFiveThousandDollarsOn() {
        Path job = ContractJobs.in(folder, "OH", whole -> {}, company -> {
            ((ObjectNode) company.get("insurance")).remove("eachOccurrence");
            ((ObjectNode) company.get("priceRules")).put("profit", "9%");
        });

        assertThat(ContractJobs.bid(job).contracted().contract().contracted().total())
                .isLessThan(Dollars.of("25000.00"));
        assertThat(found(job, "insurance-")).isEmpty();
    }

    @Test
    void findingNamesWhatTheStateAsksForAndWhereAndTheContractIsADraft() {
        Path job = ContractJobs.in(
                folder,
                "PA",
                whole -> {},
                insured(insurance ->
                        insurance.put("limits", "$60,000.50 each occurrence").put("eachOccurrence", "$60,000.50")));

        assertThat(found(job, "insurance-")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.MUST);
            assertThat(finding.values())
                    .containsEntry("has", "$60,000.50")
                    .containsEntry("least", "$100,000.00")
                    .containsEntry("parts", "$50,000.00 for injury and $50,000.00 for property damage");
            assertThat(finding.citation()).isEqualTo("73 P.S. 517.7(a) (secondary source; not verified)");
        });
        assertThat(PageText.all(ContractJobs.pdf(job))).contains("Draft, not for signature");
    }

    @Test
    void packOfTheFirmBringsTheLeastOfAStateThatIsNotBundled() throws Exception {
        Path job = ContractJobs.in(folder, "MD");
        Files.writeString(folder.resolve("state-rules.json"), """
                {"packs": [{"state": "MD", "insurance": [{"cover": "injury and damage", "least": "$1,000,000.01",
                "status": "R", "citation": "Z.C. 7"}]}]}
                """);

        assertThat(found(job, "insurance-")).singleElement().satisfies(finding -> {
            assertThat(finding.id()).isEqualTo("insurance-below-least");
            assertThat(finding.citation()).isEqualTo("Z.C. 7");
        });
    }

    /** The work may last until October 2, 2026; the contract is signed on July 1, 2026. Common practice, no source. */
    @ParameterizedTest(name = "the {0} until {1}")
    @CsvSource(delimiter = '|', textBlock = """
            insurance | 2026-10-02 |
            insurance | 2026-10-01 | insurance-ends-early
            insurance | 2026-07-01 | insurance-ends-early
            insurance | 2026-06-30 | insurance-ended
            license   | 2026-10-02 |
            license   | 2026-10-01 | license-ends-early
            license   | 2026-07-01 | license-ends-early
            license   | 2026-06-30 | license-ended
            license   |            | license-end-unsaid
            """)
    void coverAndLicenseLastUntilTheWorkIsDone(String which, String until, String found) {
        Path job = ContractJobs.in(folder, "PA", whole -> {}, company -> {
            ObjectNode part = (ObjectNode) company.get(which);
            part.remove("until");
            Optional.ofNullable(until).ifPresent(day -> part.put("until", day));
        });

        assertThat(found(job, which + "-"))
                .extracting(Finding::id)
                .containsExactlyElementsOf(Optional.ofNullable(found).stream().toList());
        if (found != null && found.endsWith("-ended")) {
            assertThat(PageText.all(ContractJobs.pdf(job))).contains("Draft, not for signature");
        }
    }

    private static Consumer<ObjectNode> insured(Consumer<ObjectNode> change) {
        return company -> change.accept((ObjectNode) company.get("insurance"));
    }

    private static List<Finding> found(Path job, String of) {
        return ContractJobs.bid(job).findings().stream()
                .filter(finding -> finding.id().startsWith(of))
                .toList();
    }
}
