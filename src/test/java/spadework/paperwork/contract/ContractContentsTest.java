// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.law.Content;
import spadework.law.RequiredContent;
import spadework.paperwork.ContractJobs;
import spadework.paperwork.Dossier;
import spadework.press.PageText;

/** A content counts as held only where it stands on the page: each has a marker text, and both come and go together. */
class ContractContentsTest {
    private static final Map<Content, String> MARKERS = Map.ofEntries(
            Map.entry(Content.AFFILIATES, "tied to us in the last five years: none"),
            Map.entry(Content.BOND_AMOUNT, "Bond or deposit: Bond 417"),
            Map.entry(
                    Content.CANCELLATION_EMAIL_AND_PHONE,
                    "Help with this notice, or another copy of it: (614) 555-0142, office@example.com"),
            Map.entry(Content.CANCELLATION_FORM, "I HEREBY CANCEL THIS TRANSACTION"),
            Map.entry(
                    Content.CANCELLATION_STATEMENT, "You, the buyer, may cancel this transaction at any time prior to"),
            Map.entry(Content.CHANGE_ORDERS_IN_WRITING, "Both of us sign it before the changed work starts"),
            Map.entry(Content.COMPLETE_WRITING, "a legible copy of this contract, filled in and signed by both of us"),
            Map.entry(Content.COSTS_NOT_COVERED, "Included Not included"),
            Map.entry(Content.DATE_OF_THE_ESSENCE, "The completion date is not of the essence of this contract"),
            Map.entry(Content.DESCRIPTION_OF_WORK, "We dig along each wall to the bottom of the footing"),
            Map.entry(Content.DOWN_PAYMENT, "$755.16 1. You sign the contract Deposit (down payment)"),
            Map.entry(Content.ENTIRE_AGREEMENT, "That is the entire agreement between us"),
            Map.entry(Content.ESCROW_OR_BOND, "In a trust account at Pellmark Savings Bank"),
            Map.entry(Content.ESTIMATE_CHARGE, "This estimate costs you nothing."),
            Map.entry(Content.EVENTS_BEYOND_CONTROL, "Such a delay is not abandonment of the work"),
            Map.entry(Content.FINAL_PAYMENT_WHEN_SATISFIED, "the site is clean, and you have signed off"),
            Map.entry(Content.FINANCE_CHARGE, "Finance charge, apart from the contract price none"),
            Map.entry(Content.HOME_IMPROVEMENT_HEADING, "Home Improvement Contract"),
            Map.entry(Content.INCORPORATED_DOCUMENTS, "Documents that are part of this contract"),
            Map.entry(Content.INSURANCE_CERTIFICATE, "A copy of the certificate comes with this contract"),
            Map.entry(Content.INSURER_TELEPHONE, "You can ask the insurer about it: (614) 555-0190"),
            Map.entry(Content.LAST_DAY_TO_CANCEL, "The last day to cancel is"),
            Map.entry(Content.LIABILITY_INSURANCE, "Liability insurance: Tallowgate Mutual, policy GL-220417-6"),
            Map.entry(Content.LICENSE_CLASS, "Class: A, basements"),
            Map.entry(Content.LICENSE_EXPIRY, "Valid until June 30, 2027"),
            Map.entry(Content.LICENSE_NUMBER, "Contractor registration: CR-00417"),
            Map.entry(Content.MAKE_OF_MATERIALS, "Larkseal LR-60, 5 gal pails, 6 pails"),
            Map.entry(Content.MATERIALS, "liquid synthetic rubber in 2 coats, from the footing up to grade"),
            Map.entry(Content.ORAL_NOTICE_ACKNOWLEDGED, "I was told aloud, when I signed, of my right to cancel"),
            Map.entry(Content.OWNER, "Ida Wrenfield and Tobias Wrenfield 418 Quillfeather Lane"),
            Map.entry(Content.PAYMENT_SCHEDULE, "$5,034.40 2. The first trench is open"),
            Map.entry(Content.PERMITS, "We apply for the building permit"),
            Map.entry(Content.PRICE, "Contract price $25,172.00"),
            Map.entry(Content.SALESPERSON, "Salesperson: Odo Fennimarsh"),
            Map.entry(Content.SALESPERSON_LICENSE, "Odo Fennimarsh, S-0417"),
            Map.entry(Content.SECURITY_INTEREST, "no mortgage and no other security interest in your home"),
            Map.entry(Content.SELLER_NAME_AND_ADDRESS, "Fennimarsh Wall & Drain LLC 1180 Kiln Lane"),
            Map.entry(Content.SELLER_TELEPHONE, "OH 43099 (614) 555-0142"),
            Map.entry(Content.SIGNATURES, "Buyer: Tobias Wrenfield For Fennimarsh Wall & Drain LLC"),
            Map.entry(Content.SPECIAL_ORDER_COST, "ordered before the work starts: $250.00"),
            Map.entry(
                    Content.START_AND_COMPLETION,
                    "Approximate start September 14, 2026 Approximate completion October 2, 2026"),
            Map.entry(Content.SUBCONTRACTORS, "Will subcontractors be used on this work? ☐ no, ✓ yes"),
            Map.entry(Content.TAXPAYER_NUMBER, "Taxpayer number of the firm: 00-0000417"),
            Map.entry(Content.TRANSACTION_DATE, "Date of this transaction July 1, 2026"),
            Map.entry(Content.WARRANTY, "The work carries a limited warranty: waterproofed wall for 10 years"),
            Map.entry(Content.WORK_LOCATION, "The house where we work: 418 Quillfeather Lane"),
            Map.entry(Content.WORKERS_COMPENSATION, "compensation: Tallowgate Mutual, policy WC-220417"));

    /** What shows in what the paper does not say, or only in Maryland. */
    private static final Set<Content> WITHOUT_MARKER =
            EnumSet.of(Content.NO_ARBITRATION_CLAUSE, Content.NO_WAIVER, Content.SEPARATE_CANCELLATION_FORM);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"WY", "CA", "CT", "FL", "IL", "MA", "MD", "NC", "NJ", "NY", "OH", "PA", "TX", "VA", "WA"})
    void withEveryInputGivenEachContentThatTheStateWantsStandsInTheContract(String state) {
        Path job = ContractJobs.in(folder, state);
        String text = PageText.all(ContractJobs.pdf(job));
        Dossier contracted = ContractJobs.bid(job).contracted();

        Stream.concat(Stream.of(contracted.law().federal()), contracted.law().state().stream())
                .flatMap(rules -> rules.contents().stream())
                .map(RequiredContent::content)
                .filter(MARKERS::containsKey)
                .forEach(content -> assertThat(text).as(content.words()).contains(MARKERS.get(content)));
        assertThat(missingFrom(job)).isEmpty();
    }

    @Test
    void everyContentHasAMarkerOrIsANotice() {
        Path job = ContractJobs.in(folder, "WY");
        Dossier contracted = ContractJobs.bid(job).contracted();
        Set<Content> held = ContractContents.of(
                contracted.job(),
                contracted.company(),
                contracted.job().agreement().signing().orElseThrow(),
                List.of());

        assertThat(held)
                .containsExactlyInAnyOrderElementsOf(Stream.concat(MARKERS.keySet().stream(), WITHOUT_MARKER.stream())
                        .toList());
    }

    /** Both sides: with the key the content stands there and is not found missing, without it neither holds. */
    @ParameterizedTest(name = "{0}: without {1} there is no {2}")
    @CsvSource(textBlock = """
            CT, affiliates,                  AFFILIATES
            WA, bond,                        BOND_AMOUNT
            WA, license/until,               LICENSE_EXPIRY
            VA, license/classification,      LICENSE_CLASS
            OH, taxId,                       TAXPAYER_NUMBER
            NJ, insurance/phone,             INSURER_TELEPHONE
            NJ, insurance/phone,             INSURANCE_CERTIFICATE
            MD, signing/salesperson,         SALESPERSON
            MD, signing/salesperson/license, SALESPERSON_LICENSE
            PA, signing/specialOrder,        SPECIAL_ORDER_COST
            PA, signing/subcontractors,      SUBCONTRACTORS
            NY, signing/dateIsEssential,     DATE_OF_THE_ESSENCE
            NY, signing/depositHeld,         ESCROW_OR_BOND
            VA, signing/permits,             PERMITS
            NJ, signing/materials,           MAKE_OF_MATERIALS
            NY, signing/materials,           MAKE_OF_MATERIALS
            IL, terms,                       ESTIMATE_CHARGE
            """)
    void whatIsNotGivenIsFoundWantingAndIsNotPrinted(String state, String key, Content missing, @TempDir Path without) {
        Path whole = ContractJobs.in(folder, state);
        Path job = ContractJobs.in(without, state, given -> remove(given, key), company -> remove(company, key));
        String id = "content-" + missing.words().replace(' ', '-');

        assertThat(missingFrom(whole)).doesNotContain(id);
        assertThat(missingFrom(job)).contains(id);
        assertThat(PageText.all(ContractJobs.pdf(job)))
                .contains("Draft, not for signature")
                .doesNotContain(MARKERS.get(missing));
    }

    /** 16 CFR 429.1(d); 815 ILCS 513/15.1: what a contractor typed can bring in what the paper leaves out. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            OH, All disputes go to arbitration.,         content-no-waiver,             false
            IL, All disputes go to arbitration.,         content-no-arbitration-clause, true
            OH, You waive your right to cancel.,         content-no-waiver,             true
            OH, We clean up every evening.,              content-no-waiver,             false
            """)
    void typedTermsAreRead(String state, String term, String id, boolean found) {
        Path job =
                ContractJobs.in(folder, state, whole -> whole.putArray("terms").add(term), company -> {});

        assertThat(missingFrom(job).contains(id)).isEqualTo(found);
    }

    /** M.G.L. c.142A s.2: the last payment waits until the work is completed to the satisfaction of both. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            "The site is clean, and you have signed off",  false
            The work is done to your satisfaction,         false
            The ground is graded,                          true
            """, quoteCharacter = '"')
    void lastPaymentInMassachusettsWaitsForTheBuyersYes(String when, boolean found) {
        Path job = ContractJobs.in(
                folder, "MA", whole -> {}, company -> ((ObjectNode) company.at("/payments/4")).put("when", when));

        assertThat(missingFrom(job).contains("content-final-payment-when-satisfied"))
                .isEqualTo(found);
    }

    /** 73 P.S. 517.7(a): a P.O. box alone is no address. */
    @ParameterizedTest
    @CsvSource({"P.O. Box 12, true", "PO Box 12, true", "12 Boxwood Lane, false"})
    void aBoxIsNoAddress(String street, boolean found) {
        Path job = ContractJobs.in(
                folder, "PA", whole -> {}, company -> ((ObjectNode) company.get("address")).put("street", street));

        assertThat(missingFrom(job).contains("content-seller-name-and-address")).isEqualTo(found);
    }

    private static List<String> missingFrom(Path job) {
        return ContractJobs.bid(job).findings().stream()
                .map(Finding::id)
                .filter(id -> id.startsWith("content-"))
                .toList();
    }

    private static void remove(ObjectNode file, String key) {
        int last = key.lastIndexOf('/');
        if (file.at(last < 0 ? "" : "/" + key.substring(0, last)) instanceof ObjectNode parent) {
            parent.remove(key.substring(last + 1));
        }
    }
}
