// SPDX-License-Identifier: Apache-2.0
/**
 * The same job otherwise: at another margin, in another soil, dug another way, and the range that uncertainty makes of
 * its price. For the contractor only. Nothing of it goes into a job or a paper.
 */
package spadework.whatif;
