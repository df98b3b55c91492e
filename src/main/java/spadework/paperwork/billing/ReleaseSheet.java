// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.law.release.ReleaseWording;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that a release prints, finished.
 *
 * @param contract number of the contract
 * @param invoice number of the bill up to which claims are released
 * @param through the day up to which work is covered, in words
 * @param amount what it rests on
 * @param changes the accepted change orders by number and title
 * @param wording the prescribed words; each part blank where the state prescribes none
 * @param citation where they stand; blank where there are none
 */
public record ReleaseSheet(
        PaperHead head,
        String number,
        Kind kind,
        String contract,
        String invoice,
        String through,
        Dollars amount,
        List<String> changes,
        ReleaseWording wording,
        String citation) {

    public ReleaseSheet {
        changes = List.copyOf(changes);
    }

    /** Whether it waits for the money, and whether it is the last one. */
    public record Kind(boolean conditional, boolean last) {}

    public boolean isPrescribed() {
        return !citation.isEmpty();
    }
}
