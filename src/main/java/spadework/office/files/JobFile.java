// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import spadework.disk.AtomicFile;
import spadework.disk.ChangedElsewhere;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.ChangedValues;
import spadework.draft.Draft;
import spadework.intake.Intake;
import spadework.intake.job.JobFormat;

/**
 * A job's file while it is edited. It remembers what the file said when it was last read or saved, so that a change
 * from elsewhere is never written over unasked, and keeps what is not saved yet in a side file.
 */
public final class JobFile {
    private final Path file;
    private volatile Snapshot known;
    /** What was found there by whoever was told that the file was changed. */
    private volatile Snapshot found;

    /** What came of saving. */
    public enum Saved {
        DONE,
        /** The file is no longer what it was; nothing was written. */
        CHANGED_ON_DISK
    }

    private JobFile(Path file, Snapshot known) {
        this.file = file;
        this.known = known;
        this.found = known;
    }

    /**
     * The file at a path, as it is now; it need not be there yet.
     *
     * @throws IOException if it is there and cannot be read
     */
    public static JobFile at(Path file) throws IOException {
        if (Files.isSymbolicLink(file)) {
            InsideFolder.itself(file);
        }
        return new JobFile(file, Snapshot.of(file));
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
        return known.text();
    }

    /**
     * Whether the file is no longer what it was.
     *
     * @throws IOException if it is there and cannot be read
     */
    public boolean isChangedOnDisk() throws IOException {
        found = Snapshot.of(file);
        return !found.isSame(known);
    }

    /** What somebody else changed, in words, as it was found last; empty where nothing was. */
    public String changedElsewhere() {
        return found.isSame(known)
                ? ""
                : found.isThere()
                        ? ChangedValues.described(
                                known.text().orElse(""), found.text().orElse(""))
                        : "it was taken away";
    }

    /**
     * Saves in one step, unless the file was changed from elsewhere, and takes the side file away.
     *
     * @throws IOException if it cannot be written; the old file and the side file are then untouched
     */
    public Saved save(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Disk.folders(file.toAbsolutePath().getParent());
        try {
            SharedFile.replace(file, known, bytes);
        } catch (ChangedElsewhere changed) {
            found = changed.now();
            return Saved.CHANGED_ON_DISK;
        }
        known = Snapshot.of(bytes);
        found = known;
        dropAside();
        return Saved.DONE;
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
        Disk.folders(aside().toAbsolutePath().getParent());
        AtomicFile.write(aside().toAbsolutePath(), text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What was kept and never saved, if it says anything but the file.
     *
     * @throws IOException if it is there and cannot be read
     */
    public Optional<String> unsaved() throws IOException {
        return Snapshot.of(aside()).text().filter(text -> !text.equals(text().orElse("")));
    }

    /**
     * Takes the side file away.
     *
     * @throws IOException if it is there and cannot be deleted
     */
    public void dropAside() throws IOException {
        Disk.delete(aside());
    }
}
