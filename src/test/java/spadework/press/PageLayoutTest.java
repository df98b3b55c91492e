// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import spadework.paperwork.cost.CostSheet;
import spadework.paperwork.cost.CostSheetLine;
import spadework.press.page.PagePress;
import spadework.press.page.PageSource;
import spadework.press.template.Templates;

/** How the pages break, and the order a screen reader needs. */
class PageLayoutTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.press.PageConformsTest#documents")
    void everyPageHasItsFooterAndSomethingToSay(String name, String document, Map<String, Object> model) {
        List<String> pages = PageText.pages(PRESS.print(document, model, PageFixtures.INFO));

        for (int page = 1; page <= pages.size(); page++) {
            assertThat(pages.get(page - 1))
                    .contains("Job 2026-014 · ", "page " + page + " of " + pages.size(), "Harrow Lane Drainage LLC")
                    .hasSizeGreaterThan(350);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.press.PageConformsTest#documents")
    void noHeadingStandsAloneAtAPagesFoot(String name, String document, Map<String, Object> model) {
        List<String> headings = texts(source(document, model), "h2", "h3");
        List<String> pages = PageText.pages(PRESS.print(document, model, PageFixtures.INFO));

        assertThat(headings).isNotEmpty();
        assertThat(pages).allSatisfy(page -> assertThat(headings).noneMatch(page::endsWith));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.press.PageConformsTest#documents")
    void headingsDescendOneLevelAtATime(String name, String document, Map<String, Object> model) {
        NodeList all = source(document, model).getElementsByTagName("*");
        List<Integer> levels = IntStream.range(0, all.getLength())
                .mapToObj(i -> all.item(i).getNodeName())
                .filter(tag -> tag.matches("h[1-6]"))
                .map(tag -> tag.charAt(1) - '0')
                .toList();

        assertThat(levels.get(0)).isEqualTo(1);
        assertThat(levels).filteredOn(level -> level == 1).hasSize(1);
        IntStream.range(1, levels.size())
                .forEach(i -> assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.press.PageConformsTest#documents")
    void everyHeadCellSaysWhatItHeads(String name, String document, Map<String, Object> model) {
        Document page = source(document, model);
        NodeList heads = page.getElementsByTagName("th");

        assertThat(heads.getLength()).isPositive();
        IntStream.range(0, heads.getLength())
                .mapToObj(i -> ((Element) heads.item(i)).getAttribute("scope"))
                .forEach(scope -> assertThat(scope).isIn("col", "row"));
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en-US");
    }

    @Test
    void aLongTableRepeatsItsHeadAndSplitsNoRow() {
        CostSheet plain = PageFixtures.sheet();
        CostSheetLine line = plain.lines().get(0);
        List<CostSheetLine> rows = IntStream.rangeClosed(1, 90)
                .mapToObj(i -> new CostSheetLine(
                        "L" + i,
                        "Begin " + i + " and a good many more words, so that this cell runs over more than one line on"
                                + " its page end " + i + ".",
                        line.section(),
                        line.amount(),
                        "",
                        line.cost(),
                        line.crew(),
                        line.crewHours(),
                        line.unitPrice(),
                        line.price()))
                .toList();
        List<String> pages = PageText.pages(
                PRESS.print("cost-sheet", PageFixtures.model("sheet", withLines(plain, rows)), PageFixtures.INFO));

        assertThat(pages.stream().filter(page -> page.contains("Begin ")))
                .hasSizeGreaterThan(3)
                .allSatisfy(page -> assertThat(page).contains("Line Quantity Material"));
        for (CostSheetLine row : rows) {
            assertThat(pages).filteredOn(page -> page.contains(row.name())).hasSize(1);
        }
    }

    private static CostSheet withLines(CostSheet s, List<CostSheetLine> lines) {
        return new CostSheet(
                s.head(),
                s.book(),
                lines,
                s.sections(),
                s.buildUp(),
                s.price(),
                s.payments(),
                s.supplies(),
                s.quantities(),
                s.notes(),
                s.agreed(),
                s.unpriced());
    }

    @Test
    void theFirstPageAnswersTheFiveQuestions() {
        String first = PageText.pages(PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO))
                .get(0);

        assertThat(first)
                .containsSubsequence(
                        "What is wrong", "Water stands on the basement floor",
                        "What we will do", "Wall A, north side",
                        "What it costs", "$26,875.00",
                        "When", "April 13, 2026",
                        "If it leaks again", "Call us.");
    }

    @Test
    void aLogoAndTheFirmsNameStandInTheHeader() {
        byte[] pdf = PRESS.print("proposal", PageFixtures.proposalOnA4WithLogo(), PageFixtures.INFO);

        assertThat(PageText.pages(pdf).get(1))
                .contains("Harrow Lane Drainage LLC · Home improvement registration HI-00417");
    }

    private static Document source(String document, Map<String, Object> model) {
        Map<String, Object> given = new HashMap<>(model);
        given.put("info", PageFixtures.INFO);
        String template = document + "/page.ftlh";
        return PageSource.read(template, Templates.bundled().fill(template, given));
    }

    private static List<String> texts(Document page, String... tags) {
        List<String> texts = new ArrayList<>();
        for (String tag : tags) {
            NodeList found = page.getElementsByTagName(tag);
            IntStream.range(0, found.getLength())
                    .mapToObj(i -> PageText.plain(found.item(i).getTextContent()))
                    .forEach(texts::add);
        }
        return texts;
    }
}
