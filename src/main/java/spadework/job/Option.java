// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/**
 * Work that the homeowner may take or leave, priced apart.
 *
 * @param label the label that papers and the signature use, as {@code OP1}
 * @param title what it is, on one line
 * @param why what it is good for, in the homeowner's words
 */
public record Option(String label, String title, String why, Alteration alteration) {}
