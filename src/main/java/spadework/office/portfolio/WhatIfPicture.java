// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import spadework.drawing.shape.Scene;

/**
 * A job otherwise, to be looked at by the contractor.
 *
 * @param price it comes to
 * @param more than the job as it is, with its sign
 * @param left of the price after overhead, in percent; empty for no price
 * @param range of the price as a curve
 * @param days of the crews as bars
 */
public record WhatIfPicture(String price, String more, String left, Scene range, Scene days) {}
