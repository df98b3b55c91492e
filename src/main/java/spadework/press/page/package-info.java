// SPDX-License-Identifier: Apache-2.0
/**
 * Finished paperwork and a template become a PDF. It cannot see job, pricing or takeoff, so no template can work out a
 * price.
 */
package spadework.press.page;
