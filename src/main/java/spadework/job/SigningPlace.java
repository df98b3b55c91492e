// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Locale;

/** Where a contract is signed; the federal rule asks for another sum at the home than elsewhere. */
public enum SigningPlace {
    HOME,
    HOME_SHOW,
    WORKPLACE,
    OTHER_PLACE,
    OUR_OFFICE;

    /** As a person says it. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
