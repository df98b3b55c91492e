// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

/**
 * A photo of the visit, ready for the page.
 *
 * @param number from 1, in the job's order
 * @param file its name in the job
 * @param data the picture as a data address
 */
public record Picture(int number, String file, String caption, String data) {}
