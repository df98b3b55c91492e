// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.math.BigDecimal;
import spadework.working.Worked;

/**
 * What is ordered of one line item's material for the whole job. The one place where a quantity is rounded up to
 * what is sold.
 *
 * @param net needed, in the material's unit
 * @param needed packages that net and waste come to, before they are rounded up
 * @param packages whole packages to order
 * @param working packages from net, waste and package size
 */
public record Purchase(
        String code, BigDecimal net, BigDecimal needed, BigDecimal packages, String sold, Worked working) {}
