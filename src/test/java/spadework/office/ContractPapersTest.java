// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.contract.Contract;
import spadework.contract.IssueDifference;
import spadework.contract.PricedChange;
import spadework.contract.PricedOption;
import spadework.contract.Revision;
import spadework.contract.UnitLine;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.WithheldFromHomeowner;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.press.template.Templates;
import spadework.samples.InternalFigures;

/** The papers of a contract: options, change orders, close-out, as a homeowner and a contractor read them. */
class ContractPapersTest {
    private static final PaperPrinter PRINTER = new PaperPrinter(Templates.bundled());
    private static final Bid OPEN = AgreedBids.of(AgreedBids.open());
    private static final Bid CHANGED = AgreedBids.of(AgreedBids.changed());
    private static final Bid CLOSED = AgreedBids.of(AgreedBids.built("20000.00", Optional.of("2026-014-W1")));
    private static final Map<String, byte[]> OFFERED = PRINTER.print(OPEN, EnumSet.allOf(PaperKind.class));
    private static final Map<String, byte[]> ORDERS = PRINTER.print(CHANGED, EnumSet.allOf(PaperKind.class));
    private static final Map<String, byte[]> BUILT = PRINTER.print(CLOSED, EnumSet.allOf(PaperKind.class));

    @TempDir
    Path office;

    private static String page(Map<String, byte[]> files, String name) throws IOException {
        return PageText.all(files.get(name + ".pdf")).replaceAll("\\s+", " ");
    }

    private static List<Double> named(Map<String, byte[]> files, String name, String cell) {
        return WorkbookDump.named(WorkbookDump.open(files.get(name + ".xlsx")), cell);
    }

    private static double figure(Dollars amount) {
        return amount.amount().doubleValue();
    }

    @Test
    void onlyAJobWithChangesHasChangeOrdersAndOnlyABuiltOneACompletion() {
        assertThat(OFFERED.keySet())
                .containsExactlyInAnyOrder(
                        "proposal.pdf",
                        "proposal.xlsx",
                        "scope-of-work.pdf",
                        "scope-of-work.xlsx",
                        "warranty.pdf",
                        "warranty.xlsx",
                        "cost-sheet.pdf",
                        "cost-sheet.xlsx");
        assertThat(ORDERS.keySet())
                .contains("change-order-1.pdf", "change-order-2.xlsx", "change-order-3.pdf", "change-order-4.xlsx")
                .doesNotContain("completion.pdf");
        assertThat(BUILT.keySet()).contains("completion.pdf", "completion.xlsx").doesNotContain("change-order-4.pdf");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            that there are options              | 2 options (OP1, OP2) you may take or leave;
            that they are outside the price     | they are not in this price. See Options.
            that the total leaves them out      | None is in the price above.
            title of an option that costs       | OP1. Front wall too
            what it is good for                 | It stays dry there.
            a wall of it with its specifics     | Wall F, front wall, facing south: 20 ft of concrete block
            how deep its trench is              | trench up to 5 ft 8 in deep
            title of an option that saves       | OP2. You move the shrubs
            what that saves                     | OP2. You move the shrubs saves $479.00
            a box to mark                       | I accept OP1
            what the signature says of options  | Sign here if you want this work for $25,172.00 with the options you marked.
            """)
    void theProposalTellsOfItsOptions(String what, String words) throws IOException {
        assertThat(page(OFFERED, "proposal")).as(what).contains(words);
    }

    @Test
    void anOptionCostsOrSavesInWordsAndTheTotalIsTheProposalsOwn() throws IOException {
        Contract contract = OPEN.dossier().contract();
        Dollars costs = contract.options().get(0).sum().total();
        Dollars saves = Dollars.ZERO.minus(contract.options().get(1).sum().total());
        assertThat(page(OFFERED, "proposal"))
                .contains("adds " + costs.text(), "saves " + saves.text())
                .contains("Your price " + contract.proposed().total().text());
        assertThat(named(OFFERED, "proposal", "job_total"))
                .containsExactly(figure(contract.proposed().total()));
        assertThat(named(OFFERED, "proposal", "option_prices"))
                .containsExactly(
                        figure(costs), figure(contract.options().get(1).sum().total()));
        assertThat(named(OFFERED, "proposal", "total_with_options"))
                .as("nothing is taken before somebody types it")
                .containsExactly(figure(contract.proposed().total()));
    }

    /** A second issue: the job before it had no wall F. */
    @Test
    void aRevisionSaysWhatChangedInMoneyAndScope() throws IOException {
        Dossier now = CHANGED.dossier();
        Dossier then = AgreedBids.sample();
        PricedOption offered = OPEN.dossier().contract().options().get(0);
        IssueDifference moved = IssueDifference.between(
                LocalDate.of(2026, 8, 3),
                new IssueDifference.IssuedOffer(then.contract().proposed(), List.of(), then.takeoff()),
                new IssueDifference.IssuedOffer(CHANGED.quote().offered(), List.of(offered), now.takeoff()));
        Bid second = AgreedBids.of(AgreedBids.open(), Optional.of(new Revision(2, Optional.of(moved))));
        Map<String, byte[]> files = PRINTER.print(second, EnumSet.of(PaperKind.PROPOSAL));
        Dollars rest = moved.before()
                .minus(Dollars.total(moved.sections().stream()
                        .map(IssueDifference.SectionMove::before)
                        .toList()));
        assertThat(page(files, "proposal"))
                .contains("Proposal, revision 2", "Revision 2, issued August 10, 2026")
                .contains("What changed since August 3, 2026")
                .contains("Your price, with " + rest.text() + " for parts that did not change "
                        + moved.before().text() + " " + moved.after().text() + " "
                        + moved.after().minus(moved.before()).text())
                .contains(offered.option().title() + " (new)")
                .contains("Wall C, front wall none", "What moved: wall dug down to its footing, C +24 ft");
        Bid first = AgreedBids.of(AgreedBids.open(), Optional.of(new Revision(1, Optional.empty())));
        assertThat(page(PRINTER.print(first, EnumSet.of(PaperKind.PROPOSAL)), "proposal"))
                .contains("Revision 1, issued")
                .doesNotContain("What changed since");
    }

    @ParameterizedTest(name = "order {0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1 | who accepted it, when, how     | Accepted on September 9, 2026 by Ida Wrenfield, signed on paper.
            1 | reason in words                | You asked for it. We saw it in the trench.
            1 | the signed price counts        | What it costs $4,321.09
            1 | the wall with its specifics    | Wall C, front wall, facing south: 24 ft of concrete block
            1 | the takeoff before and after   | Wall dug down to its footing, C none 24 ft +24 ft
            1 | what it does to the time       | It adds 3 working days. We finish by October 7, 2026 instead of October 2
            2 | the date counts earlier ones   | It adds 1 working day. We finish by October 8, 2026 instead of October 7
            2 | the photo                      | See Photo 1.
            2 | the caption                    | Photo 1: Ledge with the tape
            3 | that it was declined           | Declined. Nothing changes: not the work, not the price, not the dates.
            3 | what that does                 | It was declined, so the price stays
            4 | that it waits                  | Not signed yet. Without both signatures nothing changes
            4 | that signing comes first       | Both of us sign before this work starts.
            4 | days fewer                     | It takes 1 working day off. We finish by October 7, 2026 instead
            """)
    void aChangeOrderTells(int number, String what, String words) throws IOException {
        assertThat(page(ORDERS, "change-order-" + number)).as(what).contains(words);
    }

    @ParameterizedTest(name = "order {0} has signature lines: {1}")
    @CsvSource({"1, false", "2, false", "3, false", "4, true"})
    void onlyAPendingChangeHasLinesToSign(int number, boolean lines) throws IOException {
        assertThat(page(ORDERS, "change-order-" + number).contains("Who Signature Printed name Date"))
                .isEqualTo(lines);
    }

    /** Accepted ones move the price from one order to the next; declined and pending ones never do. */
    @Test
    void thePriceBeforeAndAfterOfEachOrderIsOnPageAndInWorkbook() throws IOException {
        Contract contract = CHANGED.dossier().contract();
        Dollars standing = contract.contracted().total();
        for (PricedChange change : contract.changes()) {
            String file = "change-order-" + change.change().number();
            Dollars after = standing.plus(change.agreed().total());
            assertThat(named(ORDERS, file, "price_before")).as(file).containsExactly(figure(standing));
            assertThat(named(ORDERS, file, "price_after")).as(file).containsExactly(figure(after));
            assertThat(named(ORDERS, file, "change_total"))
                    .as(file)
                    .containsExactly(figure(change.agreed().total()));
            assertThat(page(ORDERS, file))
                    .contains(standing.text(), change.agreed().total().text());
            standing = change.change().decision().isPresent() ? after : standing;
        }
        assertThat(standing).isEqualTo(contract.total());
    }

    @Test
    void aChangeByUnitPricesIsQuantityTimesPriceOnPageAndInWorkbook() throws IOException {
        UnitLine line = CHANGED.dossier().contract().changes().get(1).lines().get(0);
        assertThat(page(ORDERS, "change-order-2"))
                .contains(
                        "Charged by the unit prices that the contract fixed.",
                        "1.25 cu yd " + line.price().price().text() + " cubic yard "
                                + line.amount().text());
        assertThat(named(ORDERS, "change-order-2", "line_amounts")).containsExactly(figure(line.amount()));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            what the agreed work holds      | option OP2 (you move the shrubs), change order 1 (west wall added)
            the certificate                 | Certificate 2026-014-W1, in force from September 18, 2026
            agreed beside built             | Length 24 ft 25 ft
            the gallons on their area       | 13.2 gal on
            the batches                     | batch K-A
            a hold point with its photo     | Ida Wrenfield September 18, 2026 Photo 1
            a pipe and why                  | Solid main M1 Length 64 ft 66 ft Measured as it lay
            what was not recorded           | Drain stone
            a test                          | 3, flow test Passed. Hose at the cleanout, out at the swale. Ida Wrenfield
            that this moves no price        | None of these differences changes the price: only signed change orders do.
            the option in the account       | Contract price, with option OP2
            a payment                       | Paid: check 11 August 29, 2026 −$2,500.00
            no right is signed away         | Signing takes away no right that the warranty or the law gives you
            """)
    void theCompletionTells(String what, String words) throws IOException {
        assertThat(page(BUILT, "completion")).as(what).contains(words);
    }

    /** 231 cu in in a US gallon; so many cubic inches over so many square inches are so many inches of film. */
    @Test
    void theFilmInTheWorkbookIsGallonsOverArea() throws IOException {
        double area = 42 * 5.0;
        String page = page(BUILT, "completion");
        Matcher found = Pattern.compile("13\\.2 gal on (\\d+) sq ft").matcher(page);
        assertThat(found.find()).isTrue();
        double coated = Double.parseDouble(found.group(1));
        assertThat(coated).as("wall A with its laps, without its windows").isBetween(area, area * 1.1);
        double film = 13.2 * 231 / (coated * 144) * 1000;
        Matcher said =
                Pattern.compile("Mean wet film [\\d.]+ mil ([\\d.]+) mil").matcher(page);
        assertThat(said.find()).isTrue();
        assertThat(Double.parseDouble(said.group(1))).isCloseTo(film, Offset.offset(0.3));
    }

    @Test
    void theFilmIsTheSameOnThePageAndInTheWorkbook() throws IOException {
        List<Double> films = WorkbookDump.named(WorkbookDump.open(BUILT.get("completion.xlsx")), "wet_films");
        assertThat(films).isNotEmpty();
        String page = page(BUILT, "completion");
        assertThat(films).allSatisfy(film -> assertThat(page).contains(film + " mil"));
    }

    @ParameterizedTest(name = "{0} paid last")
    @CsvSource({"20000.00", "0.01", "99999.99"})
    void theBalanceIsContractAndChangesLessPaymentsToTheCent(String paid) throws IOException {
        Bid bid = AgreedBids.of(AgreedBids.built(paid, Optional.empty()));
        Map<String, byte[]> files = PRINTER.print(bid, EnumSet.of(PaperKind.COMPLETION));
        Dollars balance =
                bid.dossier().contract().total().minus(Dollars.of("2500.00")).minus(Dollars.of(paid));
        assertThat(named(files, "completion", "account_balance")).containsExactly(figure(balance));
        Dollars shown = balance.isNegative() ? Dollars.ZERO.minus(balance) : balance;
        assertThat(page(files, "completion"))
                .contains((balance.isNegative() ? "Comes back to you " : "Still to pay ") + shown.text())
                .contains("We issue the warranty certificate once nothing is open.");
    }

    @Test
    void theCertificateOfAClosedJobIsOfWhatWasBuilt() throws IOException {
        assertThat(page(BUILT, "warranty"))
                .contains("Number 2026-014-W1", "Wall C front wall 25 ft", "solid main M1, 66 ft", "September 18, 2026")
                .contains("As built, with change order 1 (west wall added, September 9, 2026).")
                .doesNotContainIgnoringCase("specimen");
        assertThat(page(ORDERS, "warranty"))
                .contains("SPECIMEN", "Wall C front wall 24 ft")
                .doesNotContain("2026-014-W1");
    }

    @Test
    void theProposalOfAClosedJobStillTellsOfASpecimenAndOfNoChange() throws IOException {
        assertThat(page(BUILT, "proposal")).isEqualTo(page(OFFERED, "proposal"));
        assertThat(page(BUILT, "proposal")).doesNotContain("Wall C");
    }

    @Test
    void theScopeSaysWhichOptionsAndChangesItHolds() throws IOException {
        assertThat(page(ORDERS, "scope-of-work"))
                .contains("This is the agreed work. It holds the option OP2, you move the shrubs, and the change orders"
                        + " 1, west wall added, of September 9, 2026; 2, rock at wall B, of September 10, 2026.")
                .contains("Wall C, front wall")
                .doesNotContain("Sod at the back", "Fewer shrubs");
        assertThat(page(OFFERED, "scope-of-work")).doesNotContain("This is the agreed work");
        assertThat(page(ORDERS, "scope-of-work"))
                .as("printed after the second change, while the contract names the scope of its own day")
                .contains(
                        "Scope of work · September 10, 2026 page 1",
                        "It takes the place of the scope of work of August 10, 2026 that the contract names.");
        assertThat(page(OFFERED, "scope-of-work"))
                .contains("Scope of work · August 10, 2026 page 1")
                .doesNotContain("takes the place");
        assertThat(page(ORDERS, "scope-of-work"))
                .as("a step for what a change charges by its unit price")
                .contains("Rock, 1.25 cy. Rock at wall B.");
        assertThat(page(OFFERED, "scope-of-work")).doesNotContain("Rock, ");
    }

    @Test
    void theCostSheetOfAnAcceptedJobShowsWhatTheAgreedPriceLeaves() throws IOException {
        Dollars agreed = CHANGED.dossier().contract().now().price();
        assertThat(page(ORDERS, "cost-sheet"))
                .contains("Agreed price " + agreed.text(), "Below stands the agreed work as one job by your book")
                .doesNotContain("Priced today", "priced today", "Cost not known");
        assertThat(named(ORDERS, "cost-sheet", "agreed_price")).containsExactly(figure(agreed));
        assertThat(named(ORDERS, "cost-sheet", "agreed_left").get(0))
                .isEqualTo(
                        figure(agreed)
                                - named(ORDERS, "cost-sheet", "with_overhead").get(0),
                        Offset.offset(0.005));
        assertThat(page(OFFERED, "cost-sheet")).doesNotContain("Agreed price").contains("Total to the customer");
    }

    @Test
    void pagesConformToUa1AndA3a() {
        Map<String, byte[]> all = papers();
        all.keySet().removeIf(name -> !name.endsWith(".pdf"));
        assertThat(all).hasSizeGreaterThanOrEqualTo(8);
        all.forEach((name, pdf) -> assertThat(VeraPdf.failedRules(pdf)).as(name).isEmpty());
    }

    @Test
    void workbooksWorkedOutAgainDifferByNoCent() throws IOException, InterruptedException {
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbooks cannot be worked out again");
        List<byte[]> books = papers().entrySet().stream()
                .filter(file -> file.getKey().endsWith(".xlsx"))
                .map(Map.Entry::getValue)
                .toList();
        assertThat(books).isNotEmpty();
        assertThat(new Recalculation(program.get(), office).figures(books))
                .isEqualTo(books.stream().map(Recalculation::shown).toList());
    }

    @Test
    void homeownersPapersCarryNoCostMarginOrNote() throws IOException {
        List<Dollars> internal = new ArrayList<>(InternalFigures.of(CHANGED));
        internal.retainAll(InternalFigures.of(CLOSED));
        internal.retainAll(InternalFigures.of(OPEN));
        assertThat(internal).hasSizeGreaterThan(60);
        List<String> words = new ArrayList<>(CHANGED.dossier().job().notes());
        words.addAll(WithheldFromHomeowner.allWords());
        for (Map.Entry<String, byte[]> file : papers().entrySet()) {
            if (!file.getKey().contains("cost-sheet")) {
                String content = InternalFigures.content(file.getKey(), file.getValue());
                assertThat(internal).as(file.getKey()).noneMatch(amount -> InternalFigures.carries(content, amount));
                assertThat(words).as(file.getKey()).noneMatch(word -> InternalFigures.says(content, word));
            }
        }
    }

    /** One of each paper that options, changes and close-out touch. */
    private static Map<String, byte[]> papers() {
        Map<String, byte[]> all = new TreeMap<>();
        OFFERED.forEach((name, bytes) -> put(all, "offered ", name, bytes, "proposal"));
        ORDERS.forEach((name, bytes) -> put(all, "agreed ", name, bytes, "change-order", "cost-sheet", "scope"));
        BUILT.forEach((name, bytes) -> put(all, "built ", name, bytes, "completion", "warranty"));
        return all;
    }

    private static void put(Map<String, byte[]> all, String when, String name, byte[] bytes, String... wanted) {
        for (String one : wanted) {
            if (name.startsWith(one)) {
                all.put(when + name, bytes);
            }
        }
    }
}
