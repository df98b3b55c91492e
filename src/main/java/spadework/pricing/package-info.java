// SPDX-License-Identifier: Apache-2.0
/**
 * From a takeoff to a quote: direct cost, selling price, sections, minimum, tax, payments, unit prices for the
 * unknown. Exact decimals throughout; it knows no paper and no finding.
 */
package spadework.pricing;
