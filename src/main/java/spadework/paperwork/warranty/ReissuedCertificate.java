// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.warranty;

import java.util.List;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.part.WarrantyPromise;
import spadework.warranty.CoveredRun;

/**
 * Everything the certificate of a later owner prints, finished.
 *
 * @param number of this certificate
 * @param first number of the first certificate
 * @param before number of the certificate that it takes the place of
 * @param claims that earlier owners made, whatever came of them
 * @param state name of the state in which the house stands; empty where it is not known
 */
public record ReissuedCertificate(
        PaperHead head,
        String number,
        String first,
        String before,
        List<CoveredRun> walls,
        List<CoveredRun> runs,
        WarrantyPromise promise,
        List<EarlierClaim> claims,
        String state) {}
