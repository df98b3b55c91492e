// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

/**
 * The right to cancel as the contract and its forms print it.
 *
 * @param ordinal the governing number of business days as {@code third}
 * @param days the same as {@code THREE}
 * @param lastDay the latest last day of all rules, in the words of the prescribed forms; empty while the day of signing
 *     is open
 * @param signedOn the day of signing in the words of the prescribed forms; empty while it is open
 * @param lastDayTold the last day in the language of the contract
 * @param fromReceipt whether the state's days start only when the buyer receives the signed copy
 * @param apart whether the form is no part of the contract
 */
public record CancelTerms(
        String ordinal,
        String days,
        String lastDay,
        String signedOn,
        String lastDayTold,
        boolean fromReceipt,
        boolean apart) {}
