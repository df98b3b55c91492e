// SPDX-License-Identifier: Apache-2.0
package spadework.cli.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import spadework.cli.option.OfficeOption;
import spadework.disk.OwnFolder;
import spadework.office.files.JobsHome;
import spadework.office.store.OfficeCopies;
import spadework.office.store.OfficeFile;
import spadework.store.Store;

/** Opens the home of the jobs that a window shows, and keeps it open as long as the window. */
public final class OfficeWindow {
    private OfficeWindow() {}

    /** A window that shows jobs until it is closed. */
    @FunctionalInterface
    public interface Window {
        /** @param job the job that was named, as it is found at that home; null for none */
        void show(JobsHome home, Path job) throws InterruptedException;
    }

    /**
     * Opens a window.
     *
     * @param job as it was named; null for none
     * @throws IOException if the office cannot be opened; no window is shown
     */
    public static void show(CommandSpec command, Path job, Window window) throws IOException, InterruptedException {
        Optional<Path> named = OfficeOption.of(command);
        Path office = named.orElse(Path.of(OfficeFile.NAME));
        boolean here = job == null || !Files.exists(job);
        if (named.isEmpty() && !(here && Files.isRegularFile(office))) {
            window.show(JobsHome.FOLDERS, job);
            return;
        }
        OfficeFile file = OfficeFile.read(office, System.getenv("PGPASSWORD"));
        Optional<Path> folders = file.folder();
        if (folders.isPresent()) {
            window.show(
                    JobsHome.in(folders.get()),
                    job == null ? null : folders.get().resolve(job));
            return;
        }
        try (Store store = file.open();
                OwnFolder own = OfficeRun.ownCopies(store);
                OfficeCopies copies = new OfficeCopies(store, own.path(), who(file))) {
            Path shown = job == null ? null : own.path().resolve(job);
            if (shown != null) {
                copies.refresh(shown);
            }
            window.show(copies, shown);
        }
    }

    /** Who sits at this machine, and by which account. */
    private static String who(OfficeFile file) {
        String here = System.getProperty("user.name");
        return here.equals(file.account()) ? here : here + " (" + file.account() + ")";
    }
}
