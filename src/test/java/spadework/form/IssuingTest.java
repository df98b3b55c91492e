// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.mail.Message;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.kit.Platform;
import spadework.form.page.JobPage;
import spadework.office.Bid;
import spadework.office.JobPaper;
import spadework.office.Office;
import spadework.office.PaperKind;

/** The page beside the form, paper, PDF and the letter; the cost sheet stays at home. */
@WindowTest
class IssuingTest {

    @TempDir
    Path folder;

    private static void press(OnScreen screen, String name) {
        GuiActionRunner.execute(() -> screen.job().go(JobPage.PAPERS));
        screen.settle();
        new FormRobot(screen, Draft.empty()).press(screen.job(), name);
        screen.settle();
    }

    private static boolean inked(BufferedImage image) {
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        return dark > 300;
    }

    @Test
    void pageFollowsTheFormAndIsTurnedAndEnlarged() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            BufferedImage first =
                    screen.ask(() -> screen.job().preview().image()).orElseThrow();
            assertThat(inked(first)).isTrue();
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.press(screen.job(), "page on");
            screen.settle();
            assertThat(screen.ask(() -> screen.job().preview().pages())).isGreaterThan(3);
            hand.press(screen.job(), "page larger");
            screen.waitFor(() -> screen.ask(() -> screen.job().preview().image())
                            .orElseThrow()
                            .getWidth()
                    > first.getWidth());
            hand.press(screen.job(), "page fit");
            hand.press(screen.job(), "page back");
            screen.waitFor(() ->
                    same(first, screen.ask(() -> screen.job().preview().image()).orElseThrow()));
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().typed("/title", "An altogether other title")));
            screen.waitFor(() -> !same(
                    first, screen.ask(() -> screen.job().preview().image()).orElseThrow()));
            BufferedImage changed =
                    screen.ask(() -> screen.job().preview().image()).orElseThrow();
            assertThat(changed.getWidth()).isEqualTo(first.getWidth());
        }
    }

    private static boolean same(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return false;
        }
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (one.getRGB(x, y) != other.getRGB(x, y)) {
                    return false;
                }
            }
        }
        return true;
    }

    @Test
    void savedPaperIsOpenedShownMailedAndPrinted() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            Path target = folder.resolve("out").resolve("proposal.pdf");
            java.nio.file.Files.createDirectories(target.getParent());
            screen.asked().target = Optional.of(target);
            FormRobot hand = new FormRobot(screen, Draft.empty());
            for (String answer : new String[] {"file.open", "file.folder", "file.mail", "file.print"}) {
                press(screen, "proposal save");
                hand.press(screen.job(), answer);
                screen.settle();
            }
            Path draft = target.resolveSibling("proposal.eml");
            assertThat(screen.asked().opened).containsExactly(target, target.getParent(), draft);
            assertThat(draft).content().contains("proposal.pdf");
            assertThat(screen.asked().printed).isPresent();
            press(screen, "cost-sheet save");
            assertThat(screen.all(
                            javax.swing.JButton.class, one -> "file.mail".equals(one.getName()) && one.isShowing()))
                    .as("what work costs is mailed to nobody")
                    .isEmpty();
        }
    }

    @Test
    void paperIsPrintedAndSaved() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            press(screen, "proposal print");
            assertThat(inked(screen.asked().printed.orElseThrow())).isTrue();
            assertThat(screen.asked().pages).isGreaterThan(3);
            screen.asked().target = Optional.of(folder.resolve("mine.pdf"));
            press(screen, "warranty save");
            try (PDDocument saved = Loader.loadPDF(folder.resolve("mine.pdf").toFile())) {
                assertThat(saved.getNumberOfPages()).isPositive();
            }
            assertThat(screen.ask(() -> screen.job().notice().said())).endsWith("mine.pdf");
        }
    }

    @Test
    void printedPaperCanBeMailedAndSavedFromWhereItIsSaid() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            press(screen, "proposal print");
            hand.press(screen.job(), "file.mail");
            screen.settle();
            Path draft = screen.session().file().path().toAbsolutePath().resolveSibling("proposal.eml");
            assertThat(screen.asked().opened).containsExactly(draft);
            Path target = folder.resolve("printed.pdf");
            screen.asked().target = Optional.of(target);
            press(screen, "proposal print");
            hand.press(screen.job(), "papers.save");
            screen.settle();
            assertThat(target).isNotEmptyFile();
            press(screen, "cost-sheet print");
            assertThat(screen.all(AbstractButton.class, one -> "file.mail".equals(one.getName()) && one.isShowing()))
                    .as("what work costs is mailed to nobody")
                    .isEmpty();
        }
    }

    @Test
    void printerThatFailsIsTold() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            screen.asked().came = new Platform.Printed.Failed(new java.io.IOException("out of paper"));
            press(screen, "proposal print");
            assertThat(screen.ask(() -> screen.job().notice().said()))
                    .startsWith("Proposal was not printed:")
                    .contains("out of paper");
        }
    }

    @Test
    void letterIsADraftWithTheTickedPapersAndIsNotSent() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            screen.asked().target = Optional.of(folder.resolve("letter.eml"));
            press(screen, "letter");
        }
        try (InputStream in = Files.newInputStream(folder.resolve("letter.eml"))) {
            MimeMessage letter = new MimeMessage(Session.getInstance(new Properties()), in);
            assertThat(letter.getHeader("X-Unsent")).containsExactly("1");
            assertThat(letter.getHeader("Message-ID")).isNull();
            assertThat(letter.getRecipients(Message.RecipientType.TO)[0].toString())
                    .isEqualTo("wrenfield@example.com");
            assertThat(letter.getSubject())
                    .isEqualTo("Back and side basement walls, 418 Quillfeather Lane: papers of job 2026-014");
            MimeMultipart parts = (MimeMultipart) letter.getContent();
            assertThat(parts.getBodyPart(0).getContent().toString())
                    .contains(
                            "Dear Ida Wrenfield and Tobias Wrenfield,", "Proposal: what is wrong", "September 9, 2026");
            List<String> names = new ArrayList<>();
            for (int i = 1; i < parts.getCount(); i++) {
                names.add(parts.getBodyPart(i).getFileName());
                try (InputStream pdf = parts.getBodyPart(i).getInputStream();
                        PDDocument document = Loader.loadPDF(pdf.readAllBytes())) {
                    assertThat(document.getNumberOfPages()).isPositive();
                }
            }
            assertThat(names).containsExactly("2026-014-proposal.pdf", "2026-014-scope-of-work.pdf");
        }
    }

    @Test
    void costSheetCannotGoIntoALetter() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            assertThat(screen.all(AbstractButton.class, b -> "cost-sheet enclose".equals(b.getName())))
                    .isEmpty();
            Bid bid = screen.ask(() -> screen.session().bid()).orElseThrow();
            Office office = screen.session().office();
            Path target = folder.resolve("letter.eml");
            assertThatThrownBy(() -> office.letter(
                            bid,
                            List.of(JobPaper.of(PaperKind.PROPOSAL), JobPaper.of(PaperKind.COST_SHEET)),
                            folder,
                            target))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThat(target).doesNotExist();
        }
    }

    @Test
    void openStopKeepsPapersBackAndShowsThemToLookAtOnly() throws Exception {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("refused-type-a-and-no-fall", folder))) {
            GuiActionRunner.execute(() -> screen.job().go(JobPage.PAPERS));
            screen.settle();
            screen.picture("stops-open");
            assertThat(screen.ask(() -> screen.job().preview().image())).isPresent();
            assertThat(screen.ask(screen.all(JLabel.class, l -> "page state".equals(l.getName()))
                            .get(0)::getText))
                    .startsWith("To look at only:");
            for (String name : List.of("proposal print", "proposal save", "letter")) {
                AbstractButton button = screen.all(AbstractButton.class, b -> name.equals(b.getName()))
                        .get(0);
                assertThat(screen.ask(button::isEnabled)).as(name).isFalse();
            }
        }
    }
}
