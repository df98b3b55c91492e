// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import spadework.disk.Disk;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;

/** Reports of what broke in the window, one file each, for whoever is asked to help. */
public final class CrashReports {
    private static final int MOST = 50;

    private CrashReports() {}

    /**
     * Writes a report under a name that is free.
     *
     * @return its file; where there are fifty already, the last of them, left as it is
     * @throws IOException if it cannot be written
     */
    public static Path write(Path folder, String report) throws IOException {
        Disk.folders(folder);
        Path file = folder.resolve("report-1.txt");
        for (int i = 1; i <= MOST; i++) {
            file = folder.resolve("report-" + i + ".txt");
            if (!Files.exists(file)) {
                SharedFile.replace(file.toAbsolutePath(), Snapshot.NONE, report.getBytes(StandardCharsets.UTF_8));
                return file;
            }
        }
        return file;
    }
}
