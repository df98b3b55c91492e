// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

/** The price book that a job was priced from. {@code date} is in words. */
public record CostBook(String title, String date) {}
