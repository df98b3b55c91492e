// SPDX-License-Identifier: Apache-2.0
package spadework.post;

/**
 * A file that goes with a letter.
 *
 * @param name its file name, letters, digits, hyphen and point
 * @param type its media type, as {@code application/pdf}
 */
public record Enclosure(String name, String type, byte[] content) {}
