// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

/**
 * A warranted part with its term.
 *
 * @param firstDay in words; empty on a specimen
 * @param lastDay in words; empty on a specimen
 */
public record WarrantyRow(String part, String promise, int years, String firstDay, String lastDay) {}
