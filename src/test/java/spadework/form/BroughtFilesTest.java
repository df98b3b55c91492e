// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.kit.DropArea;
import spadework.form.kit.SignaturePad;
import spadework.form.page.JobPage;

/** Photos and signed papers come to the job by a choice or by dropping, and a signature is drawn. */
@WindowTest
class BroughtFilesTest {
    @TempDir
    Path folder;

    private Path photo(String name, int color) throws IOException {
        BufferedImage image = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 200; y++) {
                image.setRGB(x, y, color + x / 3);
            }
        }
        Path outside = Files.createDirectories(folder.resolve("phone"));
        Path file = outside.resolve(name);
        ImageIO.write(image, "jpg", file.toFile());
        return file;
    }

    private record Dropped(List<java.io.File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }

    private static boolean drop(OnScreen screen, DropArea area, Path... files) {
        boolean taken = screen.ask(() -> area.getTransferHandler()
                .importData(new TransferHandler.TransferSupport(
                        area,
                        new Dropped(List.of(files).stream().map(Path::toFile).toList()))));
        screen.settle();
        return taken;
    }

    @Test
    void photosAreChosenOrDroppedCopiedAndShown() throws IOException {
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        Path one = photo("IMG 0042.JPG", 0x804020);
        Path other = photo("cellar.jpg", 0x204080);
        try (OnScreen screen = OnScreen.job(job)) {
            GuiActionRunner.execute(() -> screen.job().go(JobPage.PEOPLE));
            screen.settle();
            int before = screen.session().draft().rows("/photos");
            screen.asked().target = Optional.of(one);
            new FormRobot(screen, Draft.empty()).press(screen.job(), "photos choose");
            screen.settle();
            assertThat(screen.session().draft().shown("/photos/" + before + "/file"))
                    .isEqualTo("IMG-0042.jpg");
            assertThat(job.resolveSibling("IMG-0042.jpg")).hasSameBinaryContentAs(one);
            DropArea area = screen.all(DropArea.class, DropArea::isShowing).get(0);
            assertThat(drop(screen, area, other)).isTrue();
            assertThat(screen.session().draft().shown("/photos/" + (before + 1) + "/file"))
                    .isEqualTo("cellar.jpg");
            JLabel shown = screen.all(JLabel.class, label -> "photo cellar.jpg".equals(label.getName()))
                    .get(0);
            assertThat(screen.ask(() -> shown.getIcon().getIconWidth())).isEqualTo(120);
            screen.ask(() -> {
                shown.scrollRectToVisible(new java.awt.Rectangle(0, 0, 10, 160));
                return null;
            });
            screen.picture("photos");
            Path text = Files.writeString(folder.resolve("note.jpg"), "no picture");
            drop(screen, area, text);
            assertThat(screen.job().notice().said()).contains("picture");
            assertThat(screen.session().draft().rows("/photos")).isEqualTo(before + 2);
        }
    }

    @Test
    void signatureIsDrawnAndKeptWithItsTime() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            GuiActionRunner.execute(() -> screen.job().go(JobPage.AGREEMENT));
            screen.settle();
            hand.press(screen.job(), "step issue");
            screen.settle();
            SignaturePad pad = screen.all(SignaturePad.class, one -> "accept pad".equals(one.getName()))
                    .get(0);
            GuiActionRunner.execute(
                    () -> pad.scrollRectToVisible(new java.awt.Rectangle(0, 0, pad.getWidth(), pad.getHeight())));
            screen.settle();
            assertThat(screen.ask(pad::isEnabled)).isTrue();
            screen.robot().moveMouse(pad, new Point(40, 60));
            screen.robot().pressMouse(pad, new Point(40, 60), MouseButton.LEFT_BUTTON);
            for (int x = 44; x < 200; x += 4) {
                screen.robot().moveMouse(pad, new Point(x, 60 + (x % 16) * 2));
            }
            screen.robot().releaseMouseButtons();
            screen.settle();
            assertThat(screen.ask(pad::isBlank)).isFalse();
            screen.picture("signature");
            hand.press(screen.job(), "accept keep");
            screen.settle();
            String name = screen.ask(() -> screen.all(JTextField.class, one -> "accept file".equals(one.getName()))
                    .get(0)
                    .getText());
            assertThat(name).matches("signature-\\d{4}-\\d\\d-\\d\\d-\\d{6}\\.png");
            BufferedImage kept = ImageIO.read(
                    screen.session().file().path().resolveSibling(name).toFile());
            assertThat(inked(kept)).isGreaterThan(150);
        }
    }

    private static int inked(BufferedImage image) {
        int dark = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                dark += (image.getRGB(x, y) & 0xff) < 0x90 ? 1 : 0;
            }
        }
        return dark;
    }
}
