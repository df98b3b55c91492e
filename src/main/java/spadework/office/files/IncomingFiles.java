// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import spadework.disk.AtomicFile;
import spadework.disk.InsideFolder;
import spadework.picture.PictureReader;

/** Photos and signed papers that somebody brings to a job: copied into its folder, under a name that is free there. */
public final class IncomingFiles {
    private IncomingFiles() {}

    /**
     * Copies pictures beside the job; one that lies there already stays as it is.
     *
     * @return their names in the job's folder, in the order given
     * @throws IOException if one cannot be read, is no picture that can be printed, or cannot be copied; those before
     *     it are there
     */
    public static List<String> pictures(Path job, List<Path> files) throws IOException {
        for (Path file : files) {
            PictureReader.read(Files.readAllBytes(file));
        }
        List<String> names = new ArrayList<>();
        for (Path file : files) {
            names.add(taken(job, file));
        }
        return names;
    }

    /**
     * Copies a file of any kind beside the job.
     *
     * @return its name in the job's folder
     */
    public static String taken(Path job, Path file) throws IOException {
        Path folder = job.toAbsolutePath().getParent();
        if (file.toAbsolutePath().normalize().startsWith(folder.normalize())) {
            return folder.normalize()
                    .relativize(file.toAbsolutePath().normalize())
                    .toString()
                    .replace('\\', '/');
        }
        return kept(job, file.getFileName().toString(), Files.readAllBytes(file));
    }

    /**
     * Keeps bytes beside the job. Where a file of that name has the same bytes it is that one; where it has others, a
     * number goes behind the name.
     *
     * @return its name in the job's folder
     */
    public static String kept(Path job, String wanted, byte[] bytes) throws IOException {
        Path folder = job.toAbsolutePath().getParent();
        int point = wanted.lastIndexOf('.');
        String ending = point < 0
                ? ""
                : wanted.substring(point).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]", "");
        String base = FileName.safe(point < 0 ? wanted : wanted.substring(0, point));
        for (int number = 1; ; number++) {
            String name = (number == 1 ? base : base + "-" + number) + ending;
            Path target = InsideFolder.writable(folder, name);
            if (!Files.exists(target)) {
                AtomicFile.write(target, bytes);
                return name;
            }
            if (Arrays.equals(Files.readAllBytes(target), bytes)) {
                return name;
            }
        }
    }

    /**
     * A picture of the job as a small one that fits into a square; nothing where it is none.
     *
     * @param side of the square, in pixels
     */
    public static Optional<BufferedImage> preview(Path job, String name, int side) {
        try {
            byte[] bytes = Files.readAllBytes(
                    InsideFolder.existing(job.toAbsolutePath().getParent(), name));
            BufferedImage whole = ImageIO.read(
                    new ByteArrayInputStream(PictureReader.read(bytes).bytes()));
            return Optional.ofNullable(whole).map(picture -> fitted(picture, side));
        } catch (IOException none) {
            return Optional.empty();
        }
    }

    private static BufferedImage fitted(BufferedImage picture, int side) {
        double scale = Math.min(1, (double) side / Math.max(picture.getWidth(), picture.getHeight()));
        int wide = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int high = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        BufferedImage small = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = small.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(picture, 0, 0, wide, high, null);
        pen.dispose();
        return small;
    }
}
