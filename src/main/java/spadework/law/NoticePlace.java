// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Locale;

/** Where a notice has to stand. */
public enum NoticePlace {
    FIRST_PAGE,
    ABOVE_THE_SIGNATURE,
    BODY,
    PAGE_OF_ITS_OWN;

    /** As the rules name it, {@code above the signature}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
