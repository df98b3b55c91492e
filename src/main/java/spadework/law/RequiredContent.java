// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/**
 * A content that a state's law asks for.
 *
 * @param asks what the law asks, in own words
 * @param status how far it was read: {@code R} read, {@code RX} excerpt, {@code RS} secondary source, {@code M} memory
 */
public record RequiredContent(Content content, String asks, String status) {}
