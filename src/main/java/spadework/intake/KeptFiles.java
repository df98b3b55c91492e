// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

/**
 * Files that were kept, as a key: equal when all their bytes are. A check sum only says where to look, since most of a
 * thousand jobs kept the same large files.
 */
public final class KeptFiles {
    private final List<byte[]> files;
    private final int checkSum;

    KeptFiles(byte[]... files) {
        this.files = List.of(files);
        CRC32 sum = new CRC32();
        this.files.forEach(sum::update);
        this.checkSum = (int) sum.getValue();
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof KeptFiles kept) || kept.files.size() != files.size()) {
            return false;
        }
        boolean same = true;
        for (int i = 0; same && i < files.size(); i++) {
            same = Arrays.equals(files.get(i), kept.files.get(i));
        }
        return same;
    }

    @Override
    public int hashCode() {
        return checkSum;
    }
}
