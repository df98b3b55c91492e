// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.regex.Pattern;

/** Names of folders and files of an office: below it, and the same on every system. */
public final class FolderName {
    /** Letters that a file system keeps for itself, those that cannot be seen, and those that turn writing around. */
    private static final Pattern UNUSABLE =
            Pattern.compile("[\\\\:*?\"<>|\\p{Cntrl}\\u2028\\u2029\\u200e\\u200f\\u202a-\\u202e\\u2066-\\u2069]");

    private FolderName() {}

    /** Whether it names something below a folder, and nothing hidden. */
    public static boolean isPath(String path) {
        if (path.isEmpty() || UNUSABLE.matcher(path).find()) {
            return false;
        }
        for (String name : path.split("/", -1)) {
            if (name.isBlank() || name.startsWith(".") || !name.equals(name.strip())) {
                return false;
            }
        }
        return true;
    }

    /**
     * The name of a folder.
     *
     * @throws IllegalArgumentException if it is neither the firm's nor one below the office
     */
    public static String checked(String name) {
        if (!name.equals(StoredFolder.FIRM) && !isPath(name)) {
            throw new IllegalArgumentException(StoreText.of("name", name));
        }
        return name;
    }
}
