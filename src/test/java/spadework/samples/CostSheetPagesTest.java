// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.PaperKind;
import spadework.press.PageText;

/** Every page of a cost sheet is worth its paper. */
class CostSheetPagesTest {
    /** Words of a page that holds next to nothing, its head and foot among them. */
    private static final int MOSTLY_EMPTY = 90;

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void noPageHoldsNextToNothing(Path sample) throws IOException {
        byte[] pdf = Samples.printed(sample).entrySet().stream()
                .filter(file -> file.getKey().endsWith("/" + PaperKind.COST_SHEET.file() + ".pdf"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        List<String> pages = PageText.pages(pdf);

        assertThat(pages).hasSizeGreaterThan(10).allMatch(page -> page.split(" ").length > MOSTLY_EMPTY);
    }
}
