// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.samples.Samples;

/** The outline of a pipe trench at grade: wide where its bank is laid back, narrow where it stands upright. */
class AreaAtGradeTest {

    /** By the pieces in which its volume is worked out: what is dug 0 ft under grade. */
    @ParameterizedTest
    @MethodSource("spadework.samples.Samples#papered")
    void itIsTheAreaThatIsDugAtGrade(Path sample) {
        List<DigBody> pipes = DigBodies.of(Samples.bid(sample).dossier().job()).stream()
                .filter(body -> body.kind() == BodyKind.MAIN || body.kind() == BodyKind.ROOF_LINE)
                .toList();
        assertThat(pipes)
                .isNotEmpty()
                .allSatisfy(body -> assertThat(body.areaAtGrade())
                        .as(body.label())
                        .isCloseTo(body.area(0, 0, body.length()), within(1e-6)));
    }

    /**
     * By hand: M1 is 1 ft wide and 5 ft deep or more for a short piece only, where 1926.652 wants its bank laid back;
     * all else is 1 ft wide. The depths and the length of that piece are printed in the workings of the cost sheet. At
     * corners it is 4.1 ft long and 5.25 ft deep at its middle: 46 × 1 + 4.13 × 2 × 5.25 = 89 sf.
     */
    @ParameterizedTest(name = "{0}: {1} sf")
    @CsvSource({"corners-by-assembly, 90", "maryland-buyer-of-65, 110", "back-wall-in-spanish, 110"})
    void aShortDeepPieceDoesNotLayBackTheWholeTrench(String sample, double most) {
        DigBody main = DigBodies.of(
                        Samples.bid(Path.of("sample-quotes", sample)).dossier().job())
                .stream()
                .filter(body -> body.kind() == BodyKind.MAIN)
                .findFirst()
                .orElseThrow();
        assertThat(main.areaAtGrade()).isBetween(main.length() * main.width(), most);
    }
}
