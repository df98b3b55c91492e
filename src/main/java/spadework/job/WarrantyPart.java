// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/**
 * One thing that is warranted.
 *
 * @param part what it is, as "Footing drain"
 * @param promise what it will do
 * @param years whole years, 1 to 99
 */
public record WarrantyPart(String part, String promise, int years) {}
