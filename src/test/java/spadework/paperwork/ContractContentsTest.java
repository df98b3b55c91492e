package spadework.paperwork;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.office.Bid;
import spadework.paperwork.ContractContents.Content;
import spadework.press.PageText;

/** A content counts as held only where it stands on the page: each has a marker text, and both come and go together. */
class ContractContentsTest {
    private static final Map<Content, String> MARKERS = Map.ofEntries(
            Map.entry(Content.HEADING, "Home Improvement Contract"),
            Map.entry(Content.PARTIES, "Ida Wrenfield and Tobias Wrenfield 418 Quillfeather Lane"),
            Map.entry(Content.LICENCE_NUMBER, "Contractor registration: CR-00417"),
            Map.entry(Content.LICENCE_CLASS, "Class: A, basements"),
            Map.entry(Content.LICENCE_END, "Valid until 30 June 2027"),
            Map.entry(Content.BOND, "Bond or deposit: Bond 417"),
            Map.entry(Content.TAX_NUMBER, "Taxpayer number of the firm: 00-0000417"),
            Map.entry(Content.AFFILIATES, "tied to us in the last five years: none"),
            Map.entry(Content.SALESPERSON, "Salesperson: Odo Fennimarsh"),
            Map.entry(Content.SALESPERSON_LICENCE, "Odo Fennimarsh, S-0417"),
            Map.entry(Content.TRANSACTION_DATE, "Date of this transaction 1 July 2026"),
            Map.entry(Content.HOUSE, "The house where we work: 418 Quillfeather Lane"),
            Map.entry(Content.WORK_AND_MATERIALS, "liquid synthetic rubber in 2 coats, from the footing up to grade"),
            Map.entry(Content.DOCUMENTS, "Documents that are part of this contract"),
            Map.entry(Content.PRICE, "Contract price $25,628.00"),
            Map.entry(Content.FINANCE_CHARGE, "Finance charge, apart from the contract price none"),
            Map.entry(Content.DEPOSIT, "Deposit (down payment). You sign this proposal $768.84"),
            Map.entry(Content.PAYMENTS, "The machine is on site and the first wall's trench is open $7,688.40"),
            Map.entry(Content.SPECIAL_ORDER, "ordered before the work starts: $250.00"),
            Map.entry(Content.SECURITY_INTEREST, "no mortgage and no other security interest in your home"),
            Map.entry(Content.START_AND_COMPLETION,
                    "Approximate start 7 September 2026 Approximate completion 25 September 2026"),
            Map.entry(Content.CONTINGENCIES, "Such a delay is not abandonment of the work"),
            Map.entry(Content.ESSENCE, "The completion date is not of the essence of this contract"),
            Map.entry(Content.CHANGES, "Both of us sign it before the changed work starts"),
            Map.entry(Content.NOT_INCLUDED, "Included Not included"),
            Map.entry(Content.PERMITS, "We apply for the building permit"),
            Map.entry(Content.SUBCONTRACTORS, "Will subcontractors be used on this work? ☐ no, ✓ yes"),
            Map.entry(Content.LIABILITY_INSURANCE, "Liability insurance: Tallowgate Mutual, policy GL-220417-6"),
            Map.entry(Content.INSURER_PHONE, "You can ask the insurer about it: (614) 555-0190"),
            Map.entry(Content.WORKERS_COVER, "compensation: Tallowgate Mutual, policy WC-220417"),
            Map.entry(Content.DEPOSIT_HELD, "In a trust account at Pellmark Savings Bank"),
            Map.entry(Content.WARRANTY, "The work carries a limited warranty: treated wall for 10 years"),
            Map.entry(Content.CANCELLATION_STATEMENT, "You, the buyer, may cancel this transaction at any time prior to"),
            Map.entry(Content.CANCELLATION_FORM, "I HEREBY CANCEL THIS TRANSACTION"),
            Map.entry(Content.LAST_DAY, "The last day to cancel is"),
            Map.entry(Content.HELP_TO_CANCEL, "Help with this notice, or another copy of it: (614) 555-0142"),
            Map.entry(Content.TOLD_ALOUD, "I was told aloud, when I signed, of my right to cancel"),
            Map.entry(Content.SIGNATURES, "Buyer: Tobias Wrenfield For Fennimarsh Wall & Drain LLC"));

    @TempDir
    Path folder;

    @Test
    void everyContentHasAMarker() {
        assertThat(MARKERS).containsOnlyKeys(Content.values());
    }

    @ParameterizedTest
    @ValueSource(strings = {"WY", "CA", "CT", "FL", "IL", "MA", "MD", "NC", "NJ", "NY", "OH", "PA", "TX", "VA", "WA"})
    void withEveryInputGivenEveryContentStandsInTheContract(String state) {
        Path job = ContractJobs.in(folder, state);
        String text = PageText.all(ContractJobs.pdf(job));

        assertThat(held(job)).isEqualTo(EnumSet.allOf(Content.class));
        assertThat(text).contains(MARKERS.values());
    }

    @ParameterizedTest(name = "without {0} there is no {1}")
    @CsvSource(textBlock = """
            licence/classification,      LICENCE_CLASS
            licence/until,               LICENCE_END
            bond,                        BOND
            taxId,                       TAX_NUMBER
            affiliates,                  AFFILIATES
            signing/salesperson,         SALESPERSON
            signing/salesperson/licence, SALESPERSON_LICENCE
            signing/specialOrder,        SPECIAL_ORDER
            signing/dateIsEssential,     ESSENCE
            signing/permits,             PERMITS
            signing/subcontractors,      SUBCONTRACTORS
            insurance/phone,             INSURER_PHONE
            insurance/workers,           WORKERS_COVER
            signing/depositHeld,         DEPOSIT_HELD
            """)
    void whatIsNotGivenIsNotHeldAndNotPrinted(String key, Content missing) {
        assertThat(missing.key()).isEqualTo(key);
        Path job = ContractJobs.in(folder, "OH", whole -> remove(whole, key), company -> remove(company, key));

        assertThat(held(job)).doesNotContain(missing);
        assertThat(PageText.all(ContractJobs.pdf(job))).doesNotContain(MARKERS.get(missing));
    }

    @Test
    void theTableAboveNamesEveryKey() throws NoSuchMethodException {
        String table = getClass().getDeclaredMethod("whatIsNotGivenIsNotHeldAndNotPrinted", String.class, Content.class)
                .getAnnotation(CsvSource.class).textBlock();
        assertThat(Arrays.stream(Content.values()).map(Content::key).filter(key -> !key.isEmpty()))
                .allMatch(table::contains);
    }

    private static Set<Content> held(Path job) {
        Bid bid = ContractJobs.bid(job);
        return ContractContents.of(
                bid.contracted().job().agreement().signing().orElseThrow(), bid.contracted().company());
    }

    private static void remove(ObjectNode file, String key) {
        int last = key.lastIndexOf('/');
        if (file.at(last < 0 ? "" : "/" + key.substring(0, last)) instanceof ObjectNode parent) {
            parent.remove(key.substring(last + 1));
        }
    }
}
