// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** A photo of the visit; the file lies beside the job. */
public record Photo(String file, String caption) {}
