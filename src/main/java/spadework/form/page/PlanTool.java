// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is put on the plan. */
enum PlanTool {
    WALL('w'),
    DRAIN('d'),
    DOWNSPOUT('s'),
    TREE('t'),
    LOT_LINE('l'),
    OUTLET('o');

    private final char key;

    PlanTool(char key) {
        this.key = key;
    }

    /** The tool of a key. */
    static Optional<PlanTool> of(char key) {
        char small = Character.toLowerCase(key);
        return Arrays.stream(values()).filter(tool -> tool.key == small).findFirst();
    }

    char key() {
        return Character.toUpperCase(key);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
