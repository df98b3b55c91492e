// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.intake.law.StateRuleBook;
import spadework.law.Cancellation;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.paperwork.ContractJobs;
import spadework.paperwork.PrintedDates;
import spadework.press.PageText;
import spadework.press.PrintedType;
import spadework.press.PrintedType.Found;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.samples.Samples;

/** What the printed contract says of the right to cancel, measured on the page, and what it never says. */
class ContractPaperTest {
    /** 16 CFR 429.1(b), sentence by sentence, but for what is filled in. */
    private static final List<String> FORM = List.of(
            "BUSINESS DAYS from the above date.",
            "If you cancel, any property traded in, any payments made by you under the contract or sale, and any"
                    + " negotiable instrument executed by you will be returned within TEN BUSINESS DAYS following"
                    + " receipt"
                    + " by the seller of your cancellation notice, and any security interest arising out of the"
                    + " transaction will be cancelled.",
            "If you cancel, you must make available to the seller at your residence, in substantially as good condition"
                    + " as when received, any goods delivered to you under this contract or sale, or you may, if you"
                    + " wish, comply with the instructions of the seller regarding the return shipment of the goods at"
                    + " the seller's expense and risk.",
            "If you do make the goods available to the seller and the seller does not pick them up within 20 days of"
                    + " the date of your Notice of Cancellation, you may retain or dispose of the goods without any"
                    + " further obligation. If you fail to make the goods available to the seller, or if you agree to"
                    + " return the goods to the seller and fail to do so, then you remain liable for performance of all"
                    + " obligations under the contract.",
            "To cancel this transaction, mail or deliver a signed and dated copy of this Cancellation Notice or any"
                    + " other written notice, or send a telegram, to Fennimarsh Wall & Drain LLC, at 1180 Kiln Lane,"
                    + " Marlow Fork, OH 43099 NOT LATER THAN MIDNIGHT OF",
            "I HEREBY CANCEL THIS TRANSACTION.");

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, age {1}: the {2} business day, {4}")
    @CsvSource(textBlock = """
            WY, 67, third,   THREE, 'July 7, 2026'
            OH, 67, third,   THREE, 'July 7, 2026'
            CA, 40, third,   THREE, 'July 7, 2026'
            CA, 65, fifth,   FIVE, 'July 9, 2026'
            MD, 64, fifth,   FIVE, 'July 8, 2026'
            MD, 65, seventh, SEVEN, 'July 10, 2026'
            MD, ,   seventh, SEVEN, 'July 10, 2026'
            """)
    void theStatementAndTheFormSayTheDaysOfTheRuleThatEndsLast(
            String state, Integer age, String ordinal, String days, String last) {
        byte[] pdf = ContractJobs.pdf(ContractJobs.in(folder, state, job -> age(job, age), company -> {}));
        PrintedType type = PrintedType.of(pdf);

        assertThat(PrintedDates.words(Cancellation.of(
                                new Cancellation.Signed(
                                        LocalDate.parse(ContractJobs.SIGNED),
                                        Optional.empty(),
                                        Optional.ofNullable(age),
                                        Optional.empty()),
                                StateRuleBook.bundled().at(state))
                        .lastDay()))
                .isEqualTo(last);
        assertThat(type.all("prior to midnight of the " + ordinal + " business day after the date of this"))
                .hasSize(1);
        assertThat(type.all("within " + days + " BUSINESS DAYS from the above date"))
                .hasSize(4);
        assertThat(type.all("NOT LATER THAN MIDNIGHT OF " + last)).hasSize(4);
        assertThat(type.all("The last day to cancel is " + last)).hasSize(1);
    }

    /** AB 1327: seven business days, Monday to Friday: July 2, 6 to 10 and 13, 2026. */
    @Test
    void afterADisasterCaliforniaPrintsSevenDays() {
        byte[] pdf = ContractJobs.pdf(ContractJobs.in(
                folder, "CA", job -> ((ObjectNode) job.get("signing")).put("afterDisaster", true), company -> {}));
        assertThat(PageText.all(pdf))
                .contains("midnight of the seventh business day", "The last day to cancel is July 13, 2026");
    }

    /** Nobody is asked for more than the work by then, and the contract says so only where its schedule shows it. */
    @Test
    void paymentsThatMayRunAheadOfTheWorkAreNotPraised(@TempDir Path ahead) {
        String promise = "for no more than the work that is done and the material that has come";
        assertThat(PageText.all(ContractJobs.pdf(ContractJobs.in(folder, "PA"))))
                .contains(promise);
        assertThat(PageText.all(ContractJobs.pdf(ContractJobs.in(
                        ahead,
                        "PA",
                        job -> {},
                        company -> ((ObjectNode) company.at("/payments/1")).put("workDone", "10%")))))
                .doesNotContain(promise);
    }

    /** Cal. BPC 7159 lets no type of the contract be under 10 points (secondary source); the plan's labels aside. */
    @Test
    void noLetterOfTheContractIsUnderTenPoints() {
        PrintedType type = PrintedType.of(ContractJobs.pdf(ContractJobs.in(folder, "CA")));
        int pages = type.find("NOT LATER THAN MIDNIGHT OF").orElseThrow().page();
        int plan = type.find("The house and the walls").orElseThrow().page();

        for (int page = 1; page <= pages; page++) {
            if (page != plan) {
                assertThat(type.leastOn(page)).as("page " + page).isGreaterThanOrEqualTo(10 - PrintedType.HAIR);
            }
        }
        for (String margin :
                List.of("Fennimarsh Wall & Drain LLC · Contractor registration", "Job 2026-014 ·", "page 1 of")) {
            assertThat(type.find(margin).orElseThrow().least()).isGreaterThanOrEqualTo(10 - PrintedType.HAIR);
        }
        assertThat(type.find("Limited warranty: specimen").orElseThrow().page()).isBetween(plan, pages);
    }

    /** 16 CFR 429.1(a): bold, 10 points at the least, in immediate proximity to the space for the buyer's signature. */
    @ParameterizedTest
    @ValueSource(strings = {"WY", "CA", "CT", "FL", "IL", "MA", "MD", "NC", "NJ", "NY", "OH", "PA", "TX", "VA", "WA"})
    void theStatementIsBoldAndBesideTheSignatures(String state) {
        PrintedType type = PrintedType.of(ContractJobs.pdf(ContractJobs.in(folder, state)));
        Found statement = type.find("You, the buyer, may cancel this transaction at any time prior to midnight of the")
                .orElseThrow();
        Found explained = type.find("for an explanation of this right.").orElseThrow();

        assertThat(statement.bold() && explained.bold()).isTrue();
        assertThat(Math.min(statement.least(), explained.least())).isGreaterThanOrEqualTo(10 - PrintedType.HAIR);
        for (String buyer : List.of("Buyer: Ida Wrenfield", "Buyer: Tobias Wrenfield")) {
            Found signature = type.find(buyer).orElseThrow();
            assertThat(signature.page()).isEqualTo(statement.page()).isEqualTo(explained.page());
            assertThat(signature.top() - explained.bottom())
                    .as("points below the statement")
                    .isBetween(0f, 144f);
        }
    }

    /**
     * 16 CFR 429.1(b): in duplicate for each of two buyers, in ten point bold. Both copies of a buyer stand on one
     * sheet, which comes off whole and is cut apart along a printed line.
     */
    @Test
    void eachBuyerGetsTheFormTwiceInBold() {
        PrintedType type = PrintedType.of(ContractJobs.pdf(ContractJobs.in(folder, "OH")));

        for (String sentence : FORM) {
            List<Found> copies = type.all(sentence);
            assertThat(copies)
                    .as(sentence)
                    .hasSize(4)
                    .allMatch(Found::bold)
                    .allMatch(copy -> copy.least() >= 10 - PrintedType.HAIR);
            assertThat(copies.stream().map(Found::page).distinct()).hasSize(2);
        }
        List<Found> cuts = type.all("Cut here. To cancel, send us one copy and keep the other.");
        assertThat(cuts).hasSize(2);
        for (String sentence : FORM) {
            List<Found> copies = type.all(sentence);
            for (int buyer = 0; buyer < 2; buyer++) {
                Found cut = cuts.get(buyer);
                assertThat(copies.get(2 * buyer).page()).isEqualTo(cut.page());
                assertThat(copies.get(2 * buyer + 1).page()).isEqualTo(cut.page());
                assertThat(copies.get(2 * buyer).bottom()).isLessThan(cut.top());
                assertThat(copies.get(2 * buyer + 1).top()).isGreaterThan(cut.bottom());
            }
        }
        for (String buyer : List.of("Ida Wrenfield", "Tobias Wrenfield")) {
            assertThat(type.all("For " + buyer + ", copy 1 of 2")).hasSize(1);
            assertThat(type.all("For " + buyer + ", copy 2 of 2")).hasSize(1);
        }
    }

    /** Md. Com. Law 14-302.1 wants the form apart from the contract; 16 CFR 429.1(a) then wants its place named. */
    @Test
    void inMarylandTheFormIsNoPartOfTheContract() {
        String text = PageText.all(ContractJobs.pdf(ContractJobs.in(folder, "MD")));

        assertThat(text)
                .contains("See the notice of cancellation form, handed to you on a separate sheet")
                .contains("A separate form; it is no part of the contract")
                .doesNotContain("the third business day", "Notice of Cancellation, in duplicate for each buyer");
    }

    @Test
    void elsewhereTheFormIsAttached() {
        assertThat(PageText.all(ContractJobs.pdf(ContractJobs.in(folder, "OH"))))
                .contains("See the attached notice of cancellation form", "Notice of Cancellation, in duplicate")
                .doesNotContain("it is no part of the contract");
    }

    @Test
    void anOpenSigningDayLeavesBlanksAndIsFound() {
        Path job = ContractJobs.in(folder, "OH", whole -> signing(whole).remove("on"), company -> {});

        assertThat(ids(job)).contains("contract-no-signing-day");
        assertThat(PageText.all(ContractJobs.pdf(job))).doesNotContain("July 1, 2026", "July 7, 2026");
    }

    @Test
    void aKnownSigningDayIsNotFound() {
        assertThat(ids(ContractJobs.in(folder, "OH")))
                .doesNotContain(
                        "contract-no-signing-day",
                        "contract-unprepared",
                        "contract-language",
                        "contract-financed",
                        "contract-lien",
                        "contract-emergency");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            financed,   true,     contract-financed
            lienOnHome, true,     contract-lien
            emergency,  true,     contract-emergency
            language,   Spanish,  contract-language
            """)
    void whatTheContractCannotHoldIsFound(String key, String value, String finding) {
        Consumer<ObjectNode> change = job -> {
            if (value.equals("true")) {
                signing(job).put(key, true);
            } else {
                signing(job).put(key, value);
            }
        };

        assertThat(ids(ContractJobs.in(folder, "OH", change, company -> {}))).contains(finding);
    }

    /** 16 CFR 429.0(a)(3) and 429.1(d): a lined page, and nothing printed that gives up the right. */
    @Test
    void anEmergencyGetsALinedPageAndNoPrintedWaiver() {
        List<String> pages = PageText.pages(ContractJobs.pdf(
                ContractJobs.in(folder, "OH", job -> signing(job).put("emergency", true), company -> {})));

        assertThat(pages).anySatisfy(page -> assertThat(page).contains("A page for the buyer's own hand"));
        assertThat(String.join(" ", pages))
                .doesNotContainPattern(Pattern.compile("\\bwaive", Pattern.CASE_INSENSITIVE));
        assertThat(pages.stream().filter(page -> page.contains("I HEREBY CANCEL")))
                .as("sheets of forms all the same, one for each buyer")
                .hasSize(2);
    }

    /**
     * A summary first, the signatures, then the specimen and a sheet of notices for each of two buyers: 8 pages for two
     * walls and four options; two more where subcontractors, makes of material and a trust account are named.
     */
    @Test
    void forTwoBuyersItIsEightPagesAndTwoMoreWithEveryInput() {
        byte[] signed = Samples.printed(Path.of("sample-quotes/added-wall-then-closed")).entrySet().stream()
                .filter(file -> file.getKey().endsWith("/contract.pdf"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        List<String> pages = PageText.pages(ContractJobs.pdf(ContractJobs.in(folder, "NC")));

        assertThat(PageText.pages(signed)).hasSizeLessThanOrEqualTo(8);
        assertThat(pages).hasSizeLessThanOrEqualTo(10);
        assertThat(pages.get(0))
                .contains("Contract price", "Approximate start", "Last day to cancel", "Not included", "Payments");
        assertThat(PageText.pages(signed).stream().filter(page -> page.contains("Limited warranty: specimen")))
                .singleElement()
                .asString()
                .contains("How does state law affect your rights?");
    }

    /** Cal. Bus. & Prof. Code 7159 asks for 10 points at least (read in a secondary source). */
    @Test
    void noWordOfTheContractBesideItsPlanIsUnderTenPoints() {
        byte[] pdf = ContractJobs.pdf(ContractJobs.in(folder, "CA"));
        List<String> pages = PageText.pages(pdf);
        PrintedType type = PrintedType.of(pdf);
        int specimen = IntStream.range(0, pages.size())
                .filter(page -> pages.get(page).contains("Limited warranty: specimen"))
                .findFirst()
                .orElseThrow();

        assertThat(specimen).isGreaterThan(3);
        for (int page = 0; page < specimen; page++) {
            if (!pages.get(page).contains("The house and the walls")) {
                assertThat(type.leastOn(page + 1))
                        .as("page " + (page + 1))
                        .isGreaterThanOrEqualTo(10 - PrintedType.HAIR);
            }
        }
    }

    @Test
    void aJobWithoutSigningHasNoContract() throws IOException {
        Path job = ContractJobs.in(folder, "OH", whole -> whole.remove("signing"), company -> {});

        assertThat(ids(job)).contains("contract-unprepared");
        assertThat(Samples.office().documents(job, folder.resolve("out"), EnumSet.of(PaperKind.CONTRACT)))
                .isInstanceOfSatisfying(
                        Outcome.Stopped.class,
                        stopped -> assertThat(stopped.stops())
                                .singleElement()
                                .asString()
                                .startsWith("contract-unprepared: "));
        assertThat(Samples.office().documents(job, folder.resolve("out"), EnumSet.allOf(PaperKind.class)))
                .isInstanceOfSatisfying(
                        Outcome.Printed.class,
                        printed -> assertThat(printed.files())
                                .hasSize(8)
                                .noneMatch(file -> file.endsWith("contract.pdf")));
    }

    @Test
    void openOptionsHaveBoxesAndAPriceEachAndAreFound() {
        Path job = ContractJobs.in(folder, "OH", ContractJobs::withOptions, company -> {});
        String text = PageText.all(ContractJobs.pdf(job));

        assertThat(ids(job)).contains("contract-options-open");
        assertThat(text.split("☐ accept ☐ decline", -1)).hasSize(3);
        assertThat(text)
                .contains(
                        "Wall F, front wall, facing south: 26 ft", "Contract price with the options that you accept:");
        ContractJobs.bid(job)
                .contracted()
                .contract()
                .options()
                .forEach(
                        option -> assertThat(text).contains(option.sum().total().text()));
    }

    @Test
    void takenOptionsAreInWallsPriceAndPayments() {
        Path job = ContractJobs.in(folder, "OH", ContractJobs::accepted, company -> {});
        String text = PageText.all(ContractJobs.signed(job));
        var contract = ContractJobs.bid(job).contracted().contract();

        assertThat(ids(job)).doesNotContain("contract-options-open");
        assertThat(text)
                .contains(
                        "✓ accepted",
                        "declined",
                        "Wall F, front wall",
                        contract.contracted().total().text())
                .doesNotContain("☐ accept", "Contract price with the options");
        contract.payments()
                .forEach(payment -> assertThat(text).contains(payment.amount().text()));
    }

    @Test
    void aLaterChangeMovesNothingThatWasSigned(@TempDir Path later) {
        byte[] signed = ContractJobs.signed(ContractJobs.in(folder, "OH", ContractJobs::accepted, company -> {}));
        Path changed = ContractJobs.in(later, "OH", ContractJobs::changed, company -> {});

        assertThat(ContractJobs.bid(changed).dossier().job().water().roofLines())
                .isEmpty();
        assertThat(ContractJobs.signed(changed)).isEqualTo(signed);
    }

    /** 15 USC 2308(a); 16 CFR 429.1(d), (f); Tex. Prop. Code 41.007. */
    @Test
    void itTakesNoRightAway() {
        // The attached warranty asks for none.
        assertThat(PageText.all(ContractJobs.pdf(ContractJobs.in(folder, "TX")))
                        .replace("we ask for no arbitration", ""))
                .doesNotContainPattern(Pattern.compile(
                        "arbitrat|in lieu of|merchantab|implied warrant|non-?refundable|confess|jury|\\bwaive",
                        Pattern.CASE_INSENSITIVE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"${7*7}", "<#if true>x</#if>", "</td><td>", "&amp; & <"})
    void typedTextPrintsAsItIs(String typed) {
        Path job = ContractJobs.in(
                folder, "OH", whole -> signing(whole).put("permits", "Permit " + typed + " here"), company -> {});

        assertThat(PageText.all(ContractJobs.pdf(job))).contains("Permit " + typed + " here");
    }

    @Test
    void itIsPdfUa1AndPdfA3a() {
        assertThat(VeraPdf.failedRules(ContractJobs.pdf(ContractJobs.in(folder, "MD"))))
                .isEmpty();
    }

    @Test
    void theWorkbookSaysTheSamePriceAndDeposit() {
        Path job = ContractJobs.in(folder, "OH");
        var contract = ContractJobs.bid(job).contracted().contract();
        var book = WorkbookDump.open(ContractJobs.file(job, ".xlsx"));

        assertThat(WorkbookDump.named(book, "contract_price"))
                .containsExactly(contract.contracted().total().amount().doubleValue());
        assertThat(WorkbookDump.named(book, "deposit_1"))
                .containsExactly(contract.payments().get(0).amount().amount().doubleValue());
    }

    private static void age(ObjectNode job, Integer age) {
        if (age == null) {
            signing(job).remove("oldestAge");
        } else {
            signing(job).put("oldestAge", age);
        }
    }

    private static ObjectNode signing(ObjectNode job) {
        return (ObjectNode) job.get("signing");
    }

    private static List<String> ids(Path job) {
        return ContractJobs.bid(job).findings().stream().map(Finding::id).toList();
    }
}
