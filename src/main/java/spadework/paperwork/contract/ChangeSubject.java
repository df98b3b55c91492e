// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.paperwork.Picture;

/**
 * Which change it is, and why.
 *
 * @param contractDate the day on which the contract was accepted, in words; empty before
 * @param reason of the list of reasons, in words
 */
public record ChangeSubject(
        String contractDate,
        int number,
        String title,
        String reason,
        String why,
        String evidence,
        List<Picture> pictures) {

    public ChangeSubject {
        pictures = List.copyOf(pictures);
    }
}
