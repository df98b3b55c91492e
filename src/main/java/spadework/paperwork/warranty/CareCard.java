// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.List;
import spadework.paperwork.part.PaperHead;

/**
 * Everything the homeowner's maintenance card prints, finished.
 *
 * @param number of the certificate whose duties it tells
 * @param duties in the words of the certificate
 * @param rows every season until the last day of the warranty
 */
public record CareCard(PaperHead head, String number, List<CareDuty> duties, List<CareRow> rows) {}
