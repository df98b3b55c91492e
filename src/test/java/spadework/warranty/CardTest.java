// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Seasons: March to May, September to November. The fixture's terms run from April 3, 2026 to April 2, 2028 and 2041.
 */
class CardTest {
    private static final Warranty WARRANTY = Warranties.of("2026-014-W1");

    @Test
    void cardHasBothSeasonsOfEveryYearAndNoDayOutsideTheTerms() {
        List<CardRow> rows = Card.of(WARRANTY).rows();
        assertThat(rows).as("2026 to 2040 twice, 2041 in spring").hasSize(31);
        assertThat(rows.get(0).from()).isEqualTo(LocalDate.of(2026, 4, 3));
        assertThat(rows.get(0).until()).isEqualTo(LocalDate.of(2026, 5, 31));
        assertThat(rows.get(1).from()).isEqualTo(LocalDate.of(2026, 9, 1));
        assertThat(rows.get(1).until()).isEqualTo(LocalDate.of(2026, 11, 30));
        assertThat(rows.get(30).until()).isEqualTo(LocalDate.of(2041, 4, 2));
    }

    @Test
    void laterOwnerGetsTheSeasonsThatAreLeft() {
        CardRow first = Card.of(WARRANTY, LocalDate.of(2029, 6, 4)).rows().get(0);
        assertThat(first.from()).isEqualTo(LocalDate.of(2029, 9, 1));
        assertThat(Card.of(WARRANTY, LocalDate.of(2041, 4, 3)).rows()).isEmpty();
    }

    @Test
    void partThatEndsIsToldInItsSeason() {
        assertThat(Card.of(WARRANTY).rows().stream().filter(row -> !row.ending().isEmpty()))
                .extracting(row -> row.season().words() + " " + row.year() + " "
                        + row.ending().get(0).part())
                .containsExactly("spring 2028 Sump pump", "spring 2041 Coated walls");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
        Test the pump each spring.,                      spring
        'Clean the gutters, each spring and fall',       spring fall
        Clean the gutters in the fall,                   fall
        Take the leaves out of the wells every autumn,   fall
        Keep the ground falling away from the house,     spring fall
        Keep the spring-fed pond below the outlet,       spring fall
        Do not let the level fall,                       spring fall
        """)
    void dutyStandsInTheSeasonItNamesAndElseInBoth(String duty, String seasons) {
        List<CardRow> rows = Card.of(with(duty)).rows();
        assertThat(rows.stream()
                        .filter(row -> row.year() == 2027)
                        .map(row -> row.season().words()))
                .containsExactly(seasons.split(" "));
    }

    @ParameterizedTest(name = "on {0}, within {1} months: {2}")
    @CsvSource(textBlock = """
        2026-04-02,   , ''
        2026-04-03,   , Coated walls+Sump pump
        2028-04-02,   , Coated walls+Sump pump
        2028-04-03,   , Coated walls
        2041-04-02,   , Coated walls
        2041-04-03,   , ''
        2027-10-01, 6, ''
        2027-10-02, 6, Sump pump
        2028-04-02, 0, Sump pump
        2040-10-02, 6, Coated walls
        """)
    void partIsInForceFromItsFirstDayToItsLast(LocalDate on, Integer months, String parts) {
        assertThat(String.join(
                        "+",
                        (months == null ? WARRANTY.inForce(on) : Ending.of(WARRANTY, on, months))
                                .stream().map(CoveredPart::part).toList()))
                .isEqualTo(parts);
    }

    private static Warranty with(String duty) {
        Warranty w = WARRANTY;
        OwnerTerms t = w.terms();
        return new Warranty(
                w.number(),
                w.reissueOf(),
                w.job(),
                w.parties(),
                w.coverage(),
                new OwnerTerms(
                        t.replyDays(),
                        t.visitDays(),
                        t.findingDays(),
                        t.beginDays(),
                        t.transfers(),
                        t.transferNoticeDays(),
                        List.of(duty)));
    }
}
