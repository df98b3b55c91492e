// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import spadework.draft.Draft;
import spadework.intake.Intake;
import spadework.intake.job.JobFormat;
import spadework.register.AtomicFile;

/**
 * A job's file while it is edited. It remembers what the file said when it was last read or saved, so that a change
 * from elsewhere is never written over unasked, and keeps what is not saved yet in a side file.
 */
public final class JobFile {
    private final Path file;
    private volatile Optional<byte[]> known;

    /** What came of saving. */
    public enum Saved {
        DONE,
        /** The file is no longer what it was; nothing was written. */
        CHANGED_ON_DISK
    }

    private JobFile(Path file, Optional<byte[]> known) {
        this.file = file;
        this.known = known;
    }

    /**
     * The file at a path, as it is now; it need not be there yet.
     *
     * @throws IOException if it is there and cannot be read
     */
    public static JobFile at(Path file) throws IOException {
        return new JobFile(file, content(file));
    }

    /** What a new job's file says before anything is typed: the format in which it is written. */
    public static Draft blank() {
        return Draft.empty().typed("/format", Integer.toString(JobFormat.CURRENT));
    }

    /** The job's file, where its folder may have been named. */
    public static Path of(Path job) {
        return Intake.fileOf(job);
    }

    /** Where the file of a job with that number belongs among the jobs of a folder. */
    public static Path place(Path jobs, String number) {
        return jobs.resolve(FileName.safe(number)).resolve("job.json");
    }

    public Path path() {
        return file;
    }

    /** What the file said when it was last read or saved; nothing if it was not there. */
    public Optional<String> text() {
        return known.map(bytes -> new String(bytes, StandardCharsets.UTF_8)).map(JobFile::unmarked);
    }

    /**
     * Whether the file is no longer what it was.
     *
     * @throws IOException if it is there and cannot be read
     */
    public boolean isChangedOnDisk() throws IOException {
        Optional<byte[]> now = content(file);
        return now.isPresent() != known.isPresent() || (now.isPresent() && !Arrays.equals(now.get(), known.get()));
    }

    /**
     * Saves in one step, unless the file was changed from elsewhere, and takes the side file away.
     *
     * @throws IOException if it cannot be written; the old file and the side file are then untouched
     */
    public Saved save(String text) throws IOException {
        if (isChangedOnDisk()) {
            return Saved.CHANGED_ON_DISK;
        }
        saveOver(text);
        return Saved.DONE;
    }

    /**
     * Saves whatever the file says now: for somebody who was told and wants it so.
     *
     * @throws IOException if it cannot be written
     */
    public void saveOver(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Files.createDirectories(file.toAbsolutePath().getParent());
        AtomicFile.write(file.toAbsolutePath(), bytes);
        known = Optional.of(bytes);
        dropAside();
    }

    /** Where what is not saved is kept. */
    public Path aside() {
        return file.resolveSibling("." + file.getFileName() + ".unsaved");
    }

    /**
     * Keeps what is not saved yet.
     *
     * @throws IOException if it cannot be written
     */
    public void keepAside(String text) throws IOException {
        Files.createDirectories(aside().toAbsolutePath().getParent());
        AtomicFile.write(aside().toAbsolutePath(), text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What was kept and never saved, if it says anything but the file.
     *
     * @throws IOException if it is there and cannot be read
     */
    public Optional<String> unsaved() throws IOException {
        return content(aside())
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .filter(text -> !text.equals(text().orElse("")));
    }

    /**
     * Takes the side file away.
     *
     * @throws IOException if it is there and cannot be deleted
     */
    public void dropAside() throws IOException {
        Files.deleteIfExists(aside());
    }

    private static Optional<byte[]> content(Path file) throws IOException {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (NoSuchFileException notThere) {
            return Optional.empty();
        }
    }

    private static String unmarked(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
