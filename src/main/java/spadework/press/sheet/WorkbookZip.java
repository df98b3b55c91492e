// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The same archive with one time on every entry, so that the same workbook is the same bytes whenever it is made. */
public final class WorkbookZip {
    /** Not 1 January 1980: for that one the library adds a second time, which depends on the zone of the machine. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

    private WorkbookZip() {}

    /** The archive with fixed times; what it holds stays as it is. */
    public static byte[] withFixedTimes(byte[] archive) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream(archive.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive));
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry fixed = new ZipEntry(entry.getName());
                fixed.setTimeLocal(FIXED);
                out.putNextEntry(fixed);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return file.toByteArray();
    }
}
