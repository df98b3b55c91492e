// SPDX-License-Identifier: Apache-2.0
package spadework.law.release;

/**
 * The words of a prescribed release, each part where the form has it. What is filled in stands between them.
 *
 * @param title above everything
 * @param notice the warning below the title, in capitals
 * @param release what is waived and released
 * @param effect when it takes effect, before maker, amount and payee of the check; blank for an unconditional one
 * @param exceptions what it does not reach, before the amount of disputed claims
 */
public record ReleaseWording(String title, String notice, String release, String effect, String exceptions) {}
