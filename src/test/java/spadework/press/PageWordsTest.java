// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.shape.Scene;
import spadework.money.Dollars;
import spadework.paperwork.proposal.Proposal;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** What a record holds stands on its pages, word for word: nothing vanishes and nothing changes. */
class PageWordsTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    /** Keys and figures for machines; they choose words but are none. */
    private static final Set<String> NOT_PRINTED = Set.of(
            "issuedIso",
            "id",
            "kind",
            "system",
            "protection",
            "severity",
            "photos",
            "plan",
            "a4",
            "fraction",
            "faces",
            "codeMinimum",
            "slope",
            "about",
            // each of what a finding is about, which stands in its sentence
            "labels");

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyTextOfTheRecordIsOnThePages(String document, Map<String, Object> model, Object record, Set<String> left) {
        String text = letters(PageText.all(PRESS.print(document, model, PageFixtures.INFO)));
        List<String> texts = new ArrayList<>();
        collect(record, left, texts);

        assertThat(texts)
                .hasSizeGreaterThan(40)
                .allSatisfy(t -> assertThat(text).contains(letters(t)));
    }

    static Stream<Arguments> documents() {
        Map<String, Object> proposal = PageFixtures.proposalModel();
        Map<String, Object> scope = PageFixtures.scopeModel();
        Map<String, Object> certificate = PageFixtures.certificateModel(false);
        Map<String, Object> sheet = PageFixtures.sheetModel();
        return Stream.of(
                Arguments.of(
                        "proposal",
                        proposal,
                        proposal.get("proposal"),
                        Set.of(
                                "customerContact",
                                "quantities",
                                "wetFilm",
                                "bottomWidth",
                                "thickness",
                                "projection",
                                "notCovered",
                                "duties",
                                "promise",
                                // the plan, the scope and the contract tell these
                                "openings",
                                "limits",
                                "depth",
                                "levels",
                                "takes",
                                "kind",
                                "pipe",
                                "level",
                                "fromHouse",
                                "fromLotLine",
                                "handShare",
                                "cracks",
                                // the list of what is included and the workbook tell these
                                "includes",
                                "explanation",
                                "listing",
                                // a rule is cited, and what to do about it is told, to the office
                                "citation",
                                "action",
                                // where a contract follows, its terms stand there
                                "terms",
                                // a number of the law stands only beside dampproofing
                                "codeMinimum")),
                Arguments.of(
                        "scope",
                        scope,
                        scope.get("scope"),
                        Set.of(
                                "validUntil",
                                "address",
                                "email",
                                "callName",
                                "callPhone",
                                "insurance",
                                "working",
                                "inputs",
                                "source",
                                "section",
                                "citation",
                                "description",
                                "items",
                                "kind",
                                "finish",
                                "surface",
                                "trench",
                                "protection",
                                "locateTicket",
                                "quantities",
                                "design")),
                Arguments.of(
                        "certificate",
                        certificate,
                        certificate.get("certificate"),
                        Set.of(
                                "validUntil",
                                "insurance",
                                "customerContact",
                                "jobTitle",
                                "quantities",
                                "depth",
                                "bottomWidth",
                                "thickness",
                                "projection",
                                "handShare",
                                "strip",
                                "cracks",
                                "openings",
                                "limits",
                                "wetFilm",
                                "pipe",
                                "levels",
                                "into",
                                "takes")),
                Arguments.of(
                        "cost-sheet",
                        sheet,
                        sheet.get("sheet"),
                        Set.of(
                                "validUntil",
                                "customerContact",
                                "insurance",
                                "address",
                                "email",
                                "callName",
                                "callPhone",
                                "unit")));
    }

    @Test
    void theFiguresOfTheMoneyAreOnThePages() {
        Proposal proposal = (Proposal) PageFixtures.proposalModel().get("proposal");
        String text = PageText.all(PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO));

        assertThat(proposal.price().rows())
                .allSatisfy(row -> assertThat(text).contains(row.name() + " " + row.price()));
        assertThat(proposal.price().unknowns())
                .allSatisfy(row -> assertThat(text).contains(row.name() + " " + row.price()));
        assertThat(proposal.payments())
                .allSatisfy(row -> assertThat(text)
                        .contains(
                                row.amount().text(),
                                row.number() + ". " + row.share() + ": "
                                        + row.when().substring(0, 1).toLowerCase(Locale.ROOT)
                                        + row.when().substring(1)));
        assertThat(text).contains("Your price $26,875.00");
    }

    @Test
    void theWordFollowsTheFilm() {
        String text = PageText.all(PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO));

        assertThat(text)
                .contains("This is waterproofing: it is built to hold back standing water.")
                .contains("This is dampproofing: it slows moisture from the soil and is not built to hold back"
                        + " standing water;"
                        + " the code calls it waterproofing only from 40 mil");
    }

    private static void collect(Object value, Set<String> left, List<String> texts) {
        if (value instanceof String text) {
            if (!text.isBlank()) {
                texts.add(text);
            }
        } else if (value instanceof Iterable<?> many) {
            many.forEach(one -> collect(one, left, texts));
        } else if (value instanceof Optional<?> maybe) {
            maybe.ifPresent(one -> collect(one, left, texts));
        } else if (value instanceof Dollars dollars) {
            if (!dollars.isZero()) {
                texts.add(dollars.text());
            }
        } else if (value instanceof Record record && !(value instanceof Scene)) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                if (!NOT_PRINTED.contains(component.getName()) && !left.contains(component.getName())) {
                    collect(read(record, component), left, texts);
                }
            }
        }
    }

    private static Object read(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Capitals apart: a template may begin a sentence with a text, or stand it inside one. */
    private static String letters(String text) {
        // A line may end at a hyphen.
        return PageText.plain(text).replace("- ", "-").toLowerCase(Locale.ROOT);
    }
}
