// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;

/** Where papers of a job are printed to that are none of its set. */
public final class PaperFolder {
    private PaperFolder() {}

    /**
     * Writes papers into a folder of the job's own.
     *
     * @param out the folder into which the papers of all jobs go
     * @param number of the job
     * @param place the folder in the job's, as {@code kept}
     * @param files by name, all of them finished
     * @return the files, in the order of their names there
     * @throws IOException if one cannot be written, or the place leads out of the folder
     */
    public static List<Path> write(Path out, String number, String place, Map<String, byte[]> files)
            throws IOException {
        Path folder = out.resolve(FileName.safe(number));
        Disk.folders(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path target = InsideFolder.writable(folder, place + "/" + file.getKey());
            Disk.folders(target.getParent());
            AtomicFile.write(target, file.getValue());
            written.add(target);
        }
        return written;
    }
}
