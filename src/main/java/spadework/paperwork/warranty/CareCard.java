// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.List;
import spadework.paperwork.part.PaperHead;

/**
 * Everything the homeowner's maintenance card prints, finished.
 *
 * @param number of the certificate whose duties it tells
 * @param spring the duties of spring
 * @param fall the duties of fall
 */
public record CareCard(PaperHead head, String number, List<String> spring, List<String> fall, List<CareRow> rows) {}
