// SPDX-License-Identifier: Apache-2.0
package spadework.store;

/**
 * A file that an office keeps.
 *
 * @param path below its folder, with {@code /} between names
 * @param sha256 of its bytes, 64 lower-case hex digits (FIPS 180-4)
 * @param length in bytes
 */
public record StoredFile(String path, String sha256, long length) {}
