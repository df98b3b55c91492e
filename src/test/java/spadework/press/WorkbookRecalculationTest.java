// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** An office program that works every formula out again comes to the figures that the file already shows. */
class WorkbookRecalculationTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, worked out again")
    @ValueSource(strings = {"proposal", "scope", "certificate", "cost-sheet"})
    void everyFigureIsTheSameToTheCent(String document) throws IOException, InterruptedException {
        Optional<Path> office = Recalculation.office();
        assumeTrue(office.isPresent(), "no soffice on the path, so the workbook cannot be worked out again");
        byte[] file =
                WorkbookPress.print(Templates.bundled(), document, PaperworkFixtures.model(), PaperworkFixtures.ISSUED);
        assertThat(Recalculation.shown(file)).isNotEmpty();
        assertThat(new Recalculation(office.get(), folder).figures(file)).isEqualTo(Recalculation.shown(file));
    }
}
