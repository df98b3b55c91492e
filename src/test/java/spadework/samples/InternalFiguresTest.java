// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.PaperKind;
import spadework.paperwork.WithheldFromHomeowner;

/**
 * Hunts for every cost, margin and internal note of every sample in every file that a homeowner gets: in the text of
 * pages, in metadata, in each stream of a PDF and each part of a workbook.
 */
class InternalFiguresTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void homeownerFilesCarryNone(Path sample) throws IOException {
        Bid bid = Samples.bid(sample);
        List<Dollars> internal = InternalFigures.of(bid);
        assertThat(internal).as("there is something to hunt for").hasSizeGreaterThan(60);
        List<String> words = new ArrayList<>(bid.dossier().job().notes());
        words.addAll(WithheldFromHomeowner.allWords());
        int seen = 0;
        for (Map.Entry<String, byte[]> file : homeowner(sample).entrySet()) {
            String content = InternalFigures.content(file.getKey(), file.getValue());
            assertThat(content.length()).as(file.getKey()).isGreaterThan(1000);
            for (Dollars amount : internal) {
                assertThat(InternalFigures.carries(content, amount))
                        .as(file.getKey() + " carries " + amount)
                        .isFalse();
            }
            for (String word : words) {
                assertThat(InternalFigures.says(content, word))
                        .as(file.getKey() + " says " + word)
                        .isFalse();
            }
            seen++;
        }
        // The cost sheet's two are not among them.
        assertThat(seen).as("homeowner files seen").isEqualTo(2 * Samples.papersOf(bid) - 2);
    }

    @Test
    void theHuntFindsThemInTheCostSheet() throws IOException {
        Path sample = Samples.papered().get(0);
        List<Dollars> internal = InternalFigures.of(Samples.bid(sample));
        for (String file : List.of("kept/cost-sheet.pdf", "kept/cost-sheet.xlsx")) {
            String content =
                    InternalFigures.content(file, Samples.printed(sample).get(file));
            assertThat(internal.stream().filter(amount -> InternalFigures.carries(content, amount)))
                    .as(file)
                    .hasSizeGreaterThan(60);
            assertThat(Samples.bid(sample).dossier().job().notes())
                    .as(file + " has every internal note")
                    .isNotEmpty()
                    .allMatch(note -> InternalFigures.says(content, note));
        }
    }

    private static Map<String, byte[]> homeowner(Path sample) {
        Map<String, byte[]> files = new TreeMap<>(Samples.printed(sample));
        files.keySet().removeIf(name -> name.contains("/" + PaperKind.COST_SHEET.file() + "."));
        return files;
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
