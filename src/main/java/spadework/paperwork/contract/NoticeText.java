// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

/**
 * A notice that a law asks for, ready to print.
 *
 * @param place where it stands, as {@code first page} or {@code above the signature}
 * @param points least size of its type
 * @param form whether it is the form of cancellation, of which each buyer gets two copies
 * @param wording as prescribed; empty where it was not gathered
 */
public record NoticeText(
        String key,
        String place,
        int points,
        boolean bold,
        boolean capitals,
        boolean form,
        String wording,
        String citation) {}
