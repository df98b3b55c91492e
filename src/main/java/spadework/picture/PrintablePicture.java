// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

/**
 * A picture as it is put on a page: upright, no larger than print needs, nothing in it but the picture.
 *
 * @param kind {@code jpeg} or {@code png}
 */
public record PrintablePicture(String kind, byte[] bytes) {}
