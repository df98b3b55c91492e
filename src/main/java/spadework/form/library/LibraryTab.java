// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.util.Locale;

/** The tabs of the library, in their order, each with the letter that opens it from the job's window. */
public enum LibraryTab {
    BOOK("B"),
    WORKBOOK("W"),
    BIDS("O"),
    FEEDBACK("F"),
    WHATIF("P");

    private final String letter;

    LibraryTab(String letter) {
        this.letter = letter;
    }

    /** The word that stands for it in keys of words. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The keys that open it from the job's window. */
    public String keys() {
        return "ctrl shift " + letter;
    }
}
