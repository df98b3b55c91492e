package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.Outcome;
import spadework.office.Paper;
import spadework.press.PageText;
import spadework.pricing.Due;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;

/**
 * Hunts for every cost, margin and internal note of every sample in every file that a homeowner gets: in the text of
 * pages, in metadata, in each stream of a PDF and each part of a workbook.
 */
class InternalFiguresTest {
    /** A cell that holds the number of a shared text and no figure. */
    private static final Pattern SHARED_TEXT = Pattern.compile("<c [^>]*t=\"s\"[^>]*><v>\\d+</v>");

    @TempDir
    Path out;

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void homeownerFilesCarryNone(Path sample) throws IOException {
        Bid bid = Samples.bid(sample);
        List<Dollars> internal = internal(bid.dossier().quote());
        assertThat(internal).as("there is something to hunt for").hasSizeGreaterThan(60);
        List<String> words = new ArrayList<>(bid.dossier().job().notes());
        words.addAll(List.of("margin", "markup", "overhead", "contingency", "direct cost", "loaded wage"));
        int seen = 0;
        for (Path file : print(sample)) {
            String content = content(file);
            assertThat(content.length()).as(file.toString()).isGreaterThan(1000);
            for (Dollars amount : internal) {
                assertThat(carries(content, amount)).as(file.getFileName() + " carries " + amount).isFalse();
            }
            for (String word : words) {
                assertThat(Pattern.compile("\\b" + Pattern.quote(word) + "\\b", Pattern.CASE_INSENSITIVE)
                                .matcher(content)
                                .find())
                        .as(file.getFileName() + " says " + word)
                        .isFalse();
            }
            seen++;
        }
        assertThat(seen).as("homeowner files seen").isEqualTo(6);
    }

    @Test
    void theHuntFindsThemInTheCostSheet() throws IOException {
        Path sample = Samples.papered().get(0);
        List<Dollars> internal = internal(Samples.bid(sample).dossier().quote());
        Outcome outcome = Samples.office().documents(sample, out, EnumSet.of(Paper.COST_SHEET));
        for (Path file : ((Outcome.Printed) outcome).files()) {
            String content = content(file);
            assertThat(internal.stream().filter(amount -> carries(content, amount)))
                    .as(file.toString())
                    .hasSizeGreaterThan(60);
        }
    }

    /**
     * As text with its dollar sign, or as a number in a cell. Quantities have one decimal, so that only amounts that do
     * not end in a round ten cents can be told from them in a cell.
     */
    private static boolean carries(String content, Dollars amount) {
        BigDecimal plain = amount.amount().stripTrailingZeros();
        boolean cell = plain.scale() == 2 && content.contains("<v>" + plain.toPlainString() + "</v>");
        return cell || content.contains(amount.text());
    }

    private List<Path> print(Path sample) throws IOException {
        Set<Paper> papers = EnumSet.complementOf(EnumSet.of(Paper.COST_SHEET));
        return ((Outcome.Printed) Samples.office().documents(sample, out, papers)).files();
    }

    /** Costs, without those that are public as well and whole dollars, which are counts and lengths elsewhere. */
    private static List<Dollars> internal(Quote quote) {
        Set<Dollars> open = new HashSet<>(List.of(quote.total(), quote.price(), Dollars.ZERO));
        quote.sections().stream().map(PricedSection::price).forEach(open::add);
        quote.payments().stream().map(Due::amount).forEach(open::add);
        quote.unitPrices().stream().map(UnitPrice::price).forEach(open::add);
        return quote.lines().stream()
                .flatMap(InternalFiguresTest::figures)
                .distinct()
                .filter(amount -> !open.contains(amount))
                .filter(amount -> amount.amount().stripTrailingZeros().scale() > 0)
                .toList();
    }

    private static Stream<Dollars> figures(PricedLine line) {
        return Stream.of(
                line.cost().material(),
                line.cost().purchaseTax(),
                line.cost().labour(),
                line.cost().machine(),
                line.cost().subcontract(),
                line.cost().disposal(),
                line.cost().direct());
    }

    private static String content(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        return file.toString().endsWith(".pdf") ? pdf(bytes) : workbook(bytes);
    }

    private static String pdf(byte[] bytes) throws IOException {
        StringBuilder content = new StringBuilder(PageText.all(bytes));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            document.getDocumentInformation().getMetadataKeys()
                    .forEach(key -> content.append('\n').append(document.getDocumentInformation().getPropertyStringValue(key)));
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream stream
                        && !stream.containsKey("Length1")) {
                    content.append('\n').append(stream.toTextString());
                }
            }
        }
        return content.toString();
    }

    private static String workbook(byte[] bytes) throws IOException {
        StringBuilder content = new StringBuilder();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                content.append('\n').append(entry.getName()).append('\n');
                String part = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                content.append(SHARED_TEXT.matcher(part).replaceAll(""));
            }
        }
        return content.toString();
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
