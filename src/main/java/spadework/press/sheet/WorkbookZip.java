// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** The same archive with one time on every entry, so that the same workbook is the same bytes whenever it is made. */
public final class WorkbookZip {
    /** Not 1 January 1980: for that one the library adds a second time, which depends on the zone of the machine. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

    private WorkbookZip() {}

    /** An archive of these parts, by their paths, in their order. */
    static byte[] of(Map<String, byte[]> parts) {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(file)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                ZipEntry fixed = new ZipEntry(part.getKey());
                fixed.setTimeLocal(FIXED);
                out.putNextEntry(fixed);
                out.write(part.getValue());
                out.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file.toByteArray();
    }

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
