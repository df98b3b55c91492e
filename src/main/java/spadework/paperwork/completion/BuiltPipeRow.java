// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

/**
 * A pipe as built beside the pipe as agreed. What was not recorded is empty.
 *
 * @param kind {@code drain}, {@code main} or {@code roof line}
 */
public record BuiltPipeRow(
        String label, String kind, String lengthAgreed, String lengthBuilt, String levelsAgreed, String levelsBuilt) {}
