// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
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
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.press.PageText;
import spadework.pricing.Due;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;

/**
 * Figures of a bid that {@link spadework.paperwork.WithheldFromHomeowner} keeps from a homeowner's file, and all that a
 * file carries.
 */
public final class InternalFigures {
    /** A cell that holds the number of a shared text and no figure. */
    private static final Pattern SHARED_TEXT = Pattern.compile("<c [^>]*t=\"s\"[^>]*><v>\\d+</v>");

    private InternalFigures() {}

    /** Costs, without those that are public as well and whole dollars, which are counts and lengths elsewhere. */
    public static List<Dollars> of(Bid bid) {
        Set<Dollars> open = new HashSet<>(List.of(Dollars.ZERO));
        open(bid.proposedQuote(), open);
        open(bid.quote(), open);
        bid.dossier()
                .contract()
                .options()
                .forEach(option -> open.addAll(List.of(
                        option.sum().total(), option.sum().price(), option.sum().tax())));
        bid.dossier().contract().changes().forEach(change -> {
            open.addAll(List.of(
                    change.before(),
                    change.after(),
                    change.agreed().total(),
                    change.agreed().price()));
            change.lines().forEach(line -> open.add(line.amount()));
        });
        bid.dossier().job().agreement().received().forEach(received -> open.add(received.amount()));
        return Stream.of(bid.proposedQuote(), bid.quote())
                .flatMap(quote -> quote.lines().stream())
                .flatMap(InternalFigures::figures)
                .distinct()
                .filter(amount -> !open.contains(amount))
                .filter(amount -> amount.amount().stripTrailingZeros().scale() > 0)
                .toList();
    }

    private static void open(Quote quote, Set<Dollars> open) {
        open.addAll(List.of(quote.total(), quote.price()));
        quote.sections().stream().map(PricedSection::price).forEach(open::add);
        quote.payments().stream().map(Due::amount).forEach(open::add);
        quote.unitPrices().stream().map(UnitPrice::price).forEach(open::add);
    }

    private static Stream<Dollars> figures(PricedLine line) {
        return Stream.of(
                line.cost().material(),
                line.cost().purchaseTax(),
                line.cost().labor(),
                line.cost().machine(),
                line.cost().subcontract(),
                line.cost().disposal(),
                line.cost().direct());
    }

    /**
     * As text with its dollar sign, or as a number in a cell. Quantities have one decimal, so that only amounts that do
     * not end in a round ten cents can be told from them in a cell.
     */
    public static boolean carries(String content, Dollars amount) {
        BigDecimal plain = amount.amount().stripTrailingZeros();
        boolean cell = plain.scale() == 2 && content.contains("<v>" + plain.toPlainString() + "</v>");
        return cell || content.contains(amount.text());
    }

    /** Whether the word stands in it, in capitals or not. */
    public static boolean says(String content, String word) {
        return Pattern.compile("(?<!\\w)" + Pattern.quote(word) + "(?!\\w)", Pattern.CASE_INSENSITIVE)
                .matcher(content)
                .find();
    }

    /** Text of pages, metadata and each stream of a PDF; each part of a workbook. */
    public static String content(String name, byte[] bytes) throws IOException {
        return name.endsWith(".pdf") ? pdf(bytes) : workbook(bytes);
    }

    private static String pdf(byte[] bytes) throws IOException {
        StringBuilder content = new StringBuilder(PageText.all(bytes));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            document.getDocumentInformation()
                    .getMetadataKeys()
                    .forEach(key -> content.append('\n')
                            .append(document.getDocumentInformation().getPropertyStringValue(key)));
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
}
