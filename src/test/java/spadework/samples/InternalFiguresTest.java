// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.paperwork.WithheldFromHomeowner;

/**
 * Hunts for every cost, margin and internal note of every sample in every file that a homeowner gets: in the text of
 * pages, in metadata, in each stream of a PDF and each part of a workbook.
 */
class InternalFiguresTest {
    @TempDir
    Path out;

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void homeownerFilesCarryNone(Path sample) throws IOException {
        Bid bid = Samples.bid(sample);
        List<Dollars> internal = InternalFigures.of(bid);
        assertThat(internal).as("there is something to hunt for").hasSizeGreaterThan(60);
        List<String> words = new ArrayList<>(bid.dossier().job().notes());
        words.addAll(WithheldFromHomeowner.allWords());
        int seen = 0;
        for (Path file : print(sample)) {
            String content = InternalFigures.content(file.toString(), Files.readAllBytes(file));
            assertThat(content.length()).as(file.toString()).isGreaterThan(1000);
            for (Dollars amount : internal) {
                assertThat(InternalFigures.carries(content, amount))
                        .as(file.getFileName() + " carries " + amount)
                        .isFalse();
            }
            for (String word : words) {
                assertThat(InternalFigures.says(content, word))
                        .as(file.getFileName() + " says " + word)
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
        Outcome outcome = Samples.office().documents(sample, out, EnumSet.of(PaperKind.COST_SHEET));
        for (Path file : ((Outcome.Printed) outcome).files()) {
            String content = InternalFigures.content(file.toString(), Files.readAllBytes(file));
            assertThat(internal.stream().filter(amount -> InternalFigures.carries(content, amount)))
                    .as(file.toString())
                    .hasSizeGreaterThan(60);
            assertThat(Samples.bid(sample).dossier().job().notes())
                    .as(file + " has every internal note")
                    .isNotEmpty()
                    .allMatch(note -> InternalFigures.says(content, note));
        }
    }

    private List<Path> print(Path sample) throws IOException {
        Set<PaperKind> papers = EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET));
        return ((Outcome.Printed) Samples.office().documents(sample, out, papers)).files();
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
