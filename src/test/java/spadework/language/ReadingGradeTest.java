// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.office.PaperBlocks;
import spadework.office.PaperKind;
import spadework.samples.MoneyPapers;
import spadework.samples.Samples;

/** A homeowner's paper is read without effort: grade 8 or lower, wording that a law prescribes set aside. */
class ReadingGradeTest {
    private static final double HIGHEST = 8;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            water,       2
            the,         1
            footing,     2
            coated,      2
            cleaned,     1
            engineer,    3
            pipe,        1
            pipes,       1
            waterproofing, 4
            """)
    void syllablesAreCountedAsSpoken(String word, int syllables) {
        assertThat(ReadingGrade.syllables(word)).isEqualTo(syllables);
    }

    @Test
    void theGradeIsThatOfTheFormula() {
        ReadingGrade grade = ReadingGrade.of(List.of("The crew digs a trench.", "no sentence"));

        assertThat(grade).isEqualTo(new ReadingGrade(1, 5, 5));
        assertThat(grade.grade()).isCloseTo(0.39 * 5 + 11.8 - 15.59, within(1e-9));
    }

    @Test
    void everyHomeownersPaperIsAtGradeEightOrLower(TestReporter reporter) throws IOException {
        Map<String, ReadingGrade> grades = new TreeMap<>();
        for (Path sample : Samples.papered()) {
            PaperBlocks.of(Samples.bid(sample), EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET)))
                    .forEach(
                            (paper, blocks) -> grades.put(sample.getFileName() + " " + paper, ReadingGrade.of(blocks)));
        }
        MoneyPapers.blocks().forEach((paper, blocks) -> grades.put("money " + paper, ReadingGrade.of(blocks)));
        StringBuilder table = new StringBuilder("grade  words a sentence  paper\n");
        grades.forEach((paper, grade) -> table.append(
                String.format(Locale.ROOT, "%5.1f %17.1f  %s%n", grade.grade(), grade.wordsInASentence(), paper)));
        reporter.publishEntry("reading grades", table.toString());

        assertThat(grades).hasSizeGreaterThan(20);
        assertThat(grades)
                .as(table.toString())
                .allSatisfy(
                        (paper, grade) -> assertThat(grade.grade()).as(paper).isLessThanOrEqualTo(HIGHEST));
    }
}
