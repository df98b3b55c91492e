// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.List;

/** Things in a row, as an American writes them: A; A and B; A, B, and C. */
public final class Series {
    private Series() {}

    /** The row in words; empty for no things. */
    public static String text(List<String> things) {
        int last = things.size() - 1;
        return switch (things.size()) {
            case 0 -> "";
            case 1 -> things.get(0);
            case 2 -> things.get(0) + " and " + things.get(1);
            default -> String.join(", ", things.subList(0, last)) + ", and " + things.get(last);
        };
    }
}
