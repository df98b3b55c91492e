// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

/**
 * When the work was done.
 *
 * @param completed the day from which the warranty runs, in words; empty until the job is closed
 * @param certificate number of the warranty certificate; empty until it is issued
 */
public record CompletionDates(String started, String finished, String completed, String certificate) {}
