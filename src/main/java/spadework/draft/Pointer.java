// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.ArrayList;
import java.util.List;

/** JSON pointers (RFC 6901), taken apart and put together. */
public final class Pointer {
    private Pointer() {}

    /** The place of a key or row inside another. */
    public static String of(String above, Object key) {
        return above + "/" + key.toString().replace("~", "~0").replace("/", "~1");
    }

    /** The keys on the way to a place; none for the whole document. */
    public static List<String> keys(String pointer) {
        List<String> keys = new ArrayList<>();
        for (String key : pointer.split("/", -1)) {
            keys.add(key.replace("~1", "/").replace("~0", "~"));
        }
        keys.remove(0);
        return keys;
    }

    /** What holds a place; the whole document holds itself. */
    public static String above(String pointer) {
        return pointer.isEmpty() ? "" : pointer.substring(0, pointer.lastIndexOf('/'));
    }

    /** Whether a place is another one or lies inside it. */
    public static boolean isIn(String pointer, String outer) {
        return pointer.equals(outer) || pointer.startsWith(outer + "/");
    }
}
