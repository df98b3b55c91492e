// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

/**
 * The film on a wall, as promised and as it came.
 *
 * @param mean mean wet film that the gallons make
 * @param dry dry film that this leaves, by the share of the promised films
 * @param working how the film was worked out
 * @param wetPromised wet film that leaves the promised dry film
 * @param dryPromised the promised dry film
 */
public record BuiltFilm(String mean, String dry, String working, String wetPromised, String dryPromised) {}
