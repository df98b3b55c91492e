// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.office.files.FileName;
import spadework.register.DocumentNumber;
import spadework.register.Entry;

/** Papers as the register keeps them: with their number before their name. */
public final class RegisteredFiles {
    private RegisteredFiles() {}

    /** The same files, each named after the number. */
    public static Map<String, byte[]> named(DocumentNumber number, Map<String, byte[]> files) {
        Map<String, byte[]> named = new LinkedHashMap<>();
        files.forEach((name, bytes) -> named.put(FileName.safe(number.text()) + "-" + name, bytes));
        return named;
    }

    /** Where the files of an entry lie. */
    public static List<Path> paths(Path folder, Entry entry) {
        return entry.files().stream().map(file -> folder.resolve(file.name())).toList();
    }
}
