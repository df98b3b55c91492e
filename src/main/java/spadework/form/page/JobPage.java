// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.Locale;
import spadework.form.kit.Messages;

/** The pages of a job, in the order of the way through the form. */
public enum JobPage {
    PEOPLE("1"),
    WALLS("2"),
    WATER("3"),
    RESTORATION("4"),
    PRICE("5"),
    TERMS("6"),
    PAPERS("7"),
    OPTIONS("8"),
    AGREEMENT("9"),
    CHANGES("0"),
    BUILT("MINUS");

    private final String key;

    JobPage(String key) {
        this.key = key;
    }

    /** The word that stands for it in names of controls and keys of words. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is called on the way through the form. */
    public String title() {
        return Messages.of("page." + word());
    }

    /** The keys that lead to it. */
    public String keys() {
        return "alt " + key;
    }
}
