// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.drawing.LongerWords;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.PaperBlocks;
import spadework.office.PaperKind;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;
import spadework.samples.MoneyPapers;

/**
 * The papers of a whole job in words three tenths longer than the English ones, as another language may need: no letter
 * leaves its page, none is printed over another, and no page is lost to it.
 */
class LongerPapersTest {
    private static final Path SAMPLE = Path.of("sample-quotes/added-wall-then-closed");

    /** Points that stay white at the edges of a page; the margins themselves are wider. */
    private static final double EDGE = 24;

    private static final Map<String, byte[]> USUAL = new LinkedHashMap<>();
    private static final Map<String, byte[]> LONGER = new LinkedHashMap<>();

    /** A letter on its page, in points from the left and from the top. */
    private record Glyph(String text, double x, double y, double right) {}

    @BeforeAll
    static void print(@TempDir Path folder) throws IOException {
        lengthen(folder);
        print(Office.with(TemplateFolder.NONE), Templates.bundled(), USUAL);
        print(Office.with(new TemplateFolder(Optional.of(folder))), Templates.with(folder), LONGER);
    }

    private static void print(Office office, Templates templates, Map<String, byte[]> pages) throws IOException {
        Bid bid = (Bid) office.bid(SAMPLE);
        PagePress press = PagePress.warm(templates);
        pages.putAll(PaperBlocks.pages(bid, EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET)), press));
        for (MoneyPapers.Paper paper : MoneyPapers.all(bid.dossier())) {
            PageInfo info = new PageInfo("en-US", "Fennimarsh Wall & Drain LLC", LocalDate.of(2026, 9, 1));
            pages.put(paper.name(), press.print(paper.template(), paper.model(), info));
        }
    }

    private static void lengthen(Path folder) throws IOException {
        Path bundled = Path.of("templates");
        try (Stream<Path> files = Files.walk(bundled)) {
            for (Path file : files.filter(LongerPapersTest::isEnglishWords).toList()) {
                Properties words = new Properties();
                words.load(Files.newBufferedReader(file));
                words.replaceAll((key, text) -> LongerWords.of(text.toString()));
                Path to = folder.resolve(bundled.relativize(file));
                Files.createDirectories(to.getParent());
                try (Writer writer = Files.newBufferedWriter(to)) {
                    words.store(writer, null);
                }
            }
        }
    }

    private static boolean isEnglishWords(Path file) {
        String name = file.getFileName().toString();
        return name.equals("words.properties") || name.equals("terms.properties");
    }

    @Test
    void theWordsAreLonger() {
        assertThat(LongerWords.of("Price of <strong>{0}</strong>")).isEqualTo("Pricepr of <strong>{0}</strong>");
        LONGER.forEach((paper, pdf) -> assertThat(PageText.all(pdf).length())
                .as(paper)
                .isGreaterThan(PageText.all(USUAL.get(paper)).length()));
    }

    @Test
    void everyLetterStandsOnItsPageAndNoneOverAnother() {
        List<String> faults = new ArrayList<>();
        LONGER.forEach((paper, pdf) -> faults.addAll(faults(paper, pdf, EDGE)));

        assertThat(faults).isEmpty();
    }

    /** The check itself must be able to fail: no page has margins that wide. */
    @Test
    void aLetterBeyondTheEdgeIsFound() {
        LONGER.forEach(
                (paper, pdf) -> assertThat(faults(paper, pdf, 100)).as(paper).isNotEmpty());
    }

    /** Words may take a line more here and there; a paper grows by no more than its words do. */
    @Test
    void papersGrowNoMoreThanTheirWords() {
        LONGER.forEach((paper, pdf) -> {
            int usual = PageText.pages(USUAL.get(paper)).size();
            assertThat(PageText.pages(pdf).size()).as(paper).isLessThanOrEqualTo((int) Math.ceil(usual * 1.3) + 1);
        });
    }

    private static List<String> faults(String paper, byte[] pdf, double edge) {
        List<String> faults = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                double width = document.getPage(page - 1).getMediaBox().getWidth();
                double height = document.getPage(page - 1).getMediaBox().getHeight();
                List<Glyph> glyphs = glyphs(document, page);
                String place = paper + ", page " + page + ": ";
                glyphs.stream()
                        .filter(one -> one.x() < edge
                                || one.right() > width - edge
                                || one.y() < edge
                                || one.y() > height - edge)
                        .forEach(one -> faults.add(place + one + " leaves the page"));
                for (int i = 1; i < glyphs.size(); i++) {
                    Glyph before = glyphs.get(i - 1);
                    Glyph one = glyphs.get(i);
                    if (one.y() == before.y() && one.x() - before.x() < 0.3) {
                        faults.add(place + one + " is printed over " + before);
                    }
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return faults;
    }

    /** All letters of a page, line by line from the left. */
    private static List<Glyph> glyphs(PDDocument document, int page) throws IOException {
        List<Glyph> glyphs = new ArrayList<>();
        PDFTextStripper reader = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
                if (!at.getUnicode().isBlank()) {
                    glyphs.add(new Glyph(
                            at.getUnicode(),
                            at.getXDirAdj(),
                            Math.rint(at.getYDirAdj() * 2) / 2,
                            at.getXDirAdj() + at.getWidthDirAdj()));
                }
            }
        };
        reader.setStartPage(page);
        reader.setEndPage(page);
        reader.getText(document);
        glyphs.sort(Comparator.comparingDouble(Glyph::y).thenComparingDouble(Glyph::x));
        return glyphs;
    }
}
