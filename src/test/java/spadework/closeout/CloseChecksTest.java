// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.contract.Contracting;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.BuiltWall;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.CoatReadings;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Received;
import spadework.measure.FilmThickness;
import spadework.measure.Length;
import spadework.money.Dollars;
import spadework.press.template.Templates;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.schedule.DayQuantities;
import spadework.takeoff.Measuring;

/** A job is closed when all that a warranty rests on is there, and not before. */
class CloseChecksTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();
    private static final LocalDate DAY = LocalDate.of(2026, 9, 20);
    private static final Phrases PHRASES = new Phrases(Templates.bundled().words("words/findings.properties"));

    /** A closed case, bent by each test where it looks. */
    private static final class Case {
        Optional<Accepted> accepted = Optional.of(Agreements.accepted(List.of(), List.of()));
        List<Change> changes = new ArrayList<>();
        Optional<BigDecimal> gallons = Optional.of(new BigDecimal("100"));
        List<BuiltPipe> pipes = List.of(pipe("D1"), pipe("M1"));
        List<FlowTest> tests = List.of(test(0, true));
        List<CoatReadings> coats = List.of();
        boolean wall = true;
        boolean recorded = true;
        Optional<LocalDate> finished = Optional.of(DAY);
        String paid = "all";
        Optional<String> waived = Optional.empty();

        private List<Finding> found() {
            List<BuiltWall> walls = wall ? List.of(built(gallons, coats)) : List.of();
            AsBuilt built = new AsBuilt(
                    DAY.minusDays(9),
                    finished,
                    walls,
                    pipes,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    tests,
                    List.of(),
                    List.of(),
                    "");
            Agreement agreement = new Agreement(
                    Optional.empty(),
                    List.of(),
                    accepted,
                    changes,
                    List.of(),
                    recorded ? Optional.of(built) : Optional.empty(),
                    Optional.empty());
            Job job = Agreements.with(Jobs.job(), agreement);
            Contract contract = Contracting.of(
                    job, COMPANY, BOOK, Pricing.of(job, COMPANY, BOOK, DayQuantities.takeoff(job, COMPANY, BOOK)));
            Dollars amount = paid.equals("all") ? contract.total() : Dollars.of(paid);
            Account account = Account.of(contract, List.of(new Received(DAY, amount, "check")));
            Job done = BuiltJob.of(job);
            return CloseChecks.of(
                    job, AppliedFilm.of(done, BOOK, Measuring.of(done, BOOK)), account, new BalanceWaiver(waived));
        }

        List<String> open() {
            return found().stream().filter(CloseChecks::isOpen).map(Finding::id).toList();
        }
    }

    private static BuiltWall built(Optional<BigDecimal> gallons, List<CoatReadings> coats) {
        return new BuiltWall(
                "A",
                Length.ofFeet(40),
                Length.ofFeet(5),
                Length.ofFeet(5),
                gallons,
                List.of("K-1"),
                Optional.of("55 °F"),
                List.of(
                        new HoldPoint("A, dry", DAY, "Test Person", Optional.of("dry.jpg")),
                        new HoldPoint("B, coated", DAY, "Test Person", Optional.empty(), Optional.of("seen"))),
                coats);
    }

    private static BuiltPipe pipe(String label) {
        return new BuiltPipe(
                label,
                Length.ofFeet(40),
                Optional.of(Length.ofFeet(92)),
                Optional.of(Length.ofFeet(91)),
                Optional.empty());
    }

    private static FlowTest test(int day, boolean passed) {
        return new FlowTest(DAY.plusDays(day), passed, "hose at the cleanout", "Test Person");
    }

    @Test
    void wholeRecordPaidInFullLeavesNothingOpen() {
        assertThat(new Case().open()).isEmpty();
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(textBlock = """
            not accepted,     close-not-accepted
            change pending,   close-change-pending
            not recorded,     close-not-recorded
            not finished,     close-not-finished
            no wall,          close-wall-not-recorded
            no pipe,          close-pipe-not-recorded
            no gallons,       close-no-gallons
            film short,       close-film-short
            no flow test,     close-no-flow-test
            failed flow test, close-flow-test-failed
            a cent unpaid,    close-unpaid
            a cent too much,  close-overpaid
            """)
    void whatIsMissingKeepsTheJobOpen(String what, String finding) {
        Case job = new Case();
        switch (what) {
            case "not accepted" -> job.accepted = Optional.empty();
            case "change pending" ->
                job.changes.add(
                        Agreements.change(1, Alteration.NONE, List.of(), 1, ChangeState.PENDING, Optional.empty()));
            case "not recorded" -> job.recorded = false;
            case "not finished" -> job.finished = Optional.empty();
            case "no wall" -> job.wall = false;
            case "no pipe" -> job.pipes = List.of(pipe("M1"));
            case "no gallons" -> job.gallons = Optional.empty();
            case "film short" -> job.gallons = Optional.of(BigDecimal.ONE);
            case "no flow test" -> job.tests = List.of();
            case "failed flow test" -> job.tests = List.of(test(0, true), test(1, false));
            case "a cent unpaid" -> job.paid = off("-0.01");
            default -> job.paid = off("0.01");
        }
        assertThat(job.open()).contains(finding);
        job.found()
                .forEach(found ->
                        assertThat(PHRASES.what(found) + PHRASES.action(found)).doesNotContain("{"));
    }

    private static String off(String more) {
        Job job = Jobs.job();
        Dollars total = Pricing.of(job, COMPANY, BOOK, DayQuantities.takeoff(job, COMPANY, BOOK))
                .total();
        return total.plus(Dollars.of(more)).plain();
    }

    @Test
    void balanceMayBeWaivedWithAReason() {
        Case job = new Case();
        job.paid = off("-50.00");
        job.waived = Optional.of("Goodwill for the delay");
        assertThat(job.open()).isEmpty();
        assertThat(job.found()).extracting(Finding::id).contains("close-balance-waived");
    }

    @Test
    void failedFlowTestMayBeMendedAndRunAgain() {
        Case job = new Case();
        job.tests = List.of(test(0, false), test(1, true));
        assertThat(job.open()).isEmpty();
    }

    /**
     * Wet film for a dry one is dry ÷ solids by volume (UFC 3-190-06 s. 2.1.5); a gallon one mil thick covers 1604.17
     * sf (231 cu in in a gallon). The wall is 40 ft by 5 ft with 4 in of lap: 213.3 sf.
     */
    @ParameterizedTest(name = "{0} of the gallons needed: short is {1}")
    @CsvSource({"0.999, true", "1.000, false", "1.001, false"})
    void filmIsShortBelowTheGallonsThatThePromiseNeeds(double share, boolean isShort) {
        Job plain = Jobs.job();
        var film = AppliedFilm.of(plain, BOOK, Measuring.of(plain, BOOK)).get(0);
        double needed = (40 * (5 + 4 / 12.0)) * film.promised().number() / 1604.1666667;
        Case job = new Case();
        job.gallons = Optional.of(BigDecimal.valueOf(needed * share));
        assertThat(job.open().contains("close-film-short")).isEqualTo(isShort);
    }

    /** The mean may hold while a place is thin: the thinnest readings of all coats are held to the planned wet film. */
    @ParameterizedTest(name = "{0} mil off what was planned: thin is {1}")
    @CsvSource({"-1, true", "0, false", "1, false"})
    void filmIsThinWhereTheGaugeReadLessThanThePromiseNeeds(double off, boolean isThin) {
        Job plain = Jobs.job();
        double planned = AppliedFilm.of(plain, BOOK, Measuring.of(plain, BOOK))
                .get(0)
                .promised()
                .number();
        Case job = new Case();
        job.coats = List.of(
                new CoatReadings(1, List.of(new FilmThickness(planned), new FilmThickness(planned / 2 + off))),
                new CoatReadings(2, List.of(new FilmThickness(planned / 2))));
        assertThat(job.open().contains("close-film-thin")).isEqualTo(isThin);
    }

    @Test
    void accountIsContractAndChangesLessPayments() {
        Job job = Agreements.with(
                Jobs.job(),
                Agreements.agreement(
                        List.of(),
                        Optional.of(Agreements.accepted(List.of(), List.of())),
                        List.of(Agreements.change(
                                1,
                                Alteration.NONE,
                                List.of(),
                                0,
                                ChangeState.ACCEPTED,
                                Optional.of(Agreements.signed("-120.55"))))));
        Contract contract = Contracting.of(
                job, COMPANY, BOOK, Pricing.of(job, COMPANY, BOOK, DayQuantities.takeoff(job, COMPANY, BOOK)));
        Account account = Account.of(
                contract,
                List.of(
                        new Received(DAY, Dollars.of("1000.01"), "first"),
                        new Received(DAY, Dollars.of("0.99"), "second")));
        assertThat(account.total()).isEqualTo(account.contract().minus(Dollars.of("120.55")));
        assertThat(account.balance()).isEqualTo(account.total().minus(Dollars.of("1001.00")));
    }
}
