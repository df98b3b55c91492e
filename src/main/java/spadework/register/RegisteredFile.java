// SPDX-License-Identifier: Apache-2.0
package spadework.register;

/**
 * A document that a line of the register names.
 *
 * @param name relative to the job folder, with {@code /}, as {@code for-the-homeowner/2026-014-W1-warranty.pdf}
 * @param sha256 of its bytes, 64 lower-case hex digits
 */
public record RegisteredFile(String name, String sha256) {

    /** Whether those bytes are the document that was registered. */
    public boolean holds(byte[] bytes) {
        return Sha256.of(bytes).equals(sha256);
    }
}
