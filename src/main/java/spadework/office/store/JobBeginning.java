// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.NumberOfYear;
import spadework.store.Store;
import spadework.store.StoredFolder;

/** Begins a job in an office with the next free number of its year; no number is left out, and none is there twice. */
public final class JobBeginning {
    private JobBeginning() {}

    /**
     * Begins a job.
     *
     * @param job text of a job file, whose number is replaced
     * @param year of the number
     * @return the name of its folder, which is its number
     * @throws IOException if the text is no JSON
     */
    public static String begin(Store store, String job, int year) throws IOException {
        Draft draft = Draft.read(job).orElseThrow(() -> new OfficeRefusal("visit.unreadable"));
        return store.alone(StoredFolder.FIRM, () -> {
            String number = NumberOfYear.text(year, store.lastNumber(year) + 1);
            String numbered = draft.with("/number", new DraftValue.Text(number)).text();
            store.write(new FolderChange(
                    StoredFolder.empty(number),
                    Map.of(FileKind.JOB_FILE, numbered.getBytes(StandardCharsets.UTF_8)),
                    Set.of()));
            return number;
        });
    }
}
