// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.Refusal;
import spadework.press.PageText;

/** Walks every shipped sample and holds it to the texts that lie beside it. */
class SamplesTest {
    private static final Path PRINTED = Path.of("sample-quotes", "block-basement-to-swale");

    @TempDir
    Path out;

    @Test
    void everySampleIsSeen() {
        assertThat(papered()).hasSize(8).contains(Samples.SPANISH);
        assertThat(Samples.refused()).hasSize(3);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void takeoffQuoteAndFindings(Path sample) throws IOException {
        Bid bid = Samples.bid(sample);
        Expected.hold(sample, "findings.txt", findings(bid.findings()));
        Expected.hold(sample, "price.json", bid.priceListing() + "\n");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void textOfEveryPaper(Path sample) throws IOException {
        Map<String, byte[]> files = Samples.printed(sample);
        assertThat(files).hasSize(2 * Samples.papersOf(Samples.bid(sample)));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(".pdf")) {
                String pages = PageText.pages(file.getValue()).stream()
                        .map(page -> page.replaceAll("(?<=[.:]) ", "\n"))
                        .collect(Collectors.joining("\n\n----\n\n"));
                String name = file.getKey().substring(file.getKey().indexOf('/') + 1);
                Expected.hold(sample, name.replace(".pdf", ".txt"), pages + "\n");
            }
            if (sample.equals(PRINTED)) {
                Expected.holdBytes(sample.resolve("documents").resolve(file.getKey()), file.getValue());
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void refusedSamplesSayWhyAndWriteNothing(Path sample) throws IOException {
        Outcome outcome = Samples.office().documents(sample, out, EnumSet.allOf(PaperKind.class));
        BidResult answer = Samples.office().bid(sample);
        if (answer instanceof Refusal refusal) {
            assertThat(outcome).isInstanceOf(Outcome.Faulty.class);
            Expected.hold(sample, "faults.txt", faults(refusal.faults()));
        } else {
            assertThat(outcome).isInstanceOf(Outcome.Stopped.class);
            assertThat(((Bid) answer).openStops()).isNotEmpty();
            Expected.hold(sample, "findings.txt", findings(((Bid) answer).findings()));
        }
        try (Stream<Path> written = Files.walk(out)) {
            assertThat(written.filter(Files::isRegularFile)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void twoRunsGiveTheSameBytes(Path sample) {
        Map<String, byte[]> first = Samples.printed(sample);
        Samples.print(sample)
                .forEach((name, bytes) -> assertThat(Arrays.equals(bytes, first.get(name)))
                        .as(name)
                        .isTrue());
    }

    private static String findings(List<Finding> findings) {
        return findings.stream()
                        .map(f -> f.severity() + " " + f.id() + (f.about().isEmpty() ? "" : " " + f.about()) + " "
                                + new TreeMap<>(f.values()) + " [" + f.citation() + "]")
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static String faults(List<Fault> faults) {
        return faults.stream().map(Fault::text).collect(Collectors.joining("\n")) + "\n";
    }

    static List<Path> papered() {
        return Stream.concat(Samples.papered().stream(), Stream.of(Samples.SPANISH))
                .toList();
    }

    static List<Path> refused() {
        return Samples.refused();
    }
}
