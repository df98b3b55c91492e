// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.company.WorkCondition;
import spadework.measure.Unit;

/** What every default line item owes its reader, whoever adds the next one. */
class DefaultBookTest {

    @Test
    void coversTheTradeInAtLeastSeventyItemsWithUniqueCodes() {
        List<String> codes = new ArrayList<>();
        Shipped.book().get("items").forEach(item -> codes.add(item.get("code").asText()));

        assertThat(codes).hasSizeGreaterThanOrEqualTo(70).doesNotHaveDuplicates();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void isWrittenInTheRecordsOwnWords(String code, JsonNode item) {
        assertThat(code).matches("[A-Z]+-?[A-Z0-9]+").hasSizeLessThanOrEqualTo(12);
        keysOf(item, ItemIdentity.class, ItemUse.class, ItemCost.class, ItemUpkeep.class, LineItem.class);
        keysOf(item.path("material"), Material.class);
        keysOf(item.path("labor"), Labor.class);
        keysOf(item.path("film"), Film.class);
        keysOf(item.path("pipe"), Pipe.class);
        keysOf(item.path("source"), Source.class);
        assertThat(Section.values())
                .extracting(Section::label)
                .contains(item.get("section").asText());
        assertThat(item.has("standard")).as("standard is said").isEqualTo(item.has("follows"));
        Shipped.texts(item.path("labor").path("slowedBy"))
                .forEach(slow -> assertThat(Shipped.words(WorkCondition.class)).contains(slow));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void tellsTheHomeownerInOneSentence(String code, JsonNode item) {
        assertThat(item.get("name").asText()).isNotBlank().hasSizeLessThanOrEqualTo(60);
        assertThat(item.get("homeowner").asText())
                .matches("[A-Z][^.!?]+\\.")
                .hasSizeBetween(25, 160)
                .doesNotContain(code);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void namesItsSourceAndADateNotAfterTheBooksOwn(String code, JsonNode item) {
        LocalDate dated = LocalDate.parse(Shipped.book().get("dated").asText());

        assertThat(item.get("source").get("text").asText()).hasSizeGreaterThan(20);
        assertThat(LocalDate.parse(item.get("source").get("on").asText())).isBeforeOrEqualTo(dated);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void costsSomething(String code, JsonNode item) {
        assertThat(new DefaultPrice().sellingOf(code)).isPositive();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void isCountedInTheUnitOfItsMeasureAndOfItsProduction(String code, JsonNode item) {
        Unit unit = Unit.findBySymbol(item.get("unit").asText()).orElseThrow();
        if (item.has("follows")) {
            assertThat(byTrade(item.get("follows").asText()).map(Measure::unit)).contains(unit);
        }
        if (item.has("labor")) {
            assertThat(item.get("labor").get("perHour").asText()).endsWith(" " + unit.symbol());
        }
        JsonNode material = item.path("material");
        if (material.has("measured")) {
            Unit bought =
                    byTrade(material.get("measured").asText()).orElseThrow().unit();
            assertThat(material.get("holds").asText()).endsWith(" " + bought.symbol());
        } else if (material.has("holds") && !material.has("each")) {
            assertThat(material.get("holds").asText()).endsWith(" " + unit.symbol());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void asksOnlyForCrewsAndMachinesThatTheDemonstrationContractorHas(String code, JsonNode item) {
        JsonNode labor = item.path("labor");
        if (labor.isObject()) {
            assertThat(Shipped.company().get("crews").has(labor.get("crew").asText()))
                    .isTrue();
        }
        if (labor.has("machine")) {
            assertThat(Shipped.company()
                            .get("machines")
                            .has(labor.get("machine").asText()))
                    .isTrue();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyItem")
    void isNeverPricedUnaskedWhenItIsForTheUnknownOrForStripping(String code, JsonNode item) {
        boolean onlyWhenNamed = item.path("unknown").asBoolean()
                || !item.has("follows")
                || item.get("follows").asText().equals(Measure.STRIP.trade());

        assertThat(onlyWhenNamed && item.path("standard").asBoolean()).isFalse();
    }

    private static void keysOf(JsonNode object, Class<?>... parts) {
        Set<String> allowed = Arrays.stream(parts)
                .flatMap(part -> Arrays.stream(part.getRecordComponents()))
                .map(RecordComponent::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        object.fieldNames().forEachRemaining(key -> assertThat(allowed).contains(key));
    }

    static Stream<Arguments> everyItem() {
        return Shipped.items().entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    /** The measure that a book names, if there is one. */
    private static Optional<Measure> byTrade(String trade) {
        return Stream.of(Measure.values())
                .filter(measure -> measure.trade().equals(trade))
                .findFirst();
    }
}
