// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

/**
 * The right to cancel as the contract and its forms print it.
 *
 * @param ordinal the governing number of business days as {@code third}
 * @param days the same as {@code THREE}
 * @param lastDay the latest last day of all rules, in words; empty while the day of signing is open
 * @param fromReceipt whether the state's days start only when the buyer receives the signed copy
 * @param apart whether the form is no part of the contract
 */
public record CancelTerms(String ordinal, String days, String lastDay, boolean fromReceipt, boolean apart) {}
