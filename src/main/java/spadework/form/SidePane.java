// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.util.Locale;

/** What stands beside the page, in the order of the tabs; control and the number of the tab brings it to the front. */
enum SidePane {
    PAGE,
    DRAWING,
    WORKING,
    FOUND,
    BOOK,
    WHATIF;

    /** The word that stands for it in keys of words. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    String keys() {
        return "ctrl " + (ordinal() + 1);
    }
}
