// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import spadework.measure.Percent;
import spadework.money.Dollars;

/** A payment with its amount. */
public record Due(String when, Percent share, boolean atSigning, Dollars amount) {}
