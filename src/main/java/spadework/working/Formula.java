// SPDX-License-Identifier: Apache-2.0
package spadework.working;

/**
 * How a number is worked out.
 *
 * @param text in symbols, as {@link Worked#formula()}
 * @param source published source, or {@code common practice, no source}
 */
public record Formula(String text, String source) {}
