// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

/**
 * A measure as agreed beside the same as built.
 *
 * @param where the wall, the pipe, or the ground; the same in the rows that follow each other about it
 * @param built empty where it was not recorded
 * @param why why it is not as agreed; empty where it is, and where nobody recorded it
 */
public record ComparedRow(String where, String what, String agreed, String built, String why) {}
