// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;

/** The first page makes a company that jobs can be priced with, and opens a sample by one click. */
@WindowTest
class SetupWindowTest {
    private static final Map<String, String> FIRM = Map.ofEntries(
            Map.entry("/name", "Ostrand Earthworks"),
            Map.entry("/phone", "(614) 555-0133"),
            Map.entry("/email", "ostrand@example.com"),
            Map.entry("/address/street", "7 Fennel Row"),
            Map.entry("/address/city", "Marlow Fork"),
            Map.entry("/address/state", "OH"),
            Map.entry("/address/zip", "43099"),
            Map.entry("/license/label", "Contractor registration"),
            Map.entry("/license/number", "CR-00001"),
            Map.entry("/insurance/carrier", "Tallowgate Mutual"),
            Map.entry("/insurance/policy", "GL-1"),
            Map.entry("/insurance/limits", "$1,000,000 each occurrence"),
            Map.entry("/insurance/until", "2027-03-31"));

    @TempDir
    Path folder;

    @Test
    void firmIsEnteredAndJobsCanBePriced() throws Exception {
        try (OnScreen screen = new OnScreen()) {
            screen.asked().target = Optional.of(folder);
            screen.open(() -> screen.forms().begin());
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.press(screen.window().target(), "first.choose");
            hand.press(screen.window().target(), "first.begin");
            assertThat(screen.all(
                            JTextArea.class,
                            a -> "wrong".equals(a.getName())
                                    && a.isShowing()
                                    && a.getText().startsWith("Not written yet.")))
                    .hasSizeGreaterThan(8);
            assertThat(folder.resolve("company.json")).doesNotExist();
            FIRM.forEach((pointer, words) -> {
                screen.robot()
                        .click(screen.all(JTextField.class, f -> pointer.equals(f.getName()))
                                .get(0));
                hand.type(words);
            });
            hand.press(screen.window().target(), "first.begin");
            screen.waitFor(() -> screen.ask(
                    () -> Stream.of(Frame.getFrames()).anyMatch(f -> f instanceof JobWindow && f.isShowing())));
        }
        Draft sample = Draft.read(Files.readString(Path.of("sample-quotes/block-basement-to-swale/job.json")))
                .orElseThrow();
        Draft plain = sample.without("/items").without("/photos").without("/observations");
        Path job = Files.createDirectories(folder.resolve("one")).resolve("job.json");
        Files.writeString(job, plain.text());
        Office office = Office.with(TemplateFolder.NONE);
        assertThat(office.bid(plain.text(), job)).isInstanceOfSatisfying(Bid.class, bid -> {
            assertThat(bid.dossier().company().name()).isEqualTo("Ostrand Earthworks");
            assertThat(bid.total().amount()).isPositive();
            assertThat(bid.openStops()).isEmpty();
        });
        assertThat(new Issuing(office, SampleJobFolder.TODAY).issue(job))
                .as("a proposal")
                .isInstanceOf(Outcome.Issued.class);
    }

    @Test
    void sampleIsOneClickAway() {
        try (OnScreen screen = new OnScreen()) {
            screen.remembered().folder = Optional.of(folder);
            screen.open(() -> screen.forms().first());
            AbstractButton sample = screen.all(AbstractButton.class, b -> "first.sample".equals(b.getName()))
                    .get(0);
            screen.robot().click(sample);
            screen.waitFor(() -> screen.ask(() -> Stream.of(Frame.getFrames())
                    .anyMatch(f -> f instanceof JobWindow job
                            && f.isShowing()
                            && job.session().total().isPresent())));
            assertThat(folder.resolve("samples/block-basement-to-swale/job.json"))
                    .exists();
        }
    }
}
