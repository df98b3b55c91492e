// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import spadework.measure.Percent;

/**
 * A payment.
 *
 * @param when the event that makes it due, one that can be seen
 * @param share of the price
 * @param atSigning true for a deposit, which state law may cap
 */
public record Payment(String when, Percent share, boolean atSigning) {}
