// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricebook.Shipped;

/** The invented contractor of the samples. */
class DemonstrationContractorTest {
    private final JsonNode company = Shipped.company();

    @Test
    void isWrittenInTheRecordsOwnWords() {
        // It fills as the book says and states no figure of its own for it; the person is the key "contact"; its crew
        // reads English, and it hands out no reading copies.
        List<String> left = List.of("backfill", "person", "crewLanguage", "officeLanguage", "readingCopies");
        List<String> allowed = Stream.of(
                        List.of("name", "priceRules", "tax", "contact"),
                        components(Credentials.class),
                        components(Contact.class),
                        components(Letterhead.class),
                        components(Rates.class),
                        components(Production.class),
                        components(UsualTerms.class))
                .flatMap(List::stream)
                .toList();
        List<String> written = new ArrayList<>();
        company.fieldNames().forEachRemaining(written::add);
        written.remove("$schema");

        assertThat(written).allMatch(allowed::contains);
        assertThat(written)
                .containsAll(
                        allowed.stream().filter(name -> !left.contains(name)).toList());
    }

    /**
     * Burdened cost bands drawn from the Davis-Bacon determinations of 2026 and the BLS wage rows: laborer 25 to 60,
     * operator 32 to 80 dollars an hour.
     */
    @ParameterizedTest(name = "{0} costs {1} to {2} an hour")
    @CsvSource(delimiter = '|', textBlock = """
            laborer  | 25 | 60
            operator | 32 | 80
            """)
    void loadedWageLiesInThePublishedBand(String trade, BigDecimal low, BigDecimal high) {
        assertThat(loaded(trade)).isBetween(low, high);
    }

    /** BLS Employer Costs, construction, June 2022: total over wages 1.433; the magazine's example has 1.565. */
    @Test
    void burdenLiesBetweenTheTwoPublishedOnes() {
        company.get("wages")
                .forEach(wage -> assertThat(Shipped.number(wage.get("burden")))
                        .isBetween(new BigDecimal("43.3"), new BigDecimal("56.5")));
    }

    @Test
    void everyCrewIsMadeOfPeopleWithAWage() {
        company.get("crews").forEach(crew -> {
            assertThat(crew).isNotEmpty();
            crew.forEach(place -> {
                assertThat(company.get("wages").has(place.get("wage").asText())).isTrue();
                assertThat(place.get("count").asInt()).isPositive();
            });
        });
    }

    /** Each condition takes 10 to 30%: common practice, no source. */
    @Test
    void everyConditionSlowsByTenToThirtyPercent() {
        List<String> conditions = new ArrayList<>();
        company.get("slowdowns").forEach(slow -> {
            conditions.add(slow.get("condition").asText());
            assertThat(Shipped.number(slow.get("factor"))).isBetween(new BigDecimal("1.10"), new BigDecimal("1.30"));
        });
        assertThat(conditions).containsExactlyInAnyOrder("deep", "wet clay", "narrow");
    }

    /** Ohio bars a down payment over 10% for home construction of $25,000 and more (ORC 4722.03, second-hand). */
    @Test
    void paymentsAddUpAndTheDepositIsTenPercent() {
        BigDecimal sum = BigDecimal.ZERO;
        List<String> atSigning = new ArrayList<>();
        for (JsonNode payment : company.get("payments")) {
            sum = sum.add(Shipped.number(payment.get("share")));
            if (payment.get("atSigning").asBoolean()) {
                atSigning.add(payment.get("share").asText());
            }
        }
        assertThat(sum).isEqualByComparingTo("100");
        assertThat(atSigning).containsExactly("10%");
    }

    @Test
    void warrantyPromisesYearsAndNoLifetime() {
        JsonNode warranty = company.get("warranty");

        warranty.get("parts")
                .forEach(part -> assertThat(part.get("years").asInt()).isBetween(1, 99));
        assertThat(warranty.toString().toLowerCase(Locale.ROOT))
                .doesNotContain("lifetime", "forever", "guarante", "in lieu");
        assertThat(warranty.get("duties")).hasSizeBetween(3, 10);
    }

    @Test
    void nobodyCanBeReachedByItsPhoneOrMail() {
        assertThat(company.get("phone").asText()).matches("\\(\\d{3}\\) 555-01\\d\\d");
        assertThat(company.get("email").asText()).endsWith("@example.com");
    }

    private BigDecimal loaded(String trade) {
        JsonNode wage = company.get("wages").get(trade);
        return new Wage(Dollars.of(Shipped.number(wage.get("hourly"))), new Percent(Shipped.number(wage.get("burden"))))
                .loaded()
                .amount();
    }

    private static List<String> components(Class<? extends Record> part) {
        return Arrays.stream(part.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
    }
}
