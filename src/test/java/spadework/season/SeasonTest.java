// SPDX-License-Identifier: Apache-2.0
package spadework.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.bids.BidStatus;
import spadework.feedback.FeedbackSeason;
import spadework.money.Dollars;
import spadework.office.book.BookService;
import spadework.office.portfolio.SeasonService;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.register.Register;

/** What a season is said to have brought. */
class SeasonTest {
    private static final LocalDate FROM = LocalDate.of(2026, 4, 1);
    private static final Path SAMPLES = Path.of("sample-quotes");

    @TempDir
    private Path out;

    private static SeasonJob job(String number, BidStatus standing, String total, int sold, Integer worked) {
        return new SeasonJob(
                number,
                "Walls",
                standing,
                FROM.plusDays(number.charAt(0)),
                Dollars.of(total),
                new SeasonJob.Days(sold, Optional.ofNullable(worked)),
                new SeasonJob.Money(Dollars.ZERO, Dollars.ZERO),
                List.of());
    }

    private static Season season(SeasonJob... jobs) {
        return new Season(FROM, FROM.plusDays(200), List.of(jobs), new FeedbackSeason(List.of()));
    }

    @Test
    void offersAreWonLostOrWithoutAnAnswer() {
        Season season = season(
                job("A", BidStatus.CLOSED, "30000.00", 8, 10),
                job("B", BidStatus.ACCEPTED, "20000.00", 6, null),
                job("C", BidStatus.LOST, "15000.00", 5, null),
                job("D", BidStatus.ISSUED, "10000.00", 4, null));
        assertThat(season.offered()).isEqualTo(new Season.Count(4, Dollars.of("75000.00")));
        assertThat(season.won()).isEqualTo(new Season.Count(2, Dollars.of("50000.00")));
        assertThat(season.lost()).isEqualTo(new Season.Count(1, Dollars.of("15000.00")));
        assertThat(season.open()).isEqualTo(new Season.Count(1, Dollars.of("10000.00")));
        assertThat(season.wonOfHundred()).as("2 of 3 that were answered").contains(67);
        assertThat(season(job("D", BidStatus.ISSUED, "1.00", 1, null)).wonOfHundred())
                .isEmpty();
    }

    @Test
    void daysAreComparedOnJobsThatAreDone() {
        Season season =
                season(job("A", BidStatus.CLOSED, "1.00", 8, 10), job("B", BidStatus.ACCEPTED, "1.00", 6, null));
        assertThat(season.daysSold()).isEqualTo(8);
        assertThat(season.daysWorked()).isEqualTo(10);
    }

    @Test
    void whatWasPaidTooMuchOnOneJobIsNotTakenOffAnother() {
        SeasonJob owing = money("A", "500.00", "200.00");
        SeasonJob over = money("B", "100.00", "150.00");
        Season season = season(over, owing);
        assertThat(season.outstanding()).isEqualTo(Dollars.of("300.00"));
    }

    private static SeasonJob money(String number, String invoiced, String received) {
        return new SeasonJob(
                number,
                "Walls",
                BidStatus.ACCEPTED,
                FROM,
                Dollars.of("1000.00"),
                new SeasonJob.Days(5, Optional.empty()),
                new SeasonJob.Money(Dollars.of(invoiced), Dollars.of(received)),
                List.of(
                        new SeasonClaim("CL1", "clogged outlet", Dollars.of("80.00")),
                        new SeasonClaim("CL2", "crack in the wall", Dollars.ZERO)));
    }

    @Test
    void claimsAreCountedByTheirCause() {
        Season season = season(money("A", "0.00", "0.00"), money("B", "0.00", "0.00"));
        assertThat(season.claims())
                .containsEntry("clogged outlet", new Season.Count(2, Dollars.of("160.00")))
                .containsEntry("crack in the wall", new Season.Count(2, Dollars.ZERO))
                .hasSize(2);
    }

    /** The one sample that was issued, signed and closed: eight days sold and three more by its first change. */
    @Test
    void reportOfTheSamplesAgreesWithTheirRegister() throws IOException, InterruptedException {
        Path closed = SAMPLES.resolve("added-wall-then-closed");
        SeasonService service = new SeasonService(closed, BookService.at(SAMPLES.resolve("price-book.json")));
        Reply reply = service.print(
                new SeasonService.Span(FROM, LocalDate.of(2026, 11, 30)),
                LocalDate.of(2026, 12, 1),
                out,
                TemplateFolder.NONE);
        assertThat(reply.done()).isTrue();
        BigDecimal signed = Register.of(closed).entries().stream()
                .flatMap(entry -> entry.fact("total").stream())
                .map(BigDecimal::new)
                .reduce((before, after) -> after)
                .orElseThrow();
        byte[] pdf = Files.readAllBytes(out.resolve("season.pdf"));
        assertThat(VeraPdf.failedRules(pdf)).isEmpty();
        assertThat(PageText.all(pdf))
                .contains("1 signed, 0 lost, 0 without an answer, of 1 offered")
                .contains("$0.00 outstanding: $" + String.format(Locale.US, "%,.2f", signed) + " billed")
                .contains("2026-041");
        byte[] book = Files.readAllBytes(out.resolve("season.xlsx"));
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbook cannot be worked out again");
        assertThat(new Recalculation(program.get(), out).figures(List.of(book)))
                .isEqualTo(List.of(Recalculation.shown(book)));
    }

    @Test
    void seasonWithoutAProposalIsRefused() throws IOException {
        SeasonService service = new SeasonService(SAMPLES, BookService.at(SAMPLES.resolve("price-book.json")));
        LocalDate early = LocalDate.of(2019, 1, 1);
        Reply none = service.print(new SeasonService.Span(early, early.plusDays(30)), FROM, out, TemplateFolder.NONE);
        assertThat(none.done()).isFalse();
        assertThat(String.join("\n", none.err())).contains("no proposal that was issued from 2019-01-01");
        Reply turned = service.print(new SeasonService.Span(early, early.minusDays(1)), FROM, out, TemplateFolder.NONE);
        assertThat(String.join("\n", turned.err())).contains("a last day that is the first one or later");
        assertThat(out).isEmptyDirectory();
    }
}
