// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Agreement;
import spadework.samples.GeneratedLifeCycles;
import spadework.samples.Samples;

/**
 * A figure that stands in two papers is one figure. Each that carries a label is gathered from every paper and every
 * workbook of a bid, as offered, as contracted, as agreed after changes and as built, and no two of a label disagree:
 * over the samples and over jobs by seed, of which a part is signed, changed and built. The build looks at every tenth
 * of 500; {@code -Dspadework.figures=500} looks at all.
 */
class SameFiguresTest {
    private static final int ALL = 500;
    private static final int TOLD = Integer.getInteger("spadework.figures", 50);

    static Stream<Named<Bid>> samples() {
        return Samples.papered().stream()
                .map(folder -> Named.of(folder.getFileName().toString(), Samples.bid(folder)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void noTwoPapersOfASampleDisagree(Bid bid) {
        hold(bid, bid.dossier().job().number());
    }

    @Test
    void noTwoPapersOfAGeneratedJobDisagree() {
        AtomicInteger signed = new AtomicInteger();
        AtomicInteger changed = new AtomicInteger();
        AtomicInteger built = new AtomicInteger();
        // Jobs know nothing of each other, so each core takes its share of them.
        IntStream.range(0, TOLD).parallel().map(i -> i * (ALL / TOLD)).forEach(seed -> {
            Bid bid = GeneratedLifeCycles.of(seed);
            hold(bid, "seed " + seed);
            Agreement agreement = bid.dossier().job().agreement();
            signed.addAndGet(agreement.accepted().isPresent() ? 1 : 0);
            changed.addAndGet(agreement.acceptedChanges().isEmpty() ? 0 : 1);
            built.addAndGet(agreement.asBuilt().isPresent() ? 1 : 0);
        });
        // The generator makes each kind, so that none goes unseen.
        assertThat(List.of(signed.get(), changed.get(), built.get())).allMatch(count -> count > TOLD / 10);
    }

    /** The closed sample tells the most: each kind of figure is found there, most of them in several places. */
    @Test
    void everyKindOfFigureIsFound() {
        Bid bid = Samples.bid(Path.of("sample-quotes/added-wall-then-closed"));
        Map<String, List<String>> figures = figures(bid);

        assertThat(figures.keySet())
                .contains(
                        "length of A, contracted",
                        "length of C, built",
                        "length of D1, agreed",
                        "length of D1, built",
                        "film of A, agreed",
                        "gallons on A, agreed",
                        "gallons on C, built",
                        "start",
                        "finish",
                        "days",
                        "deposit, contracted",
                        "price, offered",
                        "price after 0",
                        "price after 2",
                        "paid",
                        "years of Waterproofed wall",
                        "reply",
                        "transfer",
                        "last day to cancel");
        assertThat(figures.values().stream().filter(places -> places.size() > 1))
                .hasSizeGreaterThan(30);
    }

    private static void hold(Bid bid, String name) {
        figures(bid).forEach((label, places) -> {
            Set<String> values = new TreeSet<>();
            places.forEach(place -> values.add(place.substring(0, place.indexOf(" @ "))));
            assertThat(values).as("%s: %s: %s", name, label, places).hasSize(1);
        });
    }

    /** Every value of a label with where it stands, as {@code 42 ft @ proposal}. */
    private static Map<String, List<String>> figures(Bid bid) {
        Map<String, List<String>> figures = new TreeMap<>();
        List<FigureLabels.Label> labels = FigureLabels.of(bid);
        for (PaperLines.Line line : PaperLines.of(bid)) {
            for (FigureLabels.Label label : labels) {
                label.find(line)
                        .forEach(value -> figures.computeIfAbsent(label.name(), key -> new ArrayList<>())
                                .add(value + " @ " + line.paper() + ": " + line.under()));
            }
        }
        return figures;
    }
}
