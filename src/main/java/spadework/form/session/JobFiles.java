// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import spadework.form.kit.Messages;
import spadework.form.kit.Platform;
import spadework.office.files.IncomingFiles;

/** Brings photos, signed papers and drawn signatures into the folder of the job on screen. */
public final class JobFiles {
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("MMMM d, yyyy, h:mm:ss a", Locale.US);
    private static final DateTimeFormatter NAMED = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.US);

    private final JobSession session;
    private final JobSaving saving;
    private final StepRunner steps;
    private final Platform platform;

    public JobFiles(JobSession session, JobSaving saving, StepRunner steps, Platform platform) {
        this.session = session;
        this.saving = saving;
        this.steps = steps;
        this.platform = platform;
    }

    private Path near() {
        return session.file().path().toAbsolutePath().getParent();
    }

    /** Asks for pictures, and copies them beside the job. */
    public void choosePictures(Component over, Consumer<List<String>> then) {
        List<Path> chosen = platform.openPictures(over, near());
        if (!chosen.isEmpty()) {
            pictures(chosen, then);
        }
    }

    /**
     * Copies pictures beside the job.
     *
     * @param then given their names, on the window's thread
     */
    public void pictures(List<Path> files, Consumer<List<String>> then) {
        saving.whenPlaced(job -> steps.bring(() -> IncomingFiles.pictures(job, files), then));
    }

    /** Asks for the scan or photo of a signed paper, and copies it beside the job. */
    public void choosePaper(Component over, Consumer<String> then) {
        platform.openPaper(over, near()).ifPresent(file -> paper(file, then));
    }

    /** Copies the scan or photo of a signed paper beside the job. */
    public void paper(Path file, Consumer<String> then) {
        saving.whenPlaced(job -> steps.bring(() -> IncomingFiles.taken(job, file), then));
    }

    /** What stands under a drawn signature: when it was drawn. */
    public static String drawn(LocalDateTime at) {
        return Messages.of("sign.drawn", at.format(SHOWN));
    }

    /** Keeps a drawn signature as a picture beside the job; its name says when it was drawn. */
    public void signature(BufferedImage picture, LocalDateTime at, Consumer<String> then) {
        saving.whenPlaced(job -> steps.bring(
                () -> IncomingFiles.kept(job, "signature-" + at.format(NAMED) + ".png", png(picture)), then));
    }

    private static byte[] png(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }

    /** Small pictures of those files that are pictures, by name. */
    public void previews(List<String> names, int side, Consumer<Map<String, BufferedImage>> then) {
        Path job = session.file().path();
        steps.work(
                () -> {
                    Map<String, BufferedImage> found = new LinkedHashMap<>();
                    for (String name : names) {
                        IncomingFiles.preview(job, name, side).ifPresent(picture -> found.put(name, picture));
                    }
                    return found;
                },
                then);
    }
}
