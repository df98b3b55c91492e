// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.money.Dollars;
import spadework.press.PageText;
import spadework.register.Entry;
import spadework.register.Register;
import spadework.samples.Samples;

/** The papers that a homeowner who reads Spanish was handed from proposal to certificate, as they were issued. */
class SpanishSampleTest {
    private static final Path HANDED = Samples.SPANISH.resolve("for-the-homeowner");
    private static final Pattern MONTH = Pattern.compile(
            "\\b(?:January|February|March|April|May|June|July|August|September|October|November|December) \\d");
    /** The form of 16 CFR 429.1(b), of which no Spanish text of the agency is known. */
    private static final Pattern FORM = Pattern.compile("(?s)Notice of Cancellation.*");

    private static final Pattern DOLLARS = Pattern.compile("\\$[\\d,]+\\.\\d\\d");

    private static Map<String, String> texts() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(HANDED)) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".pdf")).toList()) {
                texts.put(
                        file.getFileName().toString(),
                        String.join(" ", PageText.pages(Files.readAllBytes(file)))
                                .replaceAll("\\s+", " "));
            }
        }
        return texts;
    }

    @Test
    void everyPaperOfAWholeJobIsThereAndSaysItIsSpanish() throws IOException {
        assertThat(texts().keySet())
                .anyMatch(name -> name.contains("proposal"))
                .anyMatch(name -> name.contains("contract"))
                .anyMatch(name -> name.contains("change-order"))
                .anyMatch(name -> name.contains("invoice"))
                .anyMatch(name -> name.contains("receipt"))
                .anyMatch(name -> name.contains("release"))
                .anyMatch(name -> name.contains("completion"))
                .anyMatch(name -> name.contains("W1-warranty"));
        for (String name : texts().keySet()) {
            assertThat(new String(Files.readAllBytes(HANDED.resolve(name)), StandardCharsets.ISO_8859_1))
                    .as(name)
                    .contains("/Lang (es-US)");
        }
    }

    /** What the firm says itself stands in the Spanish that it gave for it, and days are written in Spanish. */
    @Test
    void nothingOfTheFirmsEnglishAndNoEnglishDayStandsInThem() throws IOException {
        JsonNode company = new ObjectMapper().readTree(Files.readString(Path.of("sample-quotes/company.json")));
        List<String> english = new ArrayList<>();
        company.get("translations").get("es").fieldNames().forEachRemaining(english::add);
        assertThat(english).hasSizeGreaterThan(30);
        texts().forEach((name, text) -> {
            String own = FORM.matcher(text).replaceAll("");
            assertThat(english).as(name).noneMatch(own::contains);
            assertThat(MONTH.matcher(own).find()).as(name).isFalse();
            assertThat(own).as(name).contains("código de registro").doesNotContain("record code");
        });
    }

    /** As for every signed job: bills, receipts and the last release come to what the register has as the contract. */
    @Test
    void billsReceiptsAndReleaseComeToTheContractAsTheRegisterHasIt() throws IOException {
        List<Entry> entries = Register.of(Samples.SPANISH).entries();
        Dollars contract = Dollars.of(new BigDecimal(entries.stream()
                .filter(entry -> entry.facts().containsKey("total"))
                .reduce((earlier, later) -> later)
                .orElseThrow()
                .facts()
                .get("total")));
        List<Dollars> billed = new ArrayList<>();
        List<Dollars> received = new ArrayList<>();
        List<Dollars> released = new ArrayList<>();
        for (Entry entry : entries) {
            String number = entry.number().map(Object::toString).orElse("");
            entry.facts().forEach((fact, value) -> {
                if (number.contains("-I")) {
                    billed.add(Dollars.of(new BigDecimal(value)));
                } else if (fact.equals("amount")) {
                    (number.contains("-L") ? released : received).add(Dollars.of(new BigDecimal(value)));
                }
            });
        }
        assertThat(Dollars.total(billed)).as("billed").isEqualTo(contract);
        assertThat(Dollars.total(received)).as("received").isEqualTo(contract);
        assertThat(released).as("released").containsExactly(contract);
        assertThat(texts().get("2026-058-L1-release.pdf")).contains(contract.text());
        assertThat(texts().get("2026-058-W1-completion.pdf")).contains(contract.text());
        assertThat(texts().get("2026-058-I5-invoice.pdf")).contains(contract.text());
    }

    /** What a bill asks and what a receipt says was paid are the rows of the register, dollar for dollar. */
    @ParameterizedTest
    @ValueSource(strings = {"invoice", "receipt"})
    void everyBillAndReceiptPrintsItsOwnAmountFirst(String kind) throws IOException {
        for (Map.Entry<String, String> paper : texts().entrySet()) {
            if (paper.getKey().endsWith("-" + kind + ".pdf")) {
                Dollars written = Register.of(Samples.SPANISH).entries().stream()
                        .filter(entry -> entry.number()
                                .map(Object::toString)
                                .filter(number -> paper.getKey().startsWith(number + "-"))
                                .isPresent())
                        .flatMap(entry -> entry.facts().entrySet().stream())
                        .filter(fact -> fact.getKey().matches("(payment|change)\\.\\d+|amount"))
                        .map(fact -> Dollars.of(new BigDecimal(fact.getValue())))
                        .reduce(Dollars.ZERO, Dollars::plus);
                assertThat(DOLLARS.matcher(paper.getValue()).results().map(MatchResult::group))
                        .as(paper.getKey())
                        .first()
                        .isEqualTo(written.text());
            }
        }
    }
}
