// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Wall;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.samples.GeneratedBids;
import spadework.samples.Samples;

/**
 * A figure that stands in two papers is one figure: each that carries a label is gathered from every paper of a bid and
 * its workbooks, over the samples and jobs by seed, and no two of a label disagree. What was changed after acceptance
 * stands in papers that say so, and is not gathered here.
 */
class SameFiguresTest {
    private static final Set<PaperKind> PAPERS = EnumSet.of(PaperKind.PROPOSAL, PaperKind.SCOPE, PaperKind.WARRANTY);
    private static final String FEET = "([0-9]+ ft(?: [0-9½]+ in)?|[0-9½]+ in)";

    static Stream<Named<Bid>> bids() {
        List<Bid> generated = GeneratedBids.of(100);
        return Stream.concat(
                Samples.papered().stream()
                        .map(folder -> Named.of(folder.getFileName().toString(), Samples.bid(folder)))
                        .filter(bid -> bid.getPayload()
                                .dossier()
                                .job()
                                .agreement()
                                .accepted()
                                .isEmpty()),
                IntStream.range(0, generated.size()).mapToObj(i -> Named.of("seed " + i, generated.get(i))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bids")
    void noTwoPapersDisagree(Bid bid) {
        Map<String, Set<String>> figures = new TreeMap<>();
        Map<String, Integer> places = new TreeMap<>();
        for (String text : texts(bid)) {
            for (Map.Entry<String, Pattern> label : labels(bid).entrySet()) {
                Matcher found = label.getValue().matcher(text);
                while (found.find()) {
                    figures.computeIfAbsent(label.getKey(), key -> new TreeSet<>())
                            .add(found.group(1) != null ? found.group(1) : found.group(2));
                    places.merge(label.getKey(), 1, Integer::sum);
                }
            }
        }

        assertThat(figures)
                .allSatisfy((label, values) -> assertThat(values).as(label).hasSize(1));
        assertThat(figures.keySet()).contains("price", "start", "finish", "reply");
        assertThat(places.values().stream().filter(count -> count > 1)).hasSizeGreaterThan(5);
    }

    /** What is told of in several places, by its label; the figure is the first group. */
    private static Map<String, Pattern> labels(Bid bid) {
        Map<String, Pattern> labels = new TreeMap<>();
        String date = "([A-Z][a-z]+ [0-9]{1,2}, [0-9]{4})";
        labels.put("price", Pattern.compile(" work for (\\$[0-9,]+\\.[0-9]{2})"));
        labels.put("start", Pattern.compile("start on or after " + date));
        labels.put("finish", Pattern.compile("finish by " + date));
        labels.put("days", Pattern.compile("[:,] ([0-9]+) working days? at your house"));
        labels.put("reply", Pattern.compile("answer within ([0-9]+) working days?"));
        labels.put("transfer", Pattern.compile("within ([0-9]+) days of the sale"));
        labels.put("wall term", Pattern.compile("(?i)treated wall for ([0-9]+) years?"));
        for (Wall wall : bid.dossier().job().walls()) {
            String name = Pattern.quote(wall.label());
            labels.put(
                    "length of " + wall.label(),
                    Pattern.compile("Wall " + name + ", [^:;$]*?, " + FEET + "(?=[:;,]|$)"));
            labels.put(
                    "trench of " + wall.label(),
                    Pattern.compile("(?:^|; |, )" + name + ", [^;]*?, trench " + FEET + " deep|" + FEET
                            + " deep at wall " + name + "(?=[,. ])"));
        }
        bid.dossier()
                .job()
                .water()
                .drains()
                .forEach(drain -> labels.put(
                        "pipe " + drain.label(), Pattern.compile("\\b" + Pattern.quote(drain.label()) + ", " + FEET)));
        bid.dossier()
                .job()
                .water()
                .mains()
                .forEach(run -> labels.put(
                        "pipe " + run.label(), Pattern.compile("\\b" + Pattern.quote(run.label()) + ", " + FEET)));
        bid.dossier()
                .job()
                .water()
                .roofLines()
                .forEach(run -> labels.put(
                        "pipe " + run.label(), Pattern.compile("\\b" + Pattern.quote(run.label()) + ", " + FEET)));
        return labels;
    }

    private static List<String> texts(Bid bid) {
        List<String> texts = new ArrayList<>();
        PaperBlocks.of(bid, PAPERS).values().forEach(texts::addAll);
        for (PaperModels.Sheet sheet : PaperModels.of(bid, PAPERS)) {
            texts.addAll(
                    cells(WorkbookPress.print(Templates.bundled(), sheet.template(), sheet.model(), sheet.date())));
        }
        return texts;
    }

    private static List<String> cells(byte[] file) {
        DataFormatter printed = new DataFormatter(Locale.US);
        List<String> cells = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            book.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> cells.add(printed.formatCellValue(cell)))));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return cells;
    }
}
