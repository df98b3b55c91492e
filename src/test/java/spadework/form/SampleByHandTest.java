// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.reply.TemplateFolder;

/** From an empty window the first sample is entered wholly by mouse and keyboard. */
@WindowTest
class SampleByHandTest {
    @TempDir
    Path folder;

    @Test
    void sampleEnteredByHandIsTheSameJobAtTheSamePrice() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        Draft sample = Draft.read(Files.readString(file)).orElseThrow();
        ReadJob meant = (ReadJob) new Intake().read(file);
        Bid priced = (Bid) Office.with(TemplateFolder.NONE).bid(file);
        Files.delete(file);
        try (OnScreen screen = OnScreen.job(file)) {
            FormRobot hand = new FormRobot(screen, sample);
            hand.fillAll();
            assertThat(hand.typed()).isGreaterThan(150);
            screen.settle();
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(screen.session().faults()).isEmpty();
            screen.picture("sample-by-hand");
            assertThat(screen.session().total()).contains(priced.total());
        }
        assertThat(((ReadJob) new Intake().read(file)).job()).isEqualTo(meant.job());
        assertThat(((Bid) Office.with(TemplateFolder.NONE).bid(file)).total()).isEqualTo(priced.total());
    }
}
